/** Walks the lesson way, step by step, without asking what the steps are for: the one loop behind ways, steps and hints. */

import { afterTurns } from '../../cube/apply-turn.ts'
import type { CubePosition } from '../../cube/cube-position.ts'
import { assert } from '../../result.ts'
import type { SequenceBook } from '../sequence-book.ts'
import { STAGES, type Stage } from '../stages.ts'
import { stageTable } from './lesson-tables.ts'
import { applySeen, asSeen, N_SEEN_PLACES, type SeenCube, turnsToBringBaseDown } from './seen-cube.ts'
import { choiceIn, STUCK, type StageTable } from './stage-table.ts'

/**
 * Hears of one step.
 *
 * @param answer names the choice, and at stages 1 to 3 the piece, as `stage-table.ts` says
 * @returns true to go on
 */
export type StepVisitor = (stage: Stage, table: StageTable, answer: number) => boolean

/**
 * Walks from any position, base down or not, to the goal of stage `to`; a re-hold that brings the base down is not told.
 * Asserts that the book leads there, as the checker has proved of every sound book.
 */
export function walkWay(position: CubePosition, to: Stage, book: SequenceBook, visit: StepVisitor): void {
  let seen = asSeen(afterTurns(position, turnsToBringBaseDown(position)))
  let after: SeenCube = new Uint8Array(N_SEEN_PLACES)
  for (const stage of STAGES) {
    if (to < stage) return
    const table = stageTable(book, stage)
    let answer = table.next(seen)
    for (; answer >= 0; answer = table.next(seen)) {
      if (!visit(stage, table, answer)) return
      applySeen(seen, table.choices[choiceIn(answer)].effect, after)
      ;[seen, after] = [after, seen]
    }
    assert(answer !== STUCK, `the book leads to the goal of stage ${stage}`)
  }
}
