/**
 * Short words of face turns for any position, in two phases: first into the subgroup of U, D, R2, L2, F2 and B2, by exact
 * distances; then home within it. Ways through phase 1 are taken by rising length, so that the word found first is good
 * and the search can go on for better ones as long as there is time.
 * Source: H. Kociemba 1992, as described by M. Reid, Cube-Lovers mailing list, 7 January 1995.
 */

import type { CubePosition } from '../../cube/cube-position.ts'
import { faceIndex } from '../../cube/faces.ts'
import { FACE_TURNS, type Turn, turnAxis } from '../../cube/turns.ts'
import { CarriedOrders } from './carried-orders.ts'
import { N_FACE_TURNS } from './coordinate.ts'
import { NO_FACE, nextTurns } from './next-turns.ts'
import { NodeBudget } from './node-budget.ts'
import { isWithinPhase1, type Phase1Tables, phase1CoordinatesOf, phase1Distance } from './phase-1-distances.ts'
import { N_SLICE_ORDERS, PHASE_2_TURNS, type Phase2Tables } from './phase-2-distances.ts'
import { variantsOf } from './variants.ts'
import { phase2Walk } from './walk-phase-2.ts'

/** All tables of the search; they are only read. */
export type TwoPhaseTables = {
  readonly phase1: Phase1Tables
  readonly phase1Distances: Uint8Array
  readonly phase2: Phase2Tables
}

/** What word is wanted. */
export type TwoPhaseWish = {
  readonly tables: TwoPhaseTables
  /** Held home. */
  readonly position: CubePosition
  /** Shorter words are not looked for; 0 when left out. */
  readonly turnsMin?: number
  /** Longer words are not looked for; `TURNS_MAX` when left out. */
  readonly turnsMax?: number
  /** The search ends with a word of at most so many turns; when left out it goes on while it may. */
  readonly turnsEnough?: number
  /** Longest second phase tried; with a longer one a first word is found even for the most unkind positions. */
  readonly phase2TurnsMax?: number
  /** Asked of each word found; the search passes over those that it refuses. */
  readonly accepts?: (turns: readonly Turn[]) => boolean
  /** Asked every `NODES_PER_ASKING` nodes: is the time up? */
  readonly isOver: () => boolean
}

/** What the search came to. */
export type TwoPhaseAnswer = {
  /** The shortest accepted word found that leads from the solved cube to the position, or null. */
  readonly turns: Turn[] | null
  /** Positions whose distance was looked up. */
  readonly nNodes: number
}

/** No word needs more: 12 turns at most for phase 1 and 18 for phase 2. */
export const TURNS_MAX = 30

/**
 * Longest second phase tried, when nothing else is said. A longer one is costly to rule out, and what it would find a
 * longer first phase finds too. Measured with a million nodes over 60 random positions: 9 to 11 turns give words of 19.0 to
 * 19.1 turns on average, 12 and 13 longer ones; with 10 the first word comes earliest.
 */
const PHASE_2_TURNS_MAX = 10

/**
 * After so many refused words the search goes on to the next first turn. Words that begin alike tend to be refused for
 * the same reason: were the goal one turn away, every word that begins with this turn would be.
 */
const REFUSED_MAX = 32

const FACE_OF_TURN = Uint8Array.from(FACE_TURNS, (turn) => faceIndex(turnAxis(turn)))
const NEXT_TURNS = nextTurns(FACE_TURNS)

/** The last turn of phase 1 enters the subgroup: were it one of the subgroup's own, phase 1 would have ended before. */
const NEXT_TO_ENTER = NEXT_TURNS.map((turns) => turns.filter((turn) => !PHASE_2_TURNS.includes(turn as Turn)))

