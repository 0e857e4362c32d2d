import { expect, test } from 'vitest'
import { nPlacings, rankPlaces, unrankPlaces } from '../../../engine/search/rank-places.ts'

test.each([
  [1, 12, 12],
  [3, 12, 1_320],
  [4, 8, 1_680],
  [4, 12, 11_880],
  [8, 8, 40_320],
])('[SE61] %i pieces stand in %i places in %i ways, each with a number of its own', (nPieces, nPlaces, nWays) => {
  expect(nPlacings(nPieces, nPlaces)).toBe(nWays)
  const places = new Uint8Array(nPieces)
  for (let rank = 0; rank < nWays; rank++) {
    unrankPlaces(rank, nPlaces, places)
    expect(new Set(places).size).toBe(nPieces)
    expect(rankPlaces(places, nPlaces)).toBe(rank)
  }
})
