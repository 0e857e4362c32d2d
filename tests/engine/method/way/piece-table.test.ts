import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { type CubePosition, solvedCube } from '../../../../engine/cube/cube-position.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { drawArrangement } from '../../../../engine/method/draw-start.ts'
import { goalMet, goalsBeforeMet, nPartsDone } from '../../../../engine/method/goals.ts'
import { PIECE_STAGES, type PieceStage } from '../../../../engine/method/piece-cases.ts'
import { turnsOfStep } from '../../../../engine/method/way/lesson-step.ts'
import { nextLessonStep } from '../../../../engine/method/way/lesson-steps.ts'
import { turns } from '../../cube/arbitraries.ts'
import { sourceNumbered } from '../starts.ts'

const TOP_TURNS = ['', 'U', "U'", 'U2'].map(turns)
const RE_HOLDS = ['', 'y', "y'", 'y2'].map(turns)

/** All positions after one step of a stage: any re-hold and top turn, one sequence, as often as it may be repeated. */
function afterOneStep(position: CubePosition, stage: PieceStage): CubePosition[] {
  return LESSON_BOOK.stages[stage].flatMap((sequence) =>
    TOP_TURNS.flatMap((topTurn) =>
      RE_HOLDS.flatMap((reHold) => {
        const reached = [afterTurns(position, [...reHold, ...topTurn, ...sequence.turns])]
        while (stage === 2 && reached.length < 5) reached.push(afterTurns(reached[reached.length - 1], sequence.turns))
        return reached
      }),
    ),
  )
}

/** Which of the stage's pieces are done? */
function doneIn(position: CubePosition, stage: PieceStage): number {
  return nPartsDone(position, stage)
}

test.each(PIECE_STAGES)('[LW10] at stage %i a piece that one step can bring home is brought home in one', (stage) => {
  for (let number = 0; number < 60; number++) {
    const position = drawArrangement(stage, sourceNumbered(number))
    if (goalMet(position, stage)) continue
    const step = nextLessonStep(position, { from: stage, to: stage })
    if (step === undefined) throw new Error('there is something to do')
    const reached = afterTurns(position, turnsOfStep(step))
    const best = Math.max(
      ...afterOneStep(position, stage)
        .filter((after) => goalsBeforeMet(after, stage))
        .map((after) => doneIn(after, stage)),
    )
    expect(goalsBeforeMet(reached, stage)).toBe(true)
    // Where some single step completes one more, so does the step of the lesson, and it undoes none.
    if (best > doneIn(position, stage)) {
      expect(step.why.key).toBe('why/piece-home')
      expect(doneIn(reached, stage)).toBeGreaterThan(doneIn(position, stage))
    } else expect(doneIn(reached, stage)).toBeGreaterThanOrEqual(doneIn(position, stage))
  }
})

// Seen on a solved cube after turns that bring one piece out.
test.each([
  [1, 'F2', 'look/edge-above-facing-up', 'F2'],
  [1, "R' F' R", 'look/edge-above-facing-side', "R' F R"],
  [1, "R' F' R U", 'look/edge-above-facing-side', "U' R' F R"],
  [2, "R U R' U'", 'look/corner-above-facing-front', "U R U' R'"],
  [2, "L' U' L U", 'look/corner-above-facing-right', "U' L' U L"],
  [2, "R U R' U' R U R' U' R U R' U'", 'look/corner-above-facing-up', "U R U' R' U R U' R' U R U' R'"],
  [2, "R U R' U' R U R' U'", 'look/corner-below-turned', "U R U' R' U R U' R'"],
  [3, "F' U' F U R U R' U'", 'look/edge-to-right', "U R U' R' y U' L' U L"],
  [3, "F U F' U' L' U' L U", 'look/edge-to-left', "U' L' U L y' U R U' R'"],
] as const)('[LW10] at stage %i after %s: %s, and the step is %s', (stage, written, lookFor, done) => {
  const position = afterTurns(solvedCube(), turns(written))
  const step = nextLessonStep(position, { from: stage, to: stage })
  expect([step?.stage, step?.lookFor.key]).toEqual([stage, lookFor])
  expect(step && turnsOfStep(step)).toEqual(turns(done))
  expect(step?.why.key).toBe('why/piece-home')
})
