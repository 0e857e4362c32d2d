/**
 * Which assemblies of the right pieces can be solved by turns: one in twelve.
 *
 * The twists of the corners sum to a multiple of 3, the flips of the edges to a multiple of 2, and the permutation of
 * corners, edges and centres together is even. In any other assembly a piece was taken out and put back wrongly.
 * Source: D. Singmaster, Notes on Rubik's Magic Cube, 1980.
 */

import { CENTRES_AT, EDGES_AT, POSITION_BYTES } from './cube-position.ts'
import { cornerPiece, cornerTwist, edgeFlip, edgePiece } from './piece-code.ts'

/** Why a cube with all its pieces cannot be solved by turns. */
export type LegalityFault =
  /** Corners are twisted by this many thirds of a turn too many. Do: twist one corner back. */
  | { readonly code: 'cube/corner-twist'; readonly nThirds: 1 | 2 }
  /** An odd number of edges is flipped. Do: flip one edge. */
  | { readonly code: 'cube/edge-flip' }
  /** Two pieces have changed places. Do: exchange two edges, or two corners. */
  | { readonly code: 'cube/parity' }

/**
 * @param pieces 26 bytes in the layout of a `CubePosition`: each piece once, the centres in one of the 24 holds
 * @returns the first fault in the order of the type, or undefined when the cube is legal
 */
export function findLegalityFault(pieces: Uint8Array): LegalityFault | undefined {
  const corners = pieces.subarray(0, EDGES_AT)
  const edges = pieces.subarray(EDGES_AT, CENTRES_AT)
  const nThirds = sumOf(corners, cornerTwist) % 3
  if (nThirds === 1 || nThirds === 2) return { code: 'cube/corner-twist', nThirds }
  if (sumOf(edges, edgeFlip) % 2 === 1) return { code: 'cube/edge-flip' }
  const isOdd =
    isOddPermutation(Array.from(corners, cornerPiece)) !==
    (isOddPermutation(Array.from(edges, edgePiece)) !==
      isOddPermutation(Array.from(pieces.subarray(CENTRES_AT, POSITION_BYTES))))
  return isOdd ? { code: 'cube/parity' } : undefined
}

/**
 * @param permutation numbers, all different
 * @returns true when an odd number of exchanges sorts them
 */
export function isOddPermutation(permutation: readonly number[]): boolean {
  let nInversions = 0
  for (let later = 1; later < permutation.length; later++) {
    for (let earlier = 0; earlier < later; earlier++) {
      if (permutation[earlier] > permutation[later]) nInversions++
    }
  }
  return nInversions % 2 === 1
}

function sumOf(codes: Uint8Array, amount: (code: number) => number): number {
  return codes.reduce((sum, code) => sum + amount(code), 0)
}
