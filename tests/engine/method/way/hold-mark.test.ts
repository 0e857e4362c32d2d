import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../../engine/cube/cube-position.ts'
import { FACES } from '../../../../engine/cube/faces.ts'
import { centreAt } from '../../../../engine/cube/hold.ts'
import { CLASSIC_BOOK } from '../../../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { caseOf, LAST_LAYER_STAGES } from '../../../../engine/method/cases.ts'
import { arrangementsOf } from '../../../../engine/method/last-layer-arrangements.ts'
import type { SequenceBook } from '../../../../engine/method/sequence-book.ts'
import type { Stage } from '../../../../engine/method/stages.ts'
import { buildCaseTable } from '../../../../engine/method/way/case-table.ts'
import { caseMark, type HoldMark } from '../../../../engine/method/way/hold-mark.ts'
import type { LessonStep } from '../../../../engine/method/way/lesson-step.ts'
import { lessonSteps } from '../../../../engine/method/way/lesson-steps.ts'
import { asSeen } from '../../../../engine/method/way/seen-cube.ts'
import { aPosition, SEED, turns } from '../../cube/arbitraries.ts'
import { FIVE_FOR_THE_CROSS, ROUNDABOUT } from '../book/books.ts'
import { anArrangementOf } from '../starts.ts'
import { colourAt, coloursAt, nSequencesLeft, placeOfColours, SIDE_HOLDS, walk } from './walk-steps.ts'

const TOP_EDGES = ['UF', 'UR', 'UB', 'UL']
const TOP_CORNERS = ['URF', 'UFL', 'ULB', 'UBR']
const SIDES = ['F', 'R', 'B', 'L']

/** The books with the stages that each of them can finish. */
const LAST_LAYER_BOOKS = [
  ...[LESSON_BOOK, CLASSIC_BOOK].flatMap((book) => LAST_LAYER_STAGES.map((stage) => ({ book, stage }))),
  { book: FIVE_FOR_THE_CROSS, stage: 4 as const },
]

/** Every step of the ways from all arrangements of a stage. */
function walkAll(stage: Stage, book: SequenceBook, visit: Parameters<typeof walk>[2]): void {
  for (const start of arrangementsOf(stage as 4))
    walk(start, lessonSteps(start, { from: stage, to: stage }, book), visit)
}

test.each(LAST_LAYER_BOOKS)(
  '[LW16] at stage $stage of $book.title a hold is left free exactly where all four need as many sequences and re-holds more',
  ({ stage, book }) => {
    walkAll(stage, book, (step, before) => {
      if (step.do.sequenceIndex === null) return
      const left = SIDE_HOLDS.map((reHold) => {
        const after = afterTurns(before, [...turns(reHold), ...step.do.turns])
        const steps = lessonSteps(after, { from: stage, to: stage }, book)
        return [nSequencesLeft(after, stage, book), steps.flatMap(({ hold }) => hold.turns).length].join()
      })
      expect(step.hold.mark.key === 'hold/any').toBe(new Set(left).size === 1)
    })
  },
)

/** The face where the centre of this colour is seen. */
function sideOf(held: CubePosition, colour: string): string {
  return FACES.find((face) => centreAt(held, face) === colour) ?? ''
}

/** What of the top layer a stage looks at, as the holder sees it: every sticker by the face of its colour's centre. */
function look(held: CubePosition, stage: Stage): string {
  const places = stage === 4 || stage === 7 ? TOP_EDGES : TOP_CORNERS
  const seen = places.flatMap((place) => coloursAt(held, place).map((colour) => sideOf(held, colour)))
  return (stage <= 5 ? seen.map((side) => side === 'U') : seen).join()
}

type MarkedStep = Pick<LessonStep, 'lookFor'> & { readonly do: Pick<LessonStep['do'], 'topTurn'> }

