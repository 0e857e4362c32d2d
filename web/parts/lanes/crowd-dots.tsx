/** The crowd of a large room, drawn upon the same ruling as the lanes. */

import { useTranslation } from 'react-i18next'
import type { RankedLane } from '../../../engine/contest/rank-board.ts'
import styles from './crowd-dots.module.css'
import { pileCrowd } from './crowd-piles.ts'
import type { LaneMeasures } from './lane-measures.ts'

type CrowdDotsProps = {
  crowd: readonly RankedLane[]
  measures: LaneMeasures
  nRowsHigh: number
  /** Whether lanes stand above: then these are so many more. */
  isRest: boolean
}

export function CrowdDots({ crowd, measures, nRowsHigh, isRest }: CrowdDotsProps) {
  const { t } = useTranslation()
  const { squarePx, nSquares } = measures
  const { nAcross, dots } = pileCrowd(crowd, nSquares, nRowsHigh - 1)
  const dotPx = squarePx / nAcross
  const heightPx = nRowsHigh * squarePx
  const circles = (reached: boolean) =>
    dots
      .filter((dot) => dot.reached === reached)
      .map((dot) =>
        circle(dot.turns * squarePx + (dot.column + 0.5) * dotPx, heightPx - (dot.level + 0.5) * dotPx, dotPx * 0.42),
      )
      .join('')
  return (
    <div className={styles.crowd} style={{ height: heightPx }}>
      <p className={styles.count}>
        <b>{t(isRest ? 'board:crowd.more' : 'common:students', { count: crowd.length })}</b>
        {t('board:crowd.dot')}
      </p>
      <svg className={styles.dots} width={nSquares * squarePx} height={heightPx} aria-hidden="true">
        <path className={styles.reached} d={circles(true)} />
        <path className={styles.running} d={circles(false)} />
      </svg>
    </div>
  )
}

function circle(x: number, y: number, radius: number): string {
  return `M${(x - radius).toFixed(1)} ${y.toFixed(1)}a${radius.toFixed(2)} ${radius.toFixed(2)} 0 1 0 ${(2 * radius).toFixed(2)} 0a${radius.toFixed(2)} ${radius.toFixed(2)} 0 1 0 ${(-2 * radius).toFixed(2)} 0`
}
