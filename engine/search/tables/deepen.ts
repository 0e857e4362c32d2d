/**
 * Iterative deepening: all face-turn words of 0, 1, 2, ... turns are tried, each only as far as the lower bounds leave
 * hope. The first word found is a shortest one, and every length before it is proven impossible.
 *
 * Source: R. E. Korf, Depth-first iterative-deepening, Artificial Intelligence 27 (1985) 97-109. The bounds are exact
 * distances of parts of the cube, so they never say too much (admissible).
 */

import { FACE_TURNS, type Turn } from '../../cube/turns.ts'
import { N_FACE_TURNS } from '../two-phase/coordinate.ts'
import { NO_FACE, nextTurns } from '../two-phase/next-turns.ts'
import { NodeBudget } from '../two-phase/node-budget.ts'

/** A number that turns change: `moves[number * 18 + turn]` is the number after a turn of the image that is looked at. */
export type WalkedNumber = {
  readonly start: number
  readonly moves: Uint32Array
  /** What each of the 18 face turns is in that image. */
  readonly turnImages: Uint8Array
}

/** A lower bound looked up at two walked numbers (indexes into the list of them): entry `row * nColumns + column`. */
export type PairBound = {
  readonly kind: 'pair'
  /** Two entries a byte, the even one in the low half. */
  readonly distances: Uint8Array
  readonly nColumns: number
  readonly row: number
  readonly column: number
}

/**
 * A lower bound of a table that keeps one row a symmetry class: the class of `high * factor + low`, and the column that
 * the symmetry makes of `column`.
 */
export type ClassBound = {
  readonly kind: 'class'
  readonly distances: Uint8Array
  readonly nColumns: number
  /** Entries of a row, with the half byte to spare: `nColumns` or one more. */
  readonly rowEntries: number
  readonly classOf: Uint16Array
  readonly symmetryOf: Uint8Array
  /** `[symmetry * nColumns + column]` */
  readonly columnImages: Uint16Array
  readonly high: number
  readonly factor: number
  readonly low: number
  readonly column: number
}

export type LowerBound = PairBound | ClassBound

export type DeepenProblem = {
  readonly numbers: readonly WalkedNumber[]
  /** Asked in this order; a number is walked when the first bound needs it, so cheap and strong ones come first. */
  readonly bounds: readonly LowerBound[]
  /** The last word: is the goal met after these turns? Asked only when no bound says no. */
  readonly isGoal: (turns: readonly Turn[]) => boolean
  /** Nothing shorter than this is tried: what is known already. */
  readonly atLeast: number
  readonly turnsMax: number
  /**
   * 1, and the answer is proven. With more, bounds are believed to fall behind the truth the more, the larger they are: the
   * search looks only where the way seems straight, finds good words soon, and proves nothing.
   */
  readonly boldness?: number
  /** Asked every few thousand nodes. */
  readonly shouldStop: () => boolean
}

export type DeepenAnswer =
  | { readonly kind: 'found'; readonly turns: Turn[]; readonly nNodes: number }
  /** No word shorter than `lowerBound` reaches the goal; longer ones were not all tried. */
  | { readonly kind: 'stopped'; readonly lowerBound: number; readonly nNodes: number }

const TURNS_PER_FACE = 3
const TURNS_AFTER = nextTurns(FACE_TURNS)
/** Values of an entry of half a byte. */
const N_BOUNDS = 16
/** Up to here a bound is near the truth, and even a bold search believes it. */
const TRUSTED_BOUND = 5

