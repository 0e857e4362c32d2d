/** How far somebody came who has not reached the goal: a small square for each part that is done. */

import { PARTS_PER_STAGE } from '../../../engine/method/stages.ts'
import { classNames } from '../../ui/class-names.ts'
import styles from './progress-pips.module.css'

/** Parts are shown up to this many stages; longer rounds show whole stages, or the row would be longer than its lane. */
const STAGES_BY_PART_MAX = 2

export function countPips(nStages: number): number {
  return nStages <= STAGES_BY_PART_MAX ? nStages * PARTS_PER_STAGE : nStages
}

export function ProgressPips({ progress, nStages }: { progress: number; nStages: number }) {
  const nPips = countPips(nStages)
  const nDone = nPips === nStages ? Math.floor(progress / PARTS_PER_STAGE) : progress
  return (
    <span className={styles.pips}>
      {Array.from({ length: nPips }, (_, pip) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pips have no identity but their place.
        <i key={pip} className={classNames(styles.pip, pip < nDone && styles.done)} />
      ))}
    </span>
  )
}
