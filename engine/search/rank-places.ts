/**
 * Numbers where k of n distinct things stand, without gaps: n * (n-1) * ... * (n-k+1) numbers. The first place is the
 * highest digit.
 * Source: mixed-radix numbers and inversion tables, Knuth, The Art of Computer Programming 4A, 7.2.1.1 and 3, 5.1.1.
 */

/** @returns how many ways there are to place `nPieces` distinct pieces in `nPlaces` places: n! / (n-k)! */
export function nPlacings(nPieces: number, nPlaces: number): number {
  let product = 1
  for (let piece = 0; piece < nPieces; piece++) product *= nPlaces - piece
  return product
}

/**
 * @param places distinct numbers 0..nPlaces-1, by piece
 * @returns 0..nPlacings-1; inverse: `unrankPlaces`
 */
export function rankPlaces(places: ArrayLike<number>, nPlaces: number): number {
  let rank = 0
  for (let piece = 0; piece < places.length; piece++) {
    let digit = places[piece]
    for (let before = 0; before < piece; before++) if (places[before] < places[piece]) digit--
    rank = rank * (nPlaces - piece) + digit
  }
  return rank
}

/**
 * @param places is filled: the place of each piece; its length is the number of pieces
 * Inverse: `rankPlaces`.
 */
export function unrankPlaces(rank: number, nPlaces: number, places: Uint8Array): void {
  let rest = rank
  for (let piece = places.length - 1; piece >= 0; piece--) {
    const base = nPlaces - piece
    places[piece] = rest % base
    rest = (rest - places[piece]) / base
  }
  // Each digit counts only the places that earlier pieces left free: put the taken ones back in, the latest first.
  for (let piece = places.length - 1; piece >= 0; piece--) {
    for (let later = piece + 1; later < places.length; later++) if (places[later] >= places[piece]) places[later]++
  }
}
