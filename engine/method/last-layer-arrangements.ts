/**
 * Every arrangement of a last-layer stage, one position each: 8 patterns of flipped edges, 27 of twisted corners, 24
 * orders of the corners (the offset of the top layer included), 12 even orders of the edges. Pieces that the stage does
 * not look at are home, but for one exchange of edges where an odd order of the corners asks for it.
 */

import { type CubePosition, copyCube, solvedCube } from '../cube/cube-position.ts'
import { isOddPermutation } from '../cube/legality.ts'
import { CODE_AFTER_ADDING, cornerRow, cornerTwist, edgeFlip, edgeRow } from '../cube/piece-code.ts'
import type { LastLayerStage } from './cases.ts'
import { TOP_CORNERS, TOP_EDGES } from './goal-part.ts'

/** @returns 8, 27, 24 or 12 positions held home */
export function arrangementsOf(stage: LastLayerStage): CubePosition[] {
  switch (stage) {
    case 4:
      return turnedInAllWays(TOP_EDGES, 2, edgeRow)
    case 5:
      return turnedInAllWays(TOP_CORNERS, 3, cornerRow)
    case 6:
      return orders(TOP_CORNERS).map((order) => {
        const position = placed(TOP_CORNERS, order)
        if (isOddPermutation(order)) exchange(position, TOP_EDGES[0], TOP_EDGES[1])
        return position
      })
    case 7:
      return orders(TOP_EDGES)
        .filter((order) => !isOddPermutation(order))
        .map((order) => placed(TOP_EDGES, order))
  }
}

/**
 * @param homeHeld a cube held home that meets the goals before `stage`
 * @returns a text that two positions share exactly when the stage sees no difference between them
 */
export function arrangementKey(homeHeld: CubePosition, stage: LastLayerStage): string {
  switch (stage) {
    case 4:
      return TOP_EDGES.map((place) => edgeFlip(homeHeld[place])).join()
    case 5:
      return TOP_CORNERS.map((place) => cornerTwist(homeHeld[place])).join()
    case 6:
      return TOP_CORNERS.map((place) => homeHeld[place]).join()
    case 7:
      return TOP_EDGES.map((place) => homeHeld[place]).join()
  }
}

/** All ways to turn pieces in their places whose amounts sum to a multiple of `nWays`. */
function turnedInAllWays(places: readonly number[], nWays: number, rowOf: (amount: number) => number): CubePosition[] {
  const [last, ...free] = places
  let partial = [{ position: solvedCube(), sum: 0 }]
  for (const place of free) {
    partial = partial.flatMap(({ position, sum }) =>
      Array.from({ length: nWays }, (_, amount) => ({
        position: turnedAt(position, place, rowOf(amount)),
        sum: sum + amount,
      })),
    )
  }
  return partial.map(({ position, sum }) => turnedAt(position, last, rowOf((nWays - (sum % nWays)) % nWays)))
}

function turnedAt(position: CubePosition, place: number, row: number): CubePosition {
  const turned = copyCube(position)
  turned[place] = CODE_AFTER_ADDING[row + position[place]]
  return turned
}

function orders(items: readonly number[]): number[][] {
  if (items.length === 0) return [[]]
  return items.flatMap((first) => orders(items.filter((item) => item !== first)).map((rest) => [first, ...rest]))
}

function placed(places: readonly number[], homes: readonly number[]): CubePosition {
  const solved = solvedCube()
  const position = solvedCube()
  places.forEach((place, index) => {
    position[place] = solved[homes[index]]
  })
  return position
}

function exchange(position: CubePosition, a: number, b: number): void {
  ;[position[a], position[b]] = [position[b], position[a]]
}
