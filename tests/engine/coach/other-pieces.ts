/** Steps of the lesson for another piece than the one that is under way, read from the tables of the lesson way. */

import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { holdOf } from '../../../engine/cube/hold.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import type { PieceStage } from '../../../engine/method/piece-cases.ts'
import { placeName } from '../../../engine/method/place-name.ts'
import { sequencesIn } from '../../../engine/method/way/lesson-choice.ts'
import type { LookFor } from '../../../engine/method/way/lesson-step.ts'
import { stageTable } from '../../../engine/method/way/lesson-tables.ts'
import { doneMaskOf, findSpots, N_SLOTS, SLOTS_OF_STAGE } from '../../../engine/method/way/piece-spots.ts'
import type { PieceTable } from '../../../engine/method/way/piece-table.ts'
import { asSeen, homeOfSeen, turnsToBringBaseDown } from '../../../engine/method/way/seen-cube.ts'

/** @returns for each piece of the stage that is not home, but for the one that was looked for: how the lesson begins with it */
export function otherPieceSteps(position: CubePosition, stage: PieceStage, lookFor: LookFor): Turn[][] {
  const wanted = 'piece' in lookFor ? lookFor.piece?.home : undefined
  return allPieceSteps(position, stage).flatMap(({ home, turns }) => (home === wanted ? [] : [turns]))
}

/** @returns for every piece of the stage that is not home, by its home place: how the lesson begins with it */
export function allPieceSteps(position: CubePosition, stage: PieceStage): { home: string; turns: Turn[] }[] {
  const base = turnsToBringBaseDown(position)
  const upright = afterTurns(position, base)
  const table = stageTable(LESSON_BOOK, stage) as PieceTable
  const spots = new Uint8Array(N_SLOTS)
  findSpots(asSeen(upright), table.kind, spots)
  const mask = doneMaskOf(spots, table.kind)
  return [...SLOTS_OF_STAGE[stage].keys()].flatMap((slot) => {
    const home = placeName(homeOfSeen(holdOf(upright), SLOTS_OF_STAGE[stage][slot]))
    if ((mask >> slot) & 1) return []
    return [{ home, turns: [...base, ...table.choices[table.choiceFor(slot, spots[slot], mask)].turns] }]
  })
}

/**
 * @returns is another piece than the one that was looked for nearer its home after the turns, by as many sequences as were
 *   done? Then they are a right step, for that one.
 */
export function helpsAnotherPiece(
  before: CubePosition,
  after: CubePosition,
  stage: PieceStage,
  lookFor: LookFor,
  nSequences: number,
): boolean {
  const wanted = 'piece' in lookFor ? lookFor.piece?.home : undefined
  const [then, now] = [sequencesByPiece(before, stage), sequencesByPiece(after, stage)]
  return [...then].some(([home, nThen]) => home !== wanted && nThen - (now.get(home) ?? 0) >= nSequences)
}

function sequencesByPiece(position: CubePosition, stage: PieceStage): Map<string, number> {
  const upright = afterTurns(position, turnsToBringBaseDown(position))
  const table = stageTable(LESSON_BOOK, stage) as PieceTable
  const spots = new Uint8Array(N_SLOTS)
  findSpots(asSeen(upright), table.kind, spots)
  const mask = doneMaskOf(spots, table.kind)
  return new Map(
    SLOTS_OF_STAGE[stage].map((place, slot) => [
      placeName(homeOfSeen(holdOf(upright), place)),
      (mask >> slot) & 1 ? 0 : sequencesIn(table.costOf(slot, spots[slot], mask)),
    ]),
  )
}
