/**
 * Six ways to look at one position for a two-phase search: each of the three axes in the place of the vertical one, and
 * the same for the inverse position. The shortest word is the same in all, but phase 1 finds its way at other lengths.
 */

import { type CubePosition, cubesEqual } from '../../cube/cube-position.ts'
import { conjugatePosition, conjugateTurn, inverseSymmetry, N_SYMMETRIES, type Symmetry } from '../../cube/symmetry.ts'
import { inverseTurns, type Turn, turnAxis, turnOf } from '../../cube/turns.ts'
import { inversePosition } from './inverse-position.ts'

/** One way to look at a position. */
export type Variant = {
  /** The position to solve, held home. */
  readonly position: CubePosition
  /** @param solution turns that solve it @returns turns that lead from the solved cube to what was asked for */
  readonly setupFrom: (solution: readonly Turn[]) => Turn[]
}

/** For each axis a symmetry that brings it upright; the first changes nothing. */
const SYMMETRIES: readonly Symmetry[] = (['U', 'R', 'F'] as const).map((face) => {
  const symmetries = Array.from({ length: N_SYMMETRIES }, (_, symmetry) => symmetry)
  return symmetries.find((symmetry) => turnAxis(conjugateTurn(turnOf(face), symmetry)) === 'U') ?? 0
})

/** @param position held home @returns one to six variants, no two of the same position */
export function variantsOf(position: CubePosition): Variant[] {
  const variants: Variant[] = []
  for (const isInverse of [false, true]) {
    const seen = isInverse ? inversePosition(position) : position
    for (const symmetry of SYMMETRIES) {
      const turned = conjugatePosition(seen, symmetry)
      if (variants.some((known) => cubesEqual(known.position, turned))) continue
      const back = inverseSymmetry(symmetry)
      variants.push({
        position: turned,
        setupFrom: (solution) => {
          const turns = solution.map((turn) => conjugateTurn(turn, back))
          return isInverse ? turns : inverseTurns(turns)
        },
      })
    }
  }
  return variants
}
