/** Tells a screen reader each turn and what it led to. Polite: a burst of turns ends in the newest words. */

import { useEffect, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import type { Try } from '../../../engine/contest/round-state.ts'
import { sayWhatHappened } from './words-for-turns.ts'

type SayTurnsProps = {
  readonly mine: Try
  readonly settings: RoundSettings
  readonly countingDown: boolean
}

export function SayTurns({ mine, settings, countingDown }: SayTurnsProps) {
  const { t } = useTranslation()
  const last = useRef({ tryNumber: mine.number, ...mine })
  const [said, setSaid] = useState('')
  const wasCountingDown = useRef(countingDown)

  useEffect(() => {
    if (wasCountingDown.current && !countingDown) setSaid(t('bench:say.signal'))
    wasCountingDown.current = countingDown
  }, [countingDown, t])

  useEffect(() => {
    const before = last.current
    const after = { tryNumber: mine.number, ...mine }
    last.current = after
    const words = sayWhatHappened(t, before, after, settings)
    // The same words twice are not read twice, so a space makes them other words.
    if (words !== '') setSaid((now) => (now === words ? `${words}\u00a0` : words))
  }, [mine, settings, t])

  return (
    <p className="visually-hidden" role="status" aria-live="polite">
      {said}
    </p>
  )
}
