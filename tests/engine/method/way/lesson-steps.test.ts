import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns, applyTurns } from '../../../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../../../engine/cube/cube-position.ts'
import { FACES } from '../../../../engine/cube/faces.ts'
import { formatTurns } from '../../../../engine/cube/format-turns.ts'
import { centreAt, HELD_CUBES, turnsToHold } from '../../../../engine/cube/hold.ts'
import { CORNER_PLACES, EDGE_PLACES } from '../../../../engine/cube/piece-places.ts'
import { stickersOf } from '../../../../engine/cube/stickers.ts'
import { CLASSIC_BOOK } from '../../../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { caseOf } from '../../../../engine/method/cases.ts'
import { goalMet, goalsBeforeMet } from '../../../../engine/method/goals.ts'
import { lessonWay } from '../../../../engine/method/lesson-way.ts'
import { PIECE_CASES_OF_STAGE } from '../../../../engine/method/piece-cases.ts'
import { STAGES, type Stage, type StageSpan } from '../../../../engine/method/stages.ts'
import { type LessonStep, turnsOfStep } from '../../../../engine/method/way/lesson-step.ts'
import { brokenStage, lessonSteps, nextLessonStep, writeStep } from '../../../../engine/method/way/lesson-steps.ts'
import { aPosition, cubeAfter, SEED } from '../../cube/arbitraries.ts'
import { anArrangementOf } from '../starts.ts'

const aSpan = fc
  .tuple(fc.constantFrom(...STAGES), fc.constantFrom(...STAGES))
  .map((ends): StageSpan => ({ from: Math.min(...ends) as Stage, to: Math.max(...ends) as Stage }))
const aBook = fc.constantFrom(LESSON_BOOK, CLASSIC_BOOK)
const someRuns = { seed: SEED, numRuns: 150 }

/** Calls back with each step and the positions before and after it. */
function walk(
  start: CubePosition,
  steps: readonly LessonStep[],
  visit: (step: LessonStep, before: CubePosition, after: CubePosition) => void,
): void {
  const position = copyCube(start)
  for (const step of steps) {
    const before = copyCube(position)
    applyTurns(position, turnsOfStep(step))
    visit(step, before, position)
  }
}

test('[LW11] the steps are the lesson way', () => {
  fc.assert(
    fc.property(aPosition, aSpan, aBook, (position, span, book) => {
      const steps = lessonSteps(position, span, book)
      expect(steps.flatMap(turnsOfStep)).toEqual(lessonWay(position, span, book))
      expect(JSON.parse(JSON.stringify(steps))).toEqual(steps)
    }),
    someRuns,
  )
})

test('[LW11] wherever a student stops on the way, the way from there is what was left of it', () => {
  fc.assert(
    fc.property(aPosition, fc.constantFrom(...STAGES), aBook, (position, to, book) => {
      const span: StageSpan = { from: to, to }
      const steps = lessonSteps(position, span, book)
      let nDone = 0
      walk(position, steps, (_, __, after) => {
        nDone++
        expect(nextLessonStep(after, to, book)).toEqual(steps[nDone])
      })
    }),
    someRuns,
  )
})

