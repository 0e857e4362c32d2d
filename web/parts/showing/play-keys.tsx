/** Step back, play, step on, and a slider over all turns. The same for a demonstration and for a review. */

import { useEffect, useId, useMemo, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { type TurnName, turnOf } from '../../../engine/cube/turns.ts'
import { Button } from '../../ui/button.tsx'
import styles from './play-keys.module.css'
import { lastDoneWords } from './turns-done.ts'

type PlayKeysProps = {
  /** The row that is played. */
  readonly turns: readonly TurnName[]
  /** Entries of it that are done: re-holds are stepped through like turns. */
  readonly at: number
  readonly onGo: (at: number) => void
}

/** Slow enough to be followed by eye and by hand. */
const TURN_EVERY_MS = 900

export function PlayKeys({ turns, at, onGo }: PlayKeysProps) {
  const { t } = useTranslation()
  const id = useId()
  const nTurns = turns.length
  const row = useMemo(() => turns.map(turnOf), [turns])
  const [plays, setPlays] = useState(false)
  const isAtEnd = at >= nTurns
  // Whoever draws these keys may do so more often than a turn takes: the timer must not begin anew each time.
  const goNow = useRef(onGo)
  goNow.current = onGo
  useEffect(() => {
    if (!plays) return
    if (isAtEnd) {
      setPlays(false)
      return
    }
    const timer = setTimeout(() => goNow.current(at + 1), TURN_EVERY_MS)
    return () => clearTimeout(timer)
  }, [plays, isAtEnd, at])
  const go = (next: number) => {
    setPlays(false)
    onGo(Math.max(0, Math.min(nTurns, next)))
  }
  return (
    <div className={styles.keys} dir="ltr">
      <Button icon="back" aria-disabled={at === 0} onClick={() => go(at - 1)}>
        <span className="visually-hidden">{t('showing:stepBack')}</span>
      </Button>
      <Button
        icon={plays ? 'pause' : 'play'}
        aria-disabled={nTurns === 0}
        onClick={() => {
          if (!plays && isAtEnd) onGo(0)
          setPlays(!plays && nTurns > 0)
        }}
      >
        {t(plays ? 'showing:pause' : 'showing:play')}
      </Button>
      <Button icon="onward" aria-disabled={isAtEnd} onClick={() => go(at + 1)}>
        <span className="visually-hidden">{t('showing:stepOn')}</span>
      </Button>
      <label className="visually-hidden" htmlFor={id}>
        {t('showing:scrub')}
      </label>
      <input
        id={id}
        type="range"
        min={0}
        max={nTurns}
        value={at}
        className={styles.scrub}
        aria-valuetext={lastDoneWords(t, row, at)}
        onChange={(event) => go(Number(event.currentTarget.value))}
      />
    </div>
  )
}
