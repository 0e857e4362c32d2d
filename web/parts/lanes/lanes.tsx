/**
 * The page of lanes: names left of the margin line, turns right of it, one square each. It fills the box that it is given
 * and works out its own size of a square. Used by the projector's board and by the desk.
 */

import { useEffect, useRef } from 'react'
import { useTranslation } from 'react-i18next'
import { type Lane, rankBoard } from '../../../engine/contest/rank-board.ts'
import type { ParView } from '../../../engine/wire/views.ts'
import { type BoxSize, useBoxSize } from '../../ui/box-size.ts'
import { classNames } from '../../ui/class-names.ts'
import { type BoardRows, boardRows, SKIPPED, tiesOf } from './board-rows.ts'
import { CrowdDots } from './crowd-dots.tsx'
import { type LaneMeasures, lanesHeightPx, measureLanes } from './lane-measures.ts'
import { LaneRow } from './lane-row.tsx'
import styles from './lanes.module.css'
import { LanesAsList } from './lanes-as-list.tsx'
import { momentFigures } from './moment-figures.ts'
import { ParBar, useTabWords } from './par-bar.tsx'
import { hasRoomForUnit, type ParMark, placePar, rulerNumbers } from './par-mark.ts'
import { useClimbing } from './use-climbing.ts'
import { useShownOrder } from './use-shown-order.ts'

export type LanesProps = {
  lanes: readonly Lane[]
  phase: 'running' | 'ended'
  nStages: number
  /** Null while the class does not see it: then it leaves no trace here. */
  par: ParView | null
  /** Another round is another page: nothing climbs from one to the next. */
  roundKey: string
}

/** Narrower than this the lanes become a list with bars. */
const PAGE_PX_MIN = 560

export function Lanes(props: LanesProps) {
  const [box, size] = useBoxSize<HTMLDivElement>()
  return (
    <div ref={box} className={styles.box}>
      {size !== null &&
        (size.widthPx < PAGE_PX_MIN ? <LanesAsList {...props} /> : <LanesPage {...props} size={size} />)}
    </div>
  )
}

function LanesPage({ lanes, phase, nStages, par, roundKey, size }: LanesProps & { size: BoxSize }) {
  const { t } = useTranslation()
  const rows = boardRows(rankBoard(lanes, phase))
  const order = useShownOrder(rows.order, roundKey)
  const measures = measureLanes({ ...size, nRows: rows.nRows, longestName: longestName(lanes) })
  // What scrolls has to be reached by the keyboard; what does not is no stop.
  const scrolls = lanesHeightPx(measures, rows.nRows) > size.heightPx
  const rowRef = useClimbing(order, measures.rowPx)
  const ties = tiesOf({ order, lanes: rows.lanes })
  const moments = momentFigures(lanes)
  const tabWords = useTabWords(par, measures.nSquares)
  const mark = par === null ? null : placePar(par.turns, tabWords.length, measures)
  const isOpen = useRef(false)
  useEffect(() => {
    isOpen.current = true
  }, [])
  const nCrowdRows = rows.nRows - order.length
  return (
    <section
      className={classNames(styles.page, !measures.isRoomy && styles.close, scrolls && styles.scrolls)}
      style={measuresAsStyle(measures, rows)}
      tabIndex={scrolls ? 0 : undefined}
      aria-label={t('board:lanes')}
    >
      <Ruler measures={measures} tab={mark?.tab ?? null} />
      <div className={styles.sheet} />
      <ol className={styles.lanes}>
        {order.map((id, row) => {
          const lane = rows.lanes.get(id)
          if (lane === undefined)
            return <li key={SKIPPED} ref={rowRef(SKIPPED)} className={styles.skipped} aria-hidden="true" />
          return (
            <LaneRow
              key={id}
              rowRef={rowRef(id)}
              lane={lane}
              measures={measures}
              moment={moments.get(lane.seatId)}
              isTied={ties.some((tie) => tie.fromRow <= row && row < tie.fromRow + tie.nRows)}
              nStagesEnded={phase === 'ended' ? nStages : null}
            />
          )
        })}
      </ol>
      {ties.map((tie) => (
        <div
          key={`${tie.place} ${tie.fromRow}`}
          className={styles.tie}
          style={{ '--from': tie.fromRow, '--rows': tie.nRows } as React.CSSProperties}
          aria-hidden="true"
        >
          <b>{tie.place}</b>
        </div>
      ))}
      {par !== null && mark !== null && (
        <ParBar key={roundKey} par={par} mark={mark} words={tabWords} isNews={isOpen.current} />
      )}
      {rows.crowd.length > 0 && (
        <CrowdDots crowd={rows.crowd} measures={measures} nRowsHigh={nCrowdRows} isRest={rows.lanes.size > 0} />
      )}
    </section>
  )
}

function Ruler({ measures, tab }: { measures: LaneMeasures; tab: ParMark['tab'] | null }) {
  const { t } = useTranslation()
  const unit = t('board:ruler')
  return (
    <div className={styles.ruler} aria-hidden="true">
      {hasRoomForUnit(unit.length, measures, tab) && <span className={styles.unit}>{unit}</span>}
      {rulerNumbers(measures, tab).map((n) => (
        <span key={n} style={{ '--n': n } as React.CSSProperties}>
          {n}
        </span>
      ))}
    </div>
  )
}

function measuresAsStyle(measures: LaneMeasures, rows: BoardRows): React.CSSProperties {
  return {
    '--row': `${measures.rowPx}px`,
    '--u': `${measures.squarePx}px`,
    '--squares': measures.nSquares,
    '--page-rows': rows.nRows,
    '--top': `${measures.rulerPx}px`,
    '--place': `${measures.placePx}px`,
    '--names': `${measures.namePx}px`,
    '--type': `${measures.typePx}px`,
  } as React.CSSProperties
}

function longestName(lanes: readonly Lane[]): number {
  return Math.max(0, ...lanes.map((lane) => [...lane.name].length + (lane.late ? 3 : 0)))
}
