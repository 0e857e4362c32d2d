/**
 * Numbers how the four own pieces of a stage lie that brings pieces home: stages 1 to 3. Where each of them stands among
 * the places that earlier goals leave free is the high part of the number, how it is turned there the low one.
 */

import { EDGES_AT, solvedCube } from '../../cube/cube-position.ts'
import { cornerCode, edgeCode, N_PIECE_CODES } from '../../cube/piece-code.ts'
import { N_UPRIGHT_SYMMETRIES } from '../../cube/symmetry.ts'
import { nPlacings, rankPlaces, unrankPlaces } from '../rank-places.ts'
import { fillTheRest } from './fill-the-rest.ts'
import { ownPieceImages, WAYS_PER_PIECE } from './own-piece-images.ts'
import type { StageRanks } from './stage-ranks.ts'

const N_OWN = 4
const NOT_OWN = 255

/** Filled and read within one call, so that ranking allocates nothing. */
const placeOfOwn = new Uint8Array(N_OWN)
const turnOfOwn = new Uint8Array(N_OWN)

/**
 * @param places indexes into a position: where own pieces can stand, all of one kind
 * @param homes the homes of the four own pieces, among `places`
 */
export function ownPieceRanks(places: readonly number[], homes: readonly number[]): StageRanks {
  const areEdges = places[0] >= EDGES_AT
  const nWays = areEdges ? 2 : 3
  const nTurnings = nWays ** N_OWN
  const codeOf = (home: number, turned: number) =>
    areEdges ? edgeCode(home - EDGES_AT, turned) : cornerCode(home, turned)
  // By code: which own piece in the high bits, how it is turned in the low two.
  const seenOf = new Uint8Array(N_PIECE_CODES).fill(NOT_OWN)
  homes.forEach((home, own) => {
    for (let turned = 0; turned < nWays; turned++) seenOf[codeOf(home, turned)] = own * 4 + turned
  })

  const imageOfWay = ownPieceImages(places, nWays, (own, turned) => codeOf(homes[own], turned))

  const rankScratch = () => {
    let turning = 0
    for (let own = 0; own < N_OWN; own++) turning = turning * nWays + turnOfOwn[own]
    return rankPlaces(placeOfOwn, places.length) * nTurnings + turning
  }

  const unrankScratch = (rank: number) => {
    unrankPlaces(Math.trunc(rank / nTurnings), places.length, placeOfOwn)
    let turning = rank % nTurnings
    for (let own = N_OWN - 1; own >= 0; own--) {
      turnOfOwn[own] = turning % nWays
      turning = Math.trunc(turning / nWays)
    }
  }

  return {
    nRanks: nPlacings(N_OWN, places.length) * nTurnings,
    rank: (homeHeld) => {
      for (let index = 0; index < places.length; index++) {
        const seen = seenOf[homeHeld[places[index]]]
        if (seen === NOT_OWN) continue
        placeOfOwn[seen >> 2] = index
        turnOfOwn[seen >> 2] = seen & 3
      }
      return rankScratch()
    },
    unrank: (rank) => {
      unrankScratch(rank)
      const position = solvedCube()
      homes.forEach((home, own) => {
        position[places[placeOfOwn[own]]] = codeOf(home, turnOfOwn[own])
      })
      fillTheRest(position, {
        places: places.filter((_, index) => !placeOfOwn.includes(index)),
        homes: places.filter((place) => !homes.includes(place)),
      })
      return position
    },
    imagesOf: (rank, images) => {
      unrankScratch(rank)
      const ways = placeOfOwn.map((place, own) => own * WAYS_PER_PIECE + place * nWays + turnOfOwn[own])
      for (let symmetry = 0; symmetry < N_UPRIGHT_SYMMETRIES; symmetry++) {
        for (let own = 0; own < N_OWN; own++) {
          const image = imageOfWay[symmetry * N_OWN * WAYS_PER_PIECE + ways[own]]
          const ownImage = Math.trunc(image / WAYS_PER_PIECE)
          const way = image % WAYS_PER_PIECE
          placeOfOwn[ownImage] = Math.trunc(way / nWays)
          turnOfOwn[ownImage] = way % nWays
        }
        images[symmetry] = rankScratch()
      }
    },
  }
}
