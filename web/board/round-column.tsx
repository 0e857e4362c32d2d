/** The still column of the board: round, goal, clock, how many have reached it, room code. Only figures change in it. */

import type { ReactNode } from 'react'
import { useTranslation } from 'react-i18next'
import type { BoardView, RoundView } from '../../engine/wire/views.ts'
import { GoalPicture } from '../cube/goal-picture.tsx'
import { PretendMark } from '../parts/pretend-mark.tsx'
import { RoundClockFace, roundClockWords } from '../parts/round-clock-face.tsx'
import { spanWords, stageWords } from '../parts/stage-words.ts'
import { classNames } from '../ui/class-names.ts'
import { Sign } from '../ui/signs.tsx'
import { ParFact } from './par-fact.tsx'
import styles from './round-column.module.css'

type RoundColumnProps = { view: BoardView; round: RoundView; nowMs: number; tools: ReactNode }

export function RoundColumn({ view, round, nowMs, tools }: RoundColumnProps) {
  const { t } = useTranslation()
  const { settings, clock } = round
  const { room } = view
  const words = stageWords(t, settings.to, settings.baseColour)
  const isOver = clock.phase === 'ended' || clock.phase === 'void'
  return (
    <aside className={styles.column}>
      <div className={styles.over}>
        <p>
          {t('board:round', { number: round.number })} · {spanWords(t, settings)}
        </p>
        {room.pretend && <PretendMark />}
      </div>
      <h1>{words.title}</h1>
      <div className={styles.goal}>
        <GoalPicture
          stage={settings.to}
          baseColour={settings.baseColour}
          label={words.picture}
          className={styles.picture}
        />
        <p>{words.sentence}</p>
      </div>

      <div className={styles.time}>
        <RoundClockFace round={round} nowMs={nowMs} className={styles.clock} />
        <p>{roundClockWords(t, round, nowMs)}</p>
      </div>

      <div className={classNames(styles.facts, clock.phase === 'void' && styles.uncounted)}>
        <div className={styles.fact}>
          <p className={styles.figure}>
            <Sign of="reached" />
            <b>{view.nReached}</b>
          </p>
          <p>{t('board:reached', { count: view.nStudents })}</p>
        </div>
        <ParFact par={view.par} isOver={isOver} className={styles.fact} />
      </div>

      <div className={styles.code}>
        {room.closed ? (
          <p>{t('board:closed')}</p>
        ) : (
          <>
            <p>{t(room.locked ? 'board:locked' : isOver ? 'board:roomCode' : 'board:lateRoomCode')}</p>
            <b>{room.code}</b>
            <p className={styles.address}>{room.addresses[0]}</p>
          </>
        )}
      </div>
      {tools}
    </aside>
  )
}
