/** The bar of the room: which round, the code, the clock, and what can be done now, always in the same place. */

import { useTranslation } from 'react-i18next'
import type { DeskView } from '../../engine/wire/views.ts'
import { RoundClockFace, roundClockWords } from '../parts/round-clock-face.tsx'
import { spanWords, stageWords } from '../parts/stage-words.ts'
import { Button } from '../ui/button.tsx'
import { ThemeChoice } from '../ui/theme-choice.tsx'
import type { RoomActs } from './desk-acts.ts'
import styles from './room-head.module.css'
import { type RoomPhase, roomTitle } from './room-phase.ts'
import { RoundActs } from './round-acts.tsx'

type RoomHeadProps = {
  view: DeskView
  phase: RoomPhase
  nowMs: number
  acts: RoomActs
  onPlan: (plan: boolean) => void
  onPart: (kind: 'demonstrate' | 'review') => void
  onShowRoom: () => void
}

export function RoomHead({ view, phase, nowMs, acts, onPlan, onPart, onShowRoom }: RoomHeadProps) {
  const { t } = useTranslation()
  const { round } = view
  const isTakeHome = view.room.deadlineMs !== null
  const settings = phase === 'planning' || round === null ? view.settings : round.settings
  return (
    <header className={styles.bar}>
      <div className={styles.where}>
        <Button look="quiet" icon="back" onClick={acts.leaveRoom}>
          {t('desk:room.rooms')}
        </Button>
        <div className={styles.title}>
          <p>
            {roomTitle(t, view, phase)} · {spanWords(t, settings)}
          </p>
          <h1>{stageWords(t, settings.to, settings.baseColour).title}</h1>
        </div>
        <div className={styles.code}>
          <p>{t('desk:room.roomCode')}</p>
          <b>{view.room.code}</b>
        </div>
      </div>
      {phase !== 'planning' && round !== null && (
        <div className={styles.time}>
          <RoundClockFace round={round} nowMs={nowMs} className={styles.clock} />
          <p>{roundClockWords(t, round, nowMs)}</p>
        </div>
      )}
      <div className={styles.acts}>
        <RoundActs view={view} phase={phase} acts={acts} onPlan={onPlan} onPart={onPart} />
        {phase !== 'planning' && (
          // At home nobody sees a board: the way in is the next thing to hand out.
          <Button look={isTakeHome ? 'accent' : 'quiet'} onClick={onShowRoom}>
            {t('desk:room.showRoom')}
          </Button>
        )}
        <div className={styles.theme}>
          <ThemeChoice />
        </div>
      </div>
    </header>
  )
}