test('[LW7] a step is a re-hold or none, a top turn or none, and one sequence of the book, repeated only at stage 2', () => {
  fc.assert(
    fc.property(aPosition, aBook, (position, book) => {
      const steps = lessonSteps(position, { from: 1, to: 7 }, book)
      steps.forEach((step, index) => {
        const { key, topTurn, sequenceIndex, nTimes } = step.do
        if (step.lookFor.key === 'look/base-not-down') {
          expect([index, step.hold.turns.length, key]).toEqual([0, 1, 'do/nothing-more'])
          return
        }
        expect(formatTurns(step.hold.turns)).toMatch(/^(y['2]?)?$/u)
        if (topTurn !== null) expect(formatTurns([topTurn])).toMatch(/^U/u)
        expect(nTimes).toBeLessThanOrEqual(step.stage === 2 ? 5 : 1)
        const sequence = sequenceIndex === null ? [] : book.stages[step.stage][sequenceIndex].turns
        const repeated = Array.from({ length: nTimes }, () => sequence).flat()
        expect(step.do.turns).toEqual([...(topTurn === null ? [] : [topTurn]), ...repeated])
        expect(key).toBe(nTimes === 0 ? 'do/top-turn' : nTimes === 1 ? 'do/sequence' : 'do/sequence-again')
      })
    }),
    someRuns,
  )
})

test('[LW7] with the lesson book top turns of the last layer stand only at the end of stage 6, to align', () => {
  fc.assert(
    fc.property(anArrangementOf(4), (start) => {
      walk(start, lessonSteps(start, { from: 4, to: 7 }), (step, _, after) => {
        if (step.do.topTurn === null) return
        expect([step.stage, step.do.sequenceIndex, step.hold.mark.key]).toEqual([6, null, 'hold/any'])
        expect(goalMet(after, 6)).toBe(true)
      })
    }),
    someRuns,
  )
})

test('[LW8] no step breaks a goal that was met before it', () => {
  fc.assert(
    fc.property(aPosition, aBook, (position, book) => {
      walk(position, lessonSteps(position, { from: 1, to: 7 }, book), (step, before, after) => {
        expect(goalsBeforeMet(before, step.stage)).toBe(true)
        expect(goalsBeforeMet(after, step.stage)).toBe(true)
        expect(goalMet(before, step.stage)).toBe(false)
      })
    }),
    someRuns,
  )
})

test('[LW11] what a step says to look for is there: the case, and the piece with its colours', () => {
  fc.assert(
    fc.property(aPosition, aBook, (position, book) => {
      walk(position, lessonSteps(position, { from: 1, to: 7 }, book), ({ stage, lookFor }, before) => {
        if (lookFor.key === 'look/base-not-down') {
          expect(centreAt(before, 'D')).not.toBe('D')
          return
        }
        expect(centreAt(before, 'D')).toBe('D')
        expect(lookFor.key).toBe(`look/${lookFor.caseId}`)
        if (lookFor.piece === null) {
          expect(lookFor.caseId).toBe(caseOf(before, stage as 4))
          return
        }
        const { home, at, colours } = lookFor.piece
        expect(PIECE_CASES_OF_STAGE[stage as 1]).toContain(lookFor.caseId)
        expect([...colours.map(({ colour }) => colour)].sort()).toEqual([...home].sort())
        expect([...colours.map(({ facing }) => facing)].sort()).toEqual([...at].sort())
        for (const { colour, facing } of colours) expect(colourAt(before, at, facing)).toBe(colour)
      })
    }),
    someRuns,
  )
})

test('[LW11] the case of a piece is what the eye sees', () => {
  fc.assert(
    fc.property(aPosition, (position) => {
      walk(position, lessonSteps(position, { from: 1, to: 3 }), ({ lookFor }) => {
        if (lookFor.key === 'look/base-not-down' || lookFor.piece === null) return
        const { at, colours } = lookFor.piece
        const base = colours.find(({ colour }) => colour === 'D')?.facing
        const isAbove = at.includes('U')
        if (lookFor.caseId === 'edge-above-facing-up' || lookFor.caseId === 'corner-above-facing-up') {
          expect([isAbove, base]).toEqual([true, 'U'])
        }
        if (lookFor.caseId === 'edge-above-facing-side') expect([isAbove, base === 'U']).toEqual([true, false])
        if (lookFor.caseId === 'edge-between') expect(/[UD]/u.test(at)).toBe(false)
        if (lookFor.caseId.startsWith('corner-above-facing-') && at === 'URF') {
          expect(lookFor.caseId).toBe(`corner-above-facing-${{ U: 'up', R: 'right', F: 'front' }[base as 'U']}`)
        }
        if (lookFor.caseId.includes('below')) expect(at.includes('D')).toBe(true)
        if (lookFor.caseId.includes('beside')) expect(/[UD]/u.test(at)).toBe(false)
      })
    }),
    someRuns,
  )
})

test('[LW11] the landmark of the hold is there once the cube is held so', () => {
  fc.assert(
    fc.property(aPosition, aBook, (position, book) => {
      walk(position, lessonSteps(position, { from: 1, to: 7 }, book), (step, before) => {
        const { mark, turns: reHold } = step.hold
        const held = afterTurns(before, reHold)
        expect(centreAt(held, 'D')).toBe('D')
        if ('home' in mark && step.lookFor.key !== 'look/base-not-down' && step.lookFor.piece !== null) {
          const { colours } = step.lookFor.piece
          const begun = afterTurns(held, step.do.topTurn === null ? [] : [step.do.topTurn])
          const seen = [...mark.at].map((face) => colourAt(begun, mark.at, face)).sort()
          expect(seen).toEqual(colours.map(({ colour }) => colour).sort())
          expect([...mark.home].map((face) => centreAt(held, face as 'U')).sort()).toEqual(seen)
          if (mark.key === 'hold/piece-above-centre') expect(colourAt(begun, 'UF', 'F')).toBe(centreAt(held, 'F'))
        }
        if (mark.key === 'hold/arms' || mark.key === 'hold/line') {
          const arms = mark.key === 'hold/arms' ? mark.at : mark.along === 'left-to-right' ? ['L', 'R'] : ['F', 'B']
          const up = ['F', 'R', 'B', 'L'].filter((side) => colourAt(held, `U${side}`, 'U') === 'U')
          expect([...up].sort()).toEqual([...arms].sort())
        }
        if (mark.key === 'hold/corners') {
          for (const { place, facing } of mark.corners) expect(colourAt(held, place, facing)).toBe('U')
        }
        if (mark.key === 'hold/pair') {
          const names = CORNER_PLACES.map(({ name }) => name).filter(
            (name) => name.includes('U') && name.includes(mark.side),
          )
          expect(new Set(names.map((name) => colourAt(held, name, mark.side))).size).toBe(1)
        }
        if (mark.key === 'hold/finished-side') {
          expect(colourAt(held, `U${mark.side}`, mark.side)).toBe(centreAt(held, mark.side))
        }
      })
    }),
    someRuns,
  )
})

test('[LW11] a step says why: what comes true after it', () => {
  fc.assert(
    fc.property(aPosition, aBook, (position, book) => {
      walk(position, lessonSteps(position, { from: 1, to: 7 }, book), ({ stage, why, lookFor }, _, after) => {
        if (why.key === 'why/stage-done') expect(goalMet(after, stage)).toBe(true)
        if (why.key === 'why/case-becomes') expect(caseOf(after, stage as 4)).toBe(why.caseId)
        if (why.key === 'why/base-belongs-down') expect(centreAt(after, 'D')).toBe('D')
        if (lookFor.key === 'look/base-not-down' || lookFor.piece === null) return
        const home = [...lookFor.piece.home]
        const places = [...CORNER_PLACES, ...EDGE_PLACES].map(({ name }) => name)
        const at = places.find((name) => {
          const colours = [...name].map((face) => colourAt(after, name, face))
          return colours.length === home.length && home.every((face) => colours.includes(face))
        })
        const isHome = [...(at ?? '')].every((face) => colourAt(after, at ?? '', face) === centreAt(after, face as 'U'))
        expect(why.key === 'why/piece-home').toBe(isHome)
        if (why.key === 'why/piece-out') expect(at).toContain('U')
      })
    }),
    someRuns,
  )
})

test('[LW12] where an earlier layer is broken the way starts there and says so', () => {
  fc.assert(
    fc.property(aPosition, aSpan, (position, span) => {
      const broken = brokenStage(position, span.from)
      expect(broken === null).toBe(goalsBeforeMet(position, span.from))
      const steps = lessonSteps(position, span)
      if (broken !== null) expect([steps[0].stage, steps[0].isRepair]).toEqual([broken, true])
      for (const step of steps) expect(step.isRepair).toBe(step.stage < span.from)
    }),
    someRuns,
  )
  // A corner was lost on the way to the top cross.
  const lost = cubeAfter("F U R U' R' F' R U R' U'")
  expect(brokenStage(lost, 4)).toBe(2)
  expect(lessonSteps(lost, { from: 4, to: 4 }).map(({ stage, isRepair }) => [stage, isRepair])[0]).toEqual([2, true])
})

test('[LW7] held in any of the 24 holds the way is the same after the base has been brought down', () => {
  fc.assert(
    fc.property(anArrangementOf(1), fc.nat(HELD_CUBES.length - 1), (start, hold) => {
      const held = afterTurns(start, turnsToHold(hold))
      const steps = lessonSteps(held, { from: 1, to: 7 })
      const isBaseDown = centreAt(held, 'D') === 'D'
      expect(steps[0].lookFor.key === 'look/base-not-down').toBe(!isBaseDown)
      expect(goalMet(afterTurns(held, steps.flatMap(turnsOfStep)), 7)).toBe(true)
    }),
    { seed: SEED, numRuns: 100 },
  )
})

test.each([
  ["R U R' U' R U R' U' R U R' U'", 2, '', 'A^3'],
  ["R U R' U' R U R' U' R U R' U' U2 y", 2, '', 'U2 B^3'],
  ["F' U' F U R U R' U'", 3, '', 'A y B'],
  ["F R U R' U' F' y2", 4, 'y2', "F A F'"],
  ['U', 6, '', "U'"],
] as const)(
  '[LW11] after %s the step of stage %i is written as the book does: hold "%s", do "%s"',
  (setup, stage, hold, done) => {
    const step = nextLessonStep(cubeAfter(setup), stage)
    expect(step && writeStep(step)).toEqual({ hold, do: done })
  },
)

test('[LW11] a step of another book is written in its spelling', () => {
  const step = nextLessonStep(cubeAfter('F2'), 1, CLASSIC_BOOK)
  expect(step && writeStep(step, CLASSIC_BOOK)).toEqual({ hold: '', do: 'F2' })
})

/** @returns the home face whose colour is seen at a place, on one of its faces */
function colourAt(position: CubePosition, place: string, face: string): string {
  const found = [...CORNER_PLACES, ...EDGE_PLACES].find(({ name }) => sorted(name) === sorted(place))
  if (found === undefined) throw new Error(`${place} is no place`)
  return FACES[stickersOf(position)[found.stickers[[...found.name].indexOf(face)]]]
}

function sorted(name: string): string {
  return [...name].sort().join('')
}
