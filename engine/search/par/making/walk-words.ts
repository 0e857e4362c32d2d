/**
 * Goes through all words of n face turns in the order of their turns, and keeps track of where they put the pieces of the
 * base layer. Two words that differ only in the order of opposite faces are one word.
 */

import { conjugateTurn, N_UPRIGHT_SYMMETRIES, type Symmetry } from '../../../cube/symmetry.ts'
import { FACE_TURNS } from '../../../cube/turns.ts'
import { MAY_FOLLOW, NO_TURN } from '../word-number.ts'
import { N_FACE_TURNS, type PlaceTables } from './place-tables.ts'

/** Take every word. */
export const EVERY_WORD = 1

/** Take of words that upright symmetries turn into each other the first one, and perhaps another spelling of it. */
export const FIRST_OF_SYMMETRIC_WORDS = 2 ** N_UPRIGHT_SYMMETRIES - 1

/** Words are walked in portions, one for each beginning of so many turns, so that progress can be told in between. */
const PORTION_BEGINS_AFTER_TURNS = 2

const IMAGE_OF_TURN: Uint8Array = Uint8Array.from({ length: N_UPRIGHT_SYMMETRIES * N_FACE_TURNS }, (_, index) =>
  conjugateTurn(FACE_TURNS[index % N_FACE_TURNS], Math.trunc(index / N_FACE_TURNS)),
)

/** What to walk and what to do with each word. */
export type Walk = {
  readonly tables: PlaceTables
  /** Its length is the number of turns; holds the word while `visit` is called. */
  readonly word: Uint8Array
  readonly which: typeof EVERY_WORD | typeof FIRST_OF_SYMMETRIC_WORDS
  /** Told the numbers of `place-tables.ts` after the word. */
  readonly visit: (cross: number, corners: number) => void
}

type AtEnd = (cross: number, corners: number, alike: number) => void
type Beginning = {
  readonly turns: Uint8Array
  readonly cross: number
  readonly corners: number
  readonly alike: number
}

/** Walks all words; yields after each portion the share 0..1 of the portions that are done. */
export function* walkWords({ tables, word, which, visit }: Walk): Generator<number, void> {
  const { crossAfter, cornersAfter, solvedCross, solvedCorners } = tables

  // The bits of `alike` are the symmetries whose image of the word so far is the word itself; the others gave a later one.
  // Optimisation: the last turn has a loop of its own, because nearly all calls would be for it.
  const goOn = (nTurns: number, end: number, cross: number, corners: number, alike: number, atEnd: AtEnd) => {
    const before = nTurns === 0 ? NO_TURN : word[nTurns - 1]
    const isLast = nTurns + 1 === end
    const crossRow = cross * N_FACE_TURNS
    const cornersRow = corners * N_FACE_TURNS
    for (let turn = 0; turn < N_FACE_TURNS; turn++) {
      if (MAY_FOLLOW[before * N_FACE_TURNS + turn] === 0) continue
      const stillAlike = alike === EVERY_WORD ? alike : symmetriesAlike(alike, turn)
      if (stillAlike === 0) continue
      word[nTurns] = turn
      if (isLast) atEnd(crossAfter[crossRow + turn], cornersAfter[cornersRow + turn], stillAlike)
      else goOn(nTurns + 1, end, crossAfter[crossRow + turn], cornersAfter[cornersRow + turn], stillAlike, atEnd)
    }
  }

  if (word.length === 0) {
    visit(solvedCross, solvedCorners)
    return
  }
  const beginTurns = Math.min(PORTION_BEGINS_AFTER_TURNS, word.length)
  const beginnings: Beginning[] = []
  goOn(0, beginTurns, solvedCross, solvedCorners, which, (cross, corners, alike) => {
    beginnings.push({ turns: word.slice(0, beginTurns), cross, corners, alike })
  })
  for (const [index, { turns, cross, corners, alike }] of beginnings.entries()) {
    word.set(turns)
    if (beginTurns === word.length) visit(cross, corners)
    else goOn(beginTurns, word.length, cross, corners, alike, visit)
    yield (index + 1) / beginnings.length
  }
}

/** @returns those of the symmetries that send `turn` to itself; 0 when one sends it to an earlier turn */
function symmetriesAlike(symmetries: number, turn: number): number {
  let alike = 0
  for (let symmetry: Symmetry = 0; symmetry < N_UPRIGHT_SYMMETRIES; symmetry++) {
    if (((symmetries >>> symmetry) & 1) === 0) continue
    const image = IMAGE_OF_TURN[symmetry * N_FACE_TURNS + turn]
    if (image < turn) return 0
    if (image === turn) alike |= 1 << symmetry
  }
  return alike
}
