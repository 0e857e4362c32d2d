/**
 * How often each par is dealt, on squared paper: a column of squares over each par, a square for every tenth of the
 * starts. What is rarer than half a square is a line. The chosen pars are inked, the others outlined.
 */

import { useTranslation } from 'react-i18next'
import { classNames } from '../../ui/class-names.ts'
import { isInRange, type ParRange, parsThatOccur } from './dealt-pars.ts'
import styles from './par-histogram.module.css'

type ParHistogramProps = { counts: readonly number[]; range: ParRange }

const SQUARES_IN_ALL = 10
const COLUMN_PX = 26
const SQUARE_PX = 14
const GAP_PX = 2
const LABEL_PX = 20

export function ParHistogram({ counts, range }: ParHistogramProps) {
  const { t } = useTranslation()
  const occurring = parsThatOccur(counts)
  const [least] = occurring
  const greatest = occurring[occurring.length - 1]
  if (least === undefined) return null
  const pars = Array.from({ length: greatest - least + 1 }, (_, index) => least + index)
  const all = counts.reduce((sum, n) => sum + n, 0)
  const squaresOf = (par: number) => Math.round((counts[par] / all) * SQUARES_IN_ALL)
  const height = Math.max(1, ...pars.map(squaresOf)) * (SQUARE_PX + GAP_PX)
  const width = pars.length * COLUMN_PX
  return (
    <svg
      className={styles.histogram}
      viewBox={`0 0 ${width} ${height + LABEL_PX}`}
      width={width}
      role="img"
      aria-label={t('desk:plan.parPicture', { least, greatest })}
    >
      <path className={styles.ground} d={`M0 ${height + 0.5}H${width}`} />
      {pars.map((par, column) => {
        const nSquares = squaresOf(par)
        const left = column * COLUMN_PX + (COLUMN_PX - SQUARE_PX) / 2
        return (
          <g key={par} className={classNames(styles.column, isInRange(par, range) && styles.chosen)}>
            <path className={styles.squares} d={squaresPath(left, height, nSquares)} />
            {nSquares === 0 && counts[par] > 0 && (
              <path className={styles.rare} d={`M${left} ${height - 2}h${SQUARE_PX}`} />
            )}
            <text x={column * COLUMN_PX + COLUMN_PX / 2} y={height + LABEL_PX - 5}>
              {par}
            </text>
          </g>
        )
      })}
    </svg>
  )
}

/** Squares one on the other, from the ground up. */
function squaresPath(left: number, ground: number, nSquares: number): string {
  return Array.from({ length: nSquares }, (_, square) => {
    const top = ground - (square + 1) * (SQUARE_PX + GAP_PX) + GAP_PX / 2
    return `M${left} ${top}h${SQUARE_PX}v${SQUARE_PX}h${-SQUARE_PX}z`
  }).join('')
}
