/** The same ranking for a phone: a list, each student with a row of small squares underneath. */

import { useTranslation } from 'react-i18next'
import { rankBoard } from '../../../engine/contest/rank-board.ts'
import { classNames } from '../../ui/class-names.ts'
import { Sign } from '../../ui/signs.tsx'
import { parWords } from '../par-words.ts'
import { laneWords } from './lane-words.ts'
import type { LanesProps } from './lanes.tsx'
import styles from './lanes-as-list.module.css'
import { momentFigures } from './moment-figures.ts'
import { ProgressPips } from './progress-pips.tsx'
import { TurnBar } from './turn-bar.tsx'

/** Squares of a row that fit a narrow phone at 8 px each. */
const SQUARES_MAX = 34

export function LanesAsList({ lanes, phase, nStages, par }: LanesProps) {
  const { t } = useTranslation()
  const ranked = rankBoard(lanes, phase)
  const moments = momentFigures(lanes)
  return (
    <>
      {par !== null && <p className={styles.par}>{parWords(t, par)}</p>}
      <ol className={styles.list} aria-label={t('board:lanes')}>
        {ranked.map((lane) => {
          const hasPlace = lane.best !== null
          const nTurns = lane.best?.turns ?? lane.turns
          const moment = moments.get(lane.seatId)
          return (
            <li key={lane.seatId} className={classNames(styles.row, hasPlace && styles.placed)}>
              <span className="visually-hidden">{laneWords(t, lane, moment)}</span>
              <span className={styles.place} aria-hidden="true">
                {lane.place}
              </span>
              <span className={styles.name} aria-hidden="true">
                {lane.name} {lane.late && <small>{t('common:sign.late')}</small>}
              </span>
              <span className={styles.figures} aria-hidden="true">
                {!hasPlace && phase === 'ended' && <ProgressPips progress={lane.progress} nStages={nStages} />}
                {moment !== undefined && <em>{moment}</em>}
                {hasPlace && <Sign of="reached" />}
                <b>{nTurns}</b>
              </span>
              <span className={styles.track} aria-hidden="true">
                <TurnBar nTurns={nTurns} nDrawn={Math.min(nTurns, SQUARES_MAX)} isInked={hasPlace} />
              </span>
            </li>
          )
        })}
      </ol>
    </>
  )
}
