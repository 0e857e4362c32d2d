/**
 * The least that brings one piece home, found on real cubes by trying everything: every re-hold and top turn, every
 * sequence of the book's stage, once each, while what is done stays done. Knows nothing of the tables.
 */

import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { CENTRES_AT, type CubePosition, EDGES_AT, solvedCube } from '../../../../engine/cube/cube-position.ts'
import { asHeldHome, holdOf } from '../../../../engine/cube/hold.ts'
import { outerBlockCost } from '../../../../engine/cube/outer-block-turns.ts'
import { cornerPiece, edgePiece } from '../../../../engine/cube/piece-code.ts'
import type { Turn } from '../../../../engine/cube/turns.ts'
import type { SequenceBook } from '../../../../engine/method/sequence-book.ts'
import type { Stage } from '../../../../engine/method/stages.ts'
import { turns } from '../../cube/arbitraries.ts'
import { SIDE_HOLDS } from './walk-steps.ts'

/** Fewest sequences, and among such ways fewest turns. */
type Least = { readonly nSequences: number; readonly nTurns: number }

const TOP_TURNS = ['', 'U', "U'", 'U2'].map(turns)
const SOLVED = solvedCube()

/**
 * @param home of the piece, on a cube held home
 * @param kept places that are home already and have to be home again after each sequence
 * @returns undefined when nothing brings it home
 */
export function leastToBringHome(
  start: CubePosition,
  stage: Stage,
  home: number,
  kept: readonly number[],
  book: SequenceBook,
): Least | undefined {
  const ways = book.stages[stage].flatMap((sequence) =>
    SIDE_HOLDS.flatMap((reHold) => TOP_TURNS.map((topTurn) => [...turns(reHold), ...topTurn, ...sequence.turns])),
  )
  let reached = new Map([[keyOf(start, home), { position: start, nTurns: 0 }]])
  const known = new Set(reached.keys())
  for (let nSequences = 0; reached.size > 0; nSequences++) {
    const homeBy = [...reached.values()].filter(({ position }) => isHome(position, home))
    if (homeBy.length > 0) return { nSequences, nTurns: Math.min(...homeBy.map(({ nTurns }) => nTurns)) }
    const next: typeof reached = new Map()
    for (const { position, nTurns } of reached.values()) {
      for (const way of ways) {
        const after = afterTurns(position, way)
        const key = keyOf(after, home)
        if (known.has(key) || !kept.every((place) => isHome(after, place))) continue
        const total = nTurns + countTurns(way)
        if (total < (next.get(key)?.nTurns ?? Number.POSITIVE_INFINITY))
          next.set(key, { position: after, nTurns: total })
      }
    }
    for (const key of next.keys()) known.add(key)
    reached = next
  }
  return undefined
}

/** Is the piece of this place home, however the cube is held? */
export function isHome(position: CubePosition, place: number): boolean {
  return asHeldHome(position)[place] === SOLVED[place]
}

/** Where the piece is, how it is turned, and how the cube is held: all that matters while the kept pieces stay home. */
function keyOf(position: CubePosition, home: number): string {
  const [first, end] = home < EDGES_AT ? [0, EDGES_AT] : [EDGES_AT, CENTRES_AT]
  const at = position.findIndex((code, place) => {
    if (place < first || end <= place) return false
    return home < EDGES_AT ? cornerPiece(code) === home : EDGES_AT + edgePiece(code) === home
  })
  return [holdOf(position), at, position[at]].join()
}

function countTurns(way: readonly Turn[]): number {
  return way.reduce((count, turn) => count + outerBlockCost(turn), 0)
}