/** @returns the shortest word found; the same for the same answers of `isOver` */
export function searchTwoPhase(wish: TwoPhaseWish): TwoPhaseAnswer {
  const { tables, position, turnsMin = 0, turnsMax = TURNS_MAX, turnsEnough = 0 } = wish
  const { phase2TurnsMax = PHASE_2_TURNS_MAX, accepts = () => true, isOver } = wish
  const { phase1, phase1Distances, phase2 } = tables
  const { twistTurns, flipTurns, sliceTurns } = phase1
  const { cornerDistances, outerDistances } = phase2

  const variants = variantsOf(position)
  let variant = variants[0]
  /** The length of phase 1 that is being tried. */
  let nPhase1 = 0
  let best: Turn[] | null = null
  let turnsBelow = Math.min(turnsMax, TURNS_MAX) + 1
  let nRefused = 0

  const accept = (nTurns: number): boolean => {
    const turns = variant.setupFrom(Array.from(word.subarray(0, nTurns)) as Turn[])
    if (!accepts(turns)) {
      nRefused++
      return false
    }
    best = turns
    turnsBelow = nTurns
    // Every word still to come has a first phase of at least the present length.
    if (nTurns <= Math.max(turnsEnough, nPhase1)) budget.isEnded = true
    return true
  }

  /** The word under way: numbers of face turns, phase 1 and then phase 2. */
  const word = new Uint8Array(TURNS_MAX)
  const orders = new CarriedOrders(phase2, word)
  const budget = new NodeBudget(isOver)
  const walkPhase2 = phase2Walk(phase2, word, budget, accept)

  const walkPhase1 = (depth: number, twist: number, flip: number, slice: number, lastFace: number) => {
    const nLeft = nPhase1 - depth - 1
    const turns = nLeft === 0 ? NEXT_TO_ENTER[lastFace] : NEXT_TURNS[lastFace]
    budget.count(turns.length)
    for (let index = 0; index < turns.length && !budget.isEnded; index++) {
      if (depth === 0) nRefused = 0
      else if (nRefused >= REFUSED_MAX) return
      const turn = turns[index]
      const nextTwist = twistTurns[twist * N_FACE_TURNS + turn]
      const nextFlip = flipTurns[flip * N_FACE_TURNS + turn]
      const nextSlice = sliceTurns[slice * N_FACE_TURNS + turn]
      if (!isWithinPhase1(phase1, phase1Distances, nextTwist, nextFlip, nextSlice, nLeft)) continue
      word[depth] = turn
      orders.cut(depth)
      if (nLeft === 0) startPhase2(FACE_OF_TURN[turn])
      else walkPhase1(depth + 1, nextTwist, nextFlip, nextSlice, FACE_OF_TURN[turn])
    }
  }

  const startPhase2 = (lastFace: number) => {
    const turnsLeftMax = Math.min(phase2TurnsMax, turnsBelow - 1 - nPhase1)
    const corner = orders.cornerOrder(nPhase1)
    const slice = orders.sliceOrder(nPhase1)
    const cornerBound = cornerDistances[corner * N_SLICE_ORDERS + slice]
    if (cornerBound > turnsLeftMax) return
    const outer = orders.outerOrder(nPhase1)
    const bound = Math.max(cornerBound, outerDistances[outer * N_SLICE_ORDERS + slice])
    for (let nPhase2 = Math.max(bound, turnsMin - nPhase1); nPhase2 <= turnsLeftMax && !budget.isEnded; nPhase2++) {
      // An accepted word is the shortest that this first phase can lead to.
      if (walkPhase2(nPhase1, nPhase2, corner, outer, slice, lastFace)) return
    }
  }

  for (nPhase1 = Math.max(0, turnsMin - phase2TurnsMax); nPhase1 < turnsBelow && !budget.isEnded; nPhase1++) {
    for (variant of variants) {
      const { twist, flip, slice } = phase1CoordinatesOf(variant.position)
      if (budget.isEnded || phase1Distance(phase1, phase1Distances, twist, flip, slice) > nPhase1) continue
      orders.start(variant.position)
      if (nPhase1 === 0) startPhase2(NO_FACE)
      else walkPhase1(0, twist, flip, slice, NO_FACE)
    }
  }
  return { turns: best, nNodes: budget.nNodes }
}
