/** Who is in the middle of a step is told what is left of it. Rules LW: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../../engine/cube/cube-position.ts'
import { formatTurns } from '../../../../engine/cube/format-turns.ts'
import { inverseTurns } from '../../../../engine/cube/turns.ts'
import { CLASSIC_BOOK } from '../../../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { goalsBeforeMet } from '../../../../engine/method/goals.ts'
import { STAGES } from '../../../../engine/method/stages.ts'
import { turnsOfStep } from '../../../../engine/method/way/lesson-step.ts'
import { lessonSteps } from '../../../../engine/method/way/lesson-steps.ts'
import { stepUnderWay } from '../../../../engine/method/way/step-under-way.ts'
import { aPosition, SEED, turns } from '../../cube/arbitraries.ts'

test('[LW19] wherever a step of the lesson way is left off with an earlier layer broken, the rest of that step is left', () => {
  let nLookedAt = 0
  const aBook = fc.constantFrom(LESSON_BOOK, CLASSIC_BOOK)
  fc.assert(
    fc.property(aPosition, fc.constantFrom(...STAGES), aBook, fc.nat(), (start, to, book, at) => {
      const span = { from: to, to }
      const steps = lessonSteps(start, span, book).map((step) => ({ stage: step.stage, turns: turnsOfStep(step) }))
      const all = steps.flatMap((step) => step.turns)
      if (all.length === 0) return
      const nDone = at % all.length
      const done = all.slice(0, nDone)
      let nBefore = 0
      let index = 0
      while (nBefore + steps[index].turns.length <= nDone) nBefore += steps[index++].turns.length
      const step = steps[index]
      if (nDone === nBefore || goalsBeforeMet(afterTurns(start, done), step.stage)) return
      nLookedAt++
      const found = stepUnderWay(start, done, span, book)
      expect(found).toMatchObject({ nTurnsBefore: nBefore, stage: step.stage })
      expect(formatTurns(found?.left ?? [])).toBe(formatTurns(step.turns.slice(nDone - nBefore)))
    }),
    { seed: SEED, numRuns: 600 },
  )
  expect(nLookedAt).toBeGreaterThan(150)
})

// Rows: the start undoes the solution; what is done; what is left. Origin: F U R U' R' F' orients the line, METHOD.md.
test.each([
  ["F U R U' R' F'", 'F U R', "U' R' F'"],
  ["F U R U' R' F'", "U U' F U R", "U' R' F'"],
  // Not the beginning of what is taught here,
  ["F U R U' R' F'", "F U R'", null],
  // nothing begun, and all of it done.
  ["F U R U' R' F'", '', null],
  ["F U R U' R' F'", "F U R U' R' F'", null],
])('[LW19] where %s is needed and "%s" is done', (way, done, left) => {
  const start = afterTurns(solvedCube(), inverseTurns(turns(way)))
  const found = stepUnderWay(start, turns(done), { from: 4, to: 4 })
  expect(found === null ? null : formatTurns(found.left)).toBe(left)
})
