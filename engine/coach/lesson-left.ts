/**
 * How much the lesson has still to do at one stage: the measure by which the coach tells a step that leads on from one
 * that does not, and what a mistake costs. Read from the tables of the lesson way, without walking over the later stages.
 */

import { afterTurns } from '../cube/apply-turn.ts'
import type { CubePosition } from '../cube/cube-position.ts'
import { type Hold, holdOf, N_HOLDS } from '../cube/hold.ts'
import { isPieceStage, PIECE_STAGES, type PieceStage } from '../method/piece-cases.ts'
import type { SequenceBook } from '../method/sequence-book.ts'
import type { Stage } from '../method/stages.ts'
import type { CaseTable } from '../method/way/case-table.ts'
import { sequencesIn, turnsIn } from '../method/way/lesson-choice.ts'
import { stageTable } from '../method/way/lesson-tables.ts'
import { doneMaskOf, findSpots, N_SLOTS, SLOTS_OF_STAGE } from '../method/way/piece-spots.ts'
import type { PieceTable } from '../method/way/piece-table.ts'
import { asSeen, homeOfSeen, type SeenCube, turnsToBringBaseDown } from '../method/way/seen-cube.ts'
import { choiceIn } from '../method/way/stage-table.ts'
import { assert } from '../result.ts'

/** What is left at a stage. */
export type LessonLeft = {
  /** Counted turns of the lesson way to the goal of the stage. */
  readonly nTurns: number
  /** Sequences in it, at stages 4 to 7. */
  readonly nSequences: number
  /** At stages 1 to 3, for each of the four pieces on its own: what brings it home as things stand. Else empty. */
  readonly pieces: readonly PieceLeft[]
}

/** What is left of one piece's way; both 0 when it is home. */
export type PieceLeft = { readonly nTurns: number; readonly nSequences: number }

const HOME: PieceLeft = { nTurns: 0, nSequences: 0 }

/** By stage and hold: for each slot as seen, which of the stage's pieces belongs there. */
const PIECE_OF_SLOT: ReadonlyMap<PieceStage, ReadonlyArray<readonly number[]>> = new Map(
  PIECE_STAGES.map((stage) => [stage, Array.from({ length: N_HOLDS }, (_, hold) => piecesBySlot(stage, hold))]),
)

/**
 * @param position in any hold; meets the goals before `stage`
 * @param book leads to the goal of the stage; asserted
 */
export function lessonLeft(position: CubePosition, stage: Stage, book: SequenceBook): LessonLeft {
  const reHold = turnsToBringBaseDown(position)
  const upright = reHold.length === 0 ? position : afterTurns(position, reHold)
  const seen = asSeen(upright)
  const table = stageTable(book, stage)
  if (isPieceStage(stage)) return piecesLeft(table as PieceTable, seen, holdOf(upright))
  const cost = (table as CaseTable).costOf(seen)
  assert(cost !== Number.POSITIVE_INFINITY, `the book leads to the goal of stage ${stage}`)
  return { nTurns: turnsIn(cost), nSequences: sequencesIn(cost), pieces: [] }
}

function piecesLeft(table: PieceTable, seen: SeenCube, hold: Hold): LessonLeft {
  const spots = new Uint8Array(N_SLOTS)
  findSpots(seen, table.kind, spots)
  const mask = doneMaskOf(spots, table.kind)
  const pieces: PieceLeft[] = Array.from({ length: N_SLOTS }, () => HOME)
  const pieceOfSlot = PIECE_OF_SLOT.get(table.stage)?.[hold]
  assert(pieceOfSlot !== undefined, 'stages 1 to 3 have pieces in every hold')
  for (let slot = 0; slot < N_SLOTS; slot++) {
    if ((mask >> slot) & 1) continue
    const cost = table.costOf(slot, spots[slot], mask)
    pieces[pieceOfSlot[slot]] = { nTurns: turnsIn(cost), nSequences: sequencesIn(cost) }
  }
  return { ...wayOfPieces(table, spots), pieces }
}

/** Walks the lesson's own way on the spots, which are changed. */
function wayOfPieces(table: PieceTable, spots: Uint8Array): { nTurns: number; nSequences: number } {
  const scratch = new Uint8Array(N_SLOTS)
  let nTurns = 0
  let nSequences = 0
  // Each step makes the way of a piece shorter: four pieces, two steps each at most in our books, some more in others.
  for (let answer = table.nextFor(spots); answer >= 0; answer = table.nextFor(spots)) {
    const choice = table.choices[choiceIn(answer)]
    nTurns += turnsIn(choice.cost)
    nSequences += choice.nTimes
    table.carry(spots, choiceIn(answer), scratch)
  }
  assert(doneMaskOf(spots, table.kind) === 2 ** N_SLOTS - 1, `the book leads to the goal of stage ${table.stage}`)
  return { nTurns, nSequences }
}

function piecesBySlot(stage: PieceStage, hold: Hold): number[] {
  return SLOTS_OF_STAGE[stage].map((place) => SLOTS_OF_STAGE[stage].indexOf(homeOfSeen(hold, place)))
}
