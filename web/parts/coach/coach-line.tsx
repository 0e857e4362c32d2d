/** What the coach says of a try that is under way or done: one sentence, the weightiest, or nothing. */

import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { readSolution } from '../../../engine/coach/read-solution.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { parseStickers } from '../../../engine/cube/stickers.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import styles from './coach-line.module.css'
import { noteWords } from './note-words.ts'

type CoachLineProps = {
  /** The start as 54 letters. */
  readonly start: string
  readonly turns: readonly Turn[]
  readonly settings: Pick<RoundSettings, 'from' | 'to' | 'baseColour'>
}

export function CoachLine({ start, turns, settings }: CoachLineProps) {
  const { t } = useTranslation()
  const { from, to, baseColour } = settings
  const note = useMemo(() => {
    const read = parseStickers(start)
    if (!read.ok) return null
    const { notes } = readSolution({ start: read.value, turns, span: { from, to } })
    // What is wrong now helps more than what was dear.
    return notes.find(({ isOpen }) => isOpen) ?? notes[0] ?? null
  }, [start, turns, from, to])
  if (note === null) return null
  return <p className={styles.line}>{noteWords(t, note, baseColour)}</p>
}
