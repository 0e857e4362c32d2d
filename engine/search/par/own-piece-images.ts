/**
 * What an upright symmetry makes of one piece in its place: a table, so that the images of an arrangement of four pieces
 * need no whole positions. Read off `conjugatePosition`, which treats every place by itself.
 */

import { type CubePosition, solvedCube } from '../../cube/cube-position.ts'
import { conjugatePosition, N_UPRIGHT_SYMMETRIES, type Symmetry } from '../../cube/symmetry.ts'

/** How one piece may be placed and turned among the places of a stage: the index of the place, times ways, plus the turn. */
type PieceWay = { readonly own: number; readonly place: number; readonly turned: number }

/** Most ways for one piece: 12 places for an edge in 2 ways, 8 places for a corner in 3. */
export const WAYS_PER_PIECE = 24

/**
 * @param places indexes into a position
 * @param nWays how many ways there are to turn a piece in its place
 * @param codeOf the code of own piece `own` (0..3), turned so
 * @returns by symmetry, own piece and way (`(symmetry * 4 + own) * 24 + place * nWays + turned`): the image in the same
 *   form, `own * 24 + place * nWays + turned`
 */
export function ownPieceImages(
  places: readonly number[],
  nWays: number,
  codeOf: (own: number, turned: number) => number,
): Uint8Array {
  const ways: PieceWay[] = [0, 1, 2, 3].flatMap((own) =>
    places.flatMap((_, place) => Array.from({ length: nWays }, (_, turned) => ({ own, place, turned }))),
  )
  const numberOf = ({ own, place, turned }: PieceWay) => own * WAYS_PER_PIECE + place * nWays + turned
  const table = new Uint8Array(N_UPRIGHT_SYMMETRIES * 4 * WAYS_PER_PIECE)
  for (let symmetry: Symmetry = 0; symmetry < N_UPRIGHT_SYMMETRIES; symmetry++) {
    const placeImages = places.map((place) => places.indexOf(imageOfPlace(place, symmetry)))
    const wayOfCode = new Map(ways.map((way) => [codeOf(way.own, way.turned), way]))
    for (const way of ways) {
      const place = placeImages[way.place]
      const position = solvedCube()
      position[places[way.place]] = codeOf(way.own, way.turned)
      const seen = wayOfCode.get(conjugatePosition(position, symmetry)[places[place]])
      if (seen === undefined) continue
      table[symmetry * 4 * WAYS_PER_PIECE + numberOf(way)] = numberOf({ ...seen, place })
    }
  }
  return table
}

/** The place whose content changes in the image when the content of this place is changed. */
function imageOfPlace(place: number, symmetry: Symmetry): number {
  const changed = solvedCube()
  changed[place] = solvedCube()[place === 0 || place === 8 ? place + 1 : place - 1]
  const image: CubePosition = conjugatePosition(changed, symmetry)
  return solvedCube().findIndex((code, index) => code !== image[index])
}