/** @returns a shortest word, or how far the proof came */
export function deepen(problem: DeepenProblem): DeepenAnswer {
  const { numbers, bounds, turnsMax, atLeast, boldness = 1, shouldStop, isGoal } = problem
  const nNumbers = numbers.length
  const nBounds = bounds.length
  const stack = new Uint32Array((turnsMax + 1) * nNumbers)
  for (const [index, { start }] of numbers.entries()) stack[index] = start
  const moves = numbers.map((number) => number.moves)
  const images = numbers.map((number) => number.turnImages)
  const tables = bounds.map(({ distances }) => distances)
  const isPair = Uint8Array.from(bounds, ({ kind }) => (kind === 'pair' ? 1 : 0))
  const widths = Uint32Array.from(bounds, (bound) => (bound.kind === 'pair' ? bound.nColumns : bound.rowEntries))
  const rows = Uint8Array.from(bounds, (bound) => (bound.kind === 'pair' ? bound.row : bound.high))
  const columns = Uint8Array.from(bounds, ({ column }) => column)
  const nNeeded = numbersNeeded(bounds)
  const believed = believedBounds(boldness)
  const word = new Uint8Array(turnsMax)
  const budget = new NodeBudget(shouldStop)

  let shortest = atLeast
  for (let index = 0; index < nBounds; index++) shortest = Math.max(shortest, boundAt(index, 0))
  for (let length = shortest; length <= turnsMax; length++) {
    if (visit(0, length, NO_FACE)) return { kind: 'found', turns: written(length), nNodes: budget.nNodes }
    if (budget.isEnded) return { kind: 'stopped', lowerBound: length, nNodes: budget.nNodes }
  }
  return { kind: 'stopped', lowerBound: turnsMax + 1, nNodes: budget.nNodes }

  function written(length: number): Turn[] {
    return Array.from(word.subarray(0, length), (index) => FACE_TURNS[index])
  }

  function boundAt(index: number, from: number): number {
    let entry: number
    if (isPair[index] === 1) entry = stack[from + rows[index]] * widths[index] + stack[from + columns[index]]
    else entry = classEntry(bounds[index] as ClassBound, from)
    return believed[(tables[index][entry >>> 1] >>> ((entry & 1) << 2)) & 15]
  }

  function classEntry(bound: ClassBound, from: number): number {
    const rank = stack[from + bound.high] * bound.factor + stack[from + bound.low]
    const image = bound.columnImages[bound.symmetryOf[rank] * bound.nColumns + stack[from + bound.column]]
    return bound.classOf[rank] * bound.rowEntries + image
  }

  function visit(depth: number, left: number, lastFace: number): boolean {
    if (left === 0) return isGoal(written(depth))
    for (const turn of TURNS_AFTER[lastFace]) {
      budget.count(1)
      if (budget.isEnded) return false
      if (!isHopeful(depth, turn, left - 1)) continue
      word[depth] = turn
      if (visit(depth + 1, left - 1, (turn / TURNS_PER_FACE) | 0)) return true
    }
    return false
  }

  /** Walks the turn from this depth to the next, and asks every bound whether `left` turns can be enough from there. */
  function isHopeful(depth: number, turn: number, left: number): boolean {
    const from = depth * nNumbers
    const to = from + nNumbers
    let nWalked = 0
    for (let index = 0; index < nBounds; index++) {
      for (; nWalked < nNeeded[index]; nWalked++) {
        stack[to + nWalked] = moves[nWalked][stack[from + nWalked] * N_FACE_TURNS + images[nWalked][turn]]
      }
      if (boundAt(index, to) > left) return false
    }
    return true
  }
}

function believedBounds(boldness: number): Uint8Array {
  return Uint8Array.from({ length: N_BOUNDS }, (_, bound) =>
    bound <= TRUSTED_BOUND ? bound : Math.round(TRUSTED_BOUND + (bound - TRUSTED_BOUND) * boldness),
  )
}

/** By bound: how many of the numbers, from the first on, it and the bounds before it use. */
function numbersNeeded(bounds: readonly LowerBound[]): Uint8Array {
  let nSoFar = 0
  return Uint8Array.from(bounds, (bound) => {
    const used = bound.kind === 'pair' ? [bound.row, bound.column] : [bound.high, bound.low, bound.column]
    nSoFar = Math.max(nSoFar, ...used.map((number) => number + 1))
    return nSoFar
  })
}
