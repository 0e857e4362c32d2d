/** One student's lane: place, name, squares, and at their end the number of turns. */

import { type Ref, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RankedLane } from '../../../engine/contest/rank-board.ts'
import { classNames } from '../../ui/class-names.ts'
import { LaneFlag } from './lane-flag.tsx'
import { type LaneMeasures, nameTypePx, squaresBeforeTheEdge } from './lane-measures.ts'
import styles from './lane-row.module.css'
import { laneWords } from './lane-words.ts'
import { countPips, ProgressPips } from './progress-pips.tsx'
import { FurtherTry, TurnBar } from './turn-bar.tsx'

type LaneRowProps = {
  lane: RankedLane
  measures: LaneMeasures
  /** When the goal was reached; undefined while it was not. */
  moment: string | undefined
  /** The place stands once beside the bracket of a tie. */
  isTied: boolean
  /** Stages of the round, when it has ended: then the parts that are done are shown. */
  nStagesEnded: number | null
  rowRef: Ref<HTMLLIElement>
}

export function LaneRow({ lane, measures, moment, isTied, nStagesEnded, rowRef }: LaneRowProps) {
  const { t } = useTranslation()
  const hasPlace = lane.best !== null
  const [hadPlace] = useState(hasPlace)
  const nTurns = lane.best?.turns ?? lane.turns
  const nPips = hasPlace || nStagesEnded === null ? 0 : countPips(nStagesEnded)
  const end = { hasFlag: hasPlace, nMomentLetters: moment?.length ?? 0, nPips }
  const nDrawn = Math.min(nTurns, squaresBeforeTheEdge(nTurns, end, measures))
  const isTryingAgain = hasPlace && !lane.tryReached && lane.turns > 0
  const nLetters = [...lane.name].length + (lane.late ? LATE_LETTERS : 0)
  return (
    <li ref={rowRef} className={classNames(styles.row, hasPlace && styles.placed)}>
      <span className="visually-hidden">{laneWords(t, lane, moment)}</span>
      <span className={styles.place} aria-hidden="true">
        {isTied ? '' : lane.place}
      </span>
      <span className={styles.name} style={{ fontSize: nameTypePx(nLetters, measures) }} aria-hidden="true">
        {lane.name}
        {lane.late && <small>{t('common:sign.late')}</small>}
      </span>
      <span className={styles.track} style={{ '--n': nDrawn } as React.CSSProperties} aria-hidden="true">
        <TurnBar nTurns={nTurns} nDrawn={nDrawn} isInked={hasPlace} />
        {isTryingAgain && <FurtherTry nDrawn={Math.min(lane.turns, measures.nSquares)} />}
        <span className={styles.end}>
          {hasPlace && <LaneFlag justReached={!hadPlace} />}
          {nTurns > 0 && <b>{nTurns}</b>}
          {moment !== undefined && <em>{moment}</em>}
          {!hasPlace && nStagesEnded !== null && <ProgressPips progress={lane.progress} nStages={nStagesEnded} />}
        </span>
      </span>
    </li>
  )
}

/** The sign "late" takes about this many letters of the name's width. */
const LATE_LETTERS = 3.5
