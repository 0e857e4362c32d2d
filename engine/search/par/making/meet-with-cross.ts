/**
 * Meetings for stage 2: every kept word that puts the cross at the same places. There are hundreds of millions, so where
 * the four base corners come to lie is read off small tables, and only arrangements still wanted are looked at closely.
 */

import { applyTurn } from '../../../cube/apply-turn.ts'
import { solvedCube } from '../../../cube/cube-position.ts'
import { cornerCode, cornerPiece, cornerTwist, N_PIECE_CODES } from '../../../cube/piece-code.ts'
import { FACE_TURNS } from '../../../cube/turns.ts'
import { BASE_CORNERS, TOP_CORNERS } from '../../../method/goal-part.ts'
import { nArrangements, unrankArrangement } from '../arrangement-rank.ts'
import { joinWords, type KeptWords, unpackWord } from './kept-words.ts'
import type { KindestWords } from './kindest-words.ts'

const N_OWN = BASE_CORNERS.length
const N_CORNERS = BASE_CORNERS.length + TOP_CORNERS.length
/** Where a corner is and how it is turned there: the code of a piece, read the other way round. */
const N_LIES = N_PIECE_CODES
const N_LIES_OF_FOUR = N_LIES ** N_OWN

/** Made once for all lengths of words. */
export type CornerLies = {
  /** By arrangement of stage 2 and own corner (`rank * 4 + own`): its place, and the row of `CARRIED_BACK` for its turn. */
  readonly places: Uint8Array
  readonly rows: Uint8Array
  /** By arrangement: the lies of all four, as one number. */
  readonly lies: Uint32Array
}

/** `CARRIED_BACK[row + code]`: the lie of a corner at a place, once the turns are undone that brought `code` there. */
const CARRIED_BACK: Uint8Array = Uint8Array.from({ length: 3 * N_PIECE_CODES }, (_, index) => {
  const [turned, code] = [Math.trunc(index / N_PIECE_CODES), index % N_PIECE_CODES]
  return cornerCode(cornerPiece(code), (turned - cornerTwist(code) + 3) % 3)
})

/** @returns the lies of the base corners in every arrangement */
export function readCornerLies(): CornerLies {
  const nRanks = nArrangements(2)
  const [places, rows] = [new Uint8Array(nRanks * N_OWN), new Uint8Array(nRanks * N_OWN)]
  const lies = new Uint32Array(nRanks)
  for (let rank = 0; rank < nRanks; rank++) {
    const position = unrankArrangement(rank, 2)
    for (let place = 0; place < N_CORNERS; place++) {
      const own = BASE_CORNERS.indexOf(cornerPiece(position[place]))
      if (own < 0) continue
      places[rank * N_OWN + own] = place
      rows[rank * N_OWN + own] = cornerTwist(position[place]) * N_PIECE_CODES
      lies[rank] += cornerCode(place, cornerTwist(position[place])) * N_LIES ** own
    }
  }
  return { places, rows, lies }
}

/** @returns what to do with each word that is looked up, for words of this length */
export function meetWithCross(
  { places, rows, lies }: CornerLies,
  kept: KeptWords,
  word: Uint8Array,
  collector: KindestWords,
): (cross: number, corners: number) => void {
  const solution = new Uint8Array(kept.nTurns + word.length)
  const contents = cornersAfterWords(kept)
  // One more than the number of the arrangement where that is still wanted, else 0.
  const wanted = new Uint32Array(N_LIES_OF_FOUR)
  const isWantedOfFirst = new Uint8Array(N_LIES)
  for (let rank = 0; rank < lies.length; rank++) {
    if (!collector.wants(rank, solution.length)) continue
    wanted[lies[rank]] = rank + 1
    isWantedOfFirst[lies[rank] % N_LIES] = 1
  }
  return (cross, corners) => {
    const end = kept.begin[cross + 1]
    const at = corners * N_OWN
    const [place0, place1, place2, place3] = [places[at], places[at + 1], places[at + 2], places[at + 3]]
    const [row0, row1, row2, row3] = [rows[at], rows[at + 1], rows[at + 2], rows[at + 3]]
    for (let index = kept.begin[cross]; index < end; index++) {
      const content = index * N_CORNERS
      const lie0 = CARRIED_BACK[row0 + contents[content + place0]]
      if (isWantedOfFirst[lie0] === 0) continue
      const lie1 = CARRIED_BACK[row1 + contents[content + place1]]
      const lie2 = CARRIED_BACK[row2 + contents[content + place2]]
      const lie3 = CARRIED_BACK[row3 + contents[content + place3]]
      const rankAndOne = wanted[lie0 + N_LIES * (lie1 + N_LIES * (lie2 + N_LIES * lie3))]
      if (rankAndOne === 0) continue
      joinWords(kept, index, word, solution)
      collector.offer(rankAndOne - 1, solution)
    }
  }
}

/** @returns by kept word: the codes at the eight corner places after it */
function cornersAfterWords(kept: KeptWords): Uint8Array {
  const contents = new Uint8Array(kept.packed.length * N_CORNERS)
  const word = new Uint8Array(kept.nTurns)
  const solved = solvedCube()
  const position = solvedCube()
  for (let index = 0; index < kept.packed.length; index++) {
    unpackWord(kept, index, word)
    position.set(solved)
    for (let at = 0; at < word.length; at++) applyTurn(position, FACE_TURNS[word[at]])
    for (let place = 0; place < N_CORNERS; place++) contents[index * N_CORNERS + place] = position[place]
  }
  return contents
}
