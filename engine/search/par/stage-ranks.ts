/** The shape of a numbering: what each stage's file gives and `arrangement-rank.ts` puts together. */

import type { CubePosition } from '../../cube/cube-position.ts'
import { conjugatePosition, N_UPRIGHT_SYMMETRIES } from '../../cube/symmetry.ts'

/** Numbers the arrangements of one stage. */
export type StageRanks = {
  /** How many numbers there are. */
  readonly nRanks: number
  /** @returns 0..nRanks-1 for a cube held home; allocates nothing */
  readonly rank: (homeHeld: CubePosition) => number
  /** @returns a legal cube held home with this number; pieces the stage does not look at are home where they can be */
  readonly unrank: (rank: number) => CubePosition
  /** @param images is filled: what each of the 8 upright symmetries makes of the arrangement, by symmetry */
  readonly imagesOf: (rank: number, images: Uint32Array) => void
}

/** @returns `imagesOf` by turning whole positions: plain, and quick enough for the small stages */
export function imagesByPosition({ rank, unrank }: Pick<StageRanks, 'rank' | 'unrank'>): StageRanks['imagesOf'] {
  return (of, images) => {
    const position = unrank(of)
    for (let symmetry = 0; symmetry < N_UPRIGHT_SYMMETRIES; symmetry++) {
      images[symmetry] = rank(conjugatePosition(position, symmetry))
    }
  }
}
