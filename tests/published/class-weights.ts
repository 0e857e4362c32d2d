/** Classes with twists, as things to count: what a row of a large table stands for. */

import type { Turn } from '../../engine/cube/turns.ts'
import { N_FACE_TURNS } from '../../engine/search/two-phase/coordinate.ts'
import { N_TWISTS } from '../../engine/search/two-phase/orientation.ts'
import type { SymmetryClasses } from '../../engine/search/two-phase/symmetry-classes.ts'
import type { TwistTables } from '../../engine/search/two-phase/twist-tables.ts'
import type { Numbered } from './count-layers.ts'

const N_SYMMETRIES = 16
const symmetries = Array.from({ length: N_SYMMETRIES }, (_, symmetry) => symmetry)

/** @returns how many ranks each class gathers: sixteen, divided by the symmetries that leave its rank as it is */
export function classSizes({ selfSymmetries }: SymmetryClasses): number[] {
  return Array.from(
    selfSymmetries,
    (own) => N_SYMMETRIES / symmetries.filter((symmetry) => (own >>> symmetry) & 1).length,
  )
}

/** @param rankAfter the rank after a turn, for ranks that stand for their class @returns numbers class * 2187 + twist */
export function classesWithTwists(
  classes: SymmetryClasses,
  { twistTurns, twistConjugates }: TwistTables,
  home: number,
  turns: readonly Turn[],
  rankAfter: (rank: number, turn: number) => number,
): Numbered {
  const sizes = classSizes(classes)
  return {
    nRanks: classes.nClasses * N_TWISTS,
    home: classes.classOf[home] * N_TWISTS,
    nTurns: turns.length,
    weightOf: (number) => sizes[Math.trunc(number / N_TWISTS)],
    othersLike: (number) => {
      const twist = number % N_TWISTS
      const own = classes.selfSymmetries[(number - twist) / N_TWISTS]
      if (own === 1) return []
      return symmetries
        .filter((symmetry) => (own >>> symmetry) & 1)
        .map((symmetry) => number - twist + twistConjugates[symmetry * N_TWISTS + twist])
    },
    rankAfter: (number, index) => {
      const twist = number % N_TWISTS
      const rank = rankAfter(classes.standFor[(number - twist) / N_TWISTS], turns[index])
      const turned = twistTurns[twist * N_FACE_TURNS + turns[index]]
      return classes.classOf[rank] * N_TWISTS + twistConjugates[classes.symmetryOf[rank] * N_TWISTS + turned]
    },
  }
}