/** Is the landmark there, on a cube held so? A piece that the top turn brings is looked for after it. */
function isThere(mark: HoldMark, { lookFor, do: { topTurn } }: MarkedStep, held: CubePosition): boolean {
  const piece = 'piece' in lookFor ? lookFor.piece : null
  const colours = piece?.colours.map(({ colour }) => colour) ?? []
  const isPieceAt = (at: string) => {
    const begun = afterTurns(held, topTurn === null ? [] : [topTurn])
    return [...placeOfColours(begun, colours)].sort().join() === [...at].sort().join()
  }
  const isHomeAt = (home: string) =>
    [...home]
      .map((face) => sideColour(held, face))
      .sort()
      .join() === [...colours].sort().join()
  switch (mark.key) {
    case 'hold/base-down':
      return sideColour(held, 'D') === 'D'
    case 'hold/piece-above-home':
      return isPieceAt(mark.at) && isHomeAt(mark.home)
    case 'hold/piece-above-centre': {
      const begun = afterTurns(held, topTurn === null ? [] : [topTurn])
      const side = mark.at.replace('U', '')
      return isPieceAt(mark.at) && colourAt(begun, mark.at, side) === sideColour(held, side)
    }
    case 'hold/piece-at':
      return mark.at.includes('U') ? isPieceAt(mark.at) && isHomeAt(mark.home) : isPieceAt(mark.at)
    case 'hold/line':
    case 'hold/arms': {
      const along = mark.key === 'hold/line' && mark.along === 'left-to-right' ? ['L', 'R'] : ['F', 'B']
      const arms = mark.key === 'hold/arms' ? mark.at : along
      const up = SIDES.filter((side) => colourAt(held, `U${side}`, 'U') === 'U')
      return [...up].sort().join() === [...arms].sort().join()
    }
    case 'hold/corners':
      return mark.corners.every(({ place, facing }) => colourAt(held, place, facing) === 'U')
    case 'hold/pair': {
      const pair = TOP_CORNERS.filter((name) => name.includes(mark.side))
      return new Set(pair.map((name) => colourAt(held, name, mark.side))).size === 1
    }
    case 'hold/finished-side':
      return colourAt(held, `U${mark.side}`, mark.side) === sideColour(held, mark.side)
    case 'hold/exchange': {
      const [first, second] = mark.at.map((place) => place.replace('U', ''))
      const belongs = (from: string, to: string) => colourAt(held, `U${from}`, from) === sideColour(held, to)
      return belongs(first, second) && belongs(second, first)
    }
    case 'hold/any':
      return true
  }
}

function sideColour(held: CubePosition, face: string): string {
  return centreAt(held, face as 'U')
}

/** As far as the landmarks of the last layer look at a step. */
const NO_PIECE = { lookFor: { key: 'look/base-not-down' }, do: { topTurn: null } } as const

function expectOneSide(step: LessonStep, before: CubePosition): void {
  const { mark, turns: reHold } = step.hold
  const held = afterTurns(before, reHold)
  expect(centreAt(held, 'D')).toBe('D')
  expect(isThere(mark, step, held)).toBe(true)
  if (mark.key === 'hold/any' || mark.key === 'hold/base-down') return
  for (const side of SIDE_HOLDS.slice(1)) {
    const other = afterTurns(held, turns(side))
    const isSame = step.stage >= 4 && look(other, step.stage) === look(held, step.stage)
    expect([side, mark, isThere(mark, step, other)]).toEqual([side, mark, isSame])
  }
}

test('[LW11] the landmark of the hold is there once the cube is held so, and from no other side that looks different', () => {
  const aBook = fc.constantFrom(LESSON_BOOK, CLASSIC_BOOK)
  fc.assert(
    fc.property(fc.oneof(aPosition, anArrangementOf(4)), aBook, (position, book) => {
      walk(position, lessonSteps(position, { from: 1, to: 7 }, book), expectOneSide)
    }),
    { seed: SEED, numRuns: 150 },
  )
  fc.assert(
    fc.property(aPosition, (position) => {
      walk(position, lessonSteps(position, { from: 1, to: 1 }, ROUNDABOUT), expectOneSide)
    }),
    { seed: SEED, numRuns: 50 },
  )
})

test.each(LAST_LAYER_BOOKS)(
  '[LW11] every case of stage $stage has a landmark in $book.title, or leaves the hold free',
  ({ stage, book }) => {
    walkAll(stage, book, expectOneSide)
  },
)

test.each(LAST_LAYER_STAGES)('[LW11] whatever hold of stage %i a book may ask for, it has a landmark', (stage) => {
  const table = { ...buildCaseTable(stage, LESSON_BOOK.stages[stage]), isAnyHoldGood: () => false }
  const [choice] = table.choices
  for (const position of arrangementsOf(stage)) {
    const sides = SIDE_HOLDS.map((reHold) => look(afterTurns(position, turns(reHold)), stage))
    // From all sides the same, aligned, or with two corners across exchanged: the hold cannot matter.
    if (new Set(sides).size === 1 || ['aligned', 'diagonal'].includes(caseOf(position, stage))) continue
    const mark = caseMark(table, asSeen(position), choice)
    const isSeen = SIDE_HOLDS.map((reHold) => isThere(mark, NO_PIECE, afterTurns(position, turns(reHold))))
    expect([mark, isSeen]).toEqual([mark, sides.map((side) => side === sides[0])])
  }
})

test('[LW11] where pairs of neighbours change places the landmark is such a pair', () => {
  const marks = new Set<string>()
  walkAll(7, LESSON_BOOK, ({ lookFor, hold }) => {
    if (lookFor.key === 'look/beside') marks.add(JSON.stringify(hold.mark))
  })
  expect([...marks]).toEqual(['{"key":"hold/exchange","at":["UF","UR"]}'])
})
