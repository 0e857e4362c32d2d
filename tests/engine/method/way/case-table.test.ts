import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../../engine/cube/cube-position.ts'
import { CLASSIC_BOOK } from '../../../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { LAST_LAYER_STAGES, type LastLayerStage } from '../../../../engine/method/cases.ts'
import { goalMet, goalsBeforeMet } from '../../../../engine/method/goals.ts'
import { arrangementsOf } from '../../../../engine/method/last-layer-arrangements.ts'
import type { SequenceBook } from '../../../../engine/method/sequence-book.ts'
import { lessonSteps } from '../../../../engine/method/way/lesson-steps.ts'
import { turns } from '../../cube/arbitraries.ts'

const TOP_TURNS = ['', 'U', "U'", 'U2'].map(turns)
const RE_HOLDS = ['', 'y', "y'", 'y2'].map(turns)

/** Can the goal be reached by this many sequences, whatever top turns and holds are chosen? Tries them all. */
function canFinishWithin(
  position: CubePosition,
  stage: LastLayerStage,
  nSequences: number,
  book: SequenceBook,
): boolean {
  if (TOP_TURNS.some((topTurn) => goalMet(afterTurns(position, topTurn), stage))) return true
  if (nSequences === 0) return false
  return book.stages[stage].some((sequence) =>
    TOP_TURNS.some((topTurn) =>
      RE_HOLDS.some((reHold) => {
        const next = afterTurns(position, [...topTurn, ...reHold, ...sequence.turns])
        return goalsBeforeMet(next, stage) && canFinishWithin(next, stage, nSequences - 1, book)
      }),
    ),
  )
}

test.each(LAST_LAYER_STAGES.flatMap((stage) => [LESSON_BOOK, CLASSIC_BOOK].map((book) => ({ stage, book }))))(
  '[LW4] at stage $stage no choice of turns and holds takes fewer sequences than the way of $book.title',
  ({ stage, book }) => {
    for (const position of arrangementsOf(stage)) {
      const steps = lessonSteps(position, { from: stage, to: stage }, book)
      const nSequences = steps.reduce((count, step) => count + step.do.nTimes, 0)
      // Two levels of all choices are enough to try every shorter way for all but the longest cases.
      expect(canFinishWithin(position, stage, Math.min(nSequences, 2), book)).toBe(nSequences <= 2)
      if (nSequences > 0) expect(canFinishWithin(position, stage, nSequences - 1, book)).toBe(false)
    }
  },
)
