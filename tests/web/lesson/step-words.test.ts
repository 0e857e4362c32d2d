/** Every step of the lesson has four sentences that a child can read. */

import type { TFunction } from 'i18next'
import { beforeAll, describe, expect, test } from 'vitest'
import { COLOURS } from '../../../engine/cube/colour-scheme.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import { turnName } from '../../../engine/cube/turns.ts'
import { CLASSIC_BOOK } from '../../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { CASES_OF_STAGE, type CaseId, LAST_LAYER_STAGES } from '../../../engine/method/cases.ts'
import { arrangementsOf } from '../../../engine/method/last-layer-arrangements.ts'
import { PIECE_CASES_OF_STAGE, PIECE_STAGES } from '../../../engine/method/piece-cases.ts'
import { STAGES } from '../../../engine/method/stages.ts'
import { lessonSteps } from '../../../engine/method/way/lesson-steps.ts'
import type { WayStepView } from '../../../engine/wire/views.ts'
import { lesson } from '../../../web/locales/en/lesson.ts'
import { stepWords } from '../../../web/parts/lesson/step-words.ts'
import { cubeAfter } from '../../engine/cube/arbitraries.ts'
import { ROUNDABOUT } from '../../engine/method/book/books.ts'
import { inEnglish } from '../english.ts'
import { asSent, aWayFrom } from './a-way.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

/** Words of a key, of a place that was not filled in, or of a value that was not there. */
const LEAK =
  /\{\{|\}\}|undefined|null|NaN|\[object|\b(look|hold|do|why)\/|(lesson|common|desk|bench):|\b[UDFB]{1,2}[RL]\b/
const WORDS_IN_A_SENTENCE_MAX = 26

const A_STEP: WayStepView = {
  stage: 4,
  isRepair: false,
  lookFor: { key: 'look/dot', caseId: 'dot', piece: null },
  why: { key: 'why/stage-done' },
  mark: { key: 'hold/any' },
  hold: '',
  do: "F A F'",
  nSteps: 6,
}

describe('stepWords', () => {
  test('[WO1] every key of the closed lists has a sentence, and nothing of a key is seen', () => {
    const steps: WayStepView[] = [
      ...lessonSteps(cubeAfter('R x'), { from: 1, to: 7 }).map((step) => asSent(step)),
      ...atTheGoal(),
    ]
    for (const stage of STAGES) {
      for (let number = 0; number < 60; number++) {
        for (const book of [LESSON_BOOK, CLASSIC_BOOK]) steps.push(...aWayFrom(stage, 7, number, book))
        if (stage === 1) steps.push(...aWayFrom(1, 1, number, ROUNDABOUT))
      }
    }
    const met = new Set<string>()
    for (const [index, step] of steps.entries()) {
      for (const key of [step.lookFor.key, step.mark.key, step.why.key]) met.add(key)
      const words = stepWords(t, step, COLOURS[index % COLOURS.length])
      for (const sentence of Object.values(words)) expect(sentence).toSatisfy(isReadable)
      // A hint may stop after any of them, so each says something of its own.
      expect(new Set(Object.values(words)).size).toBe(4)
    }
    expect([...met].sort()).toEqual(
      [...Object.keys(lesson.look), ...Object.keys(lesson.hold), ...Object.keys(lesson.why)].sort(),
    )
  })

  test('[WO1] every case of every stage has a sentence of its own to look for', () => {
    const cases = [
      ...PIECE_STAGES.flatMap((stage) => PIECE_CASES_OF_STAGE[stage]),
      ...LAST_LAYER_STAGES.flatMap((stage) => CASES_OF_STAGE[stage]),
    ]
    expect(Object.keys(lesson.look).sort()).toEqual(['look/base-not-down', ...cases.map((id) => `look/${id}`)].sort())
  })

  // Origin: a real cube held with this colour down, green in front, or white in front on the blue base.
  test.each([
    ['white', 'the white and red edge', 'shows white on top'],
    ['yellow', 'the yellow and orange edge', 'shows yellow on top'],
    ['blue', 'the blue and red edge', 'shows blue on top'],
  ] as const)('[WO2] on a %s base the piece is %s', (baseColour, name, shows) => {
    const step: WayStepView = {
      ...A_STEP,
      stage: 1,
      lookFor: {
        key: 'look/edge-above-facing-up',
        caseId: 'edge-above-facing-up',
        piece: { home: 'DL', at: 'UB', colours: [facing('D', 'U'), facing('L', 'B')] },
      },
      mark: { key: 'hold/piece-above-home', at: 'UF', home: 'DF' },
      do: 'U2 F2',
      why: { key: 'why/piece-home' },
    }
    expect(stepWords(t, step, baseColour)).toEqual({
      look: `Look for ${name}. It is at the top back and ${shows}.`,
      hold: `Hold the cube so that the home of ${name} is at the bottom front. The piece comes right above it, to the top front.`,
      do: 'Turn the top layer half way round. Do F2.',
      why: `Then ${name} is home.`,
    })
  })

  test('[WO2] a corner has three colours', () => {
    const step: WayStepView = {
      ...A_STEP,
      stage: 2,
      lookFor: {
        key: 'look/corner-above-facing-right',
        caseId: 'corner-above-facing-right',
        piece: { home: 'DFR', at: 'UFL', colours: [facing('D', 'L'), facing('F', 'U'), facing('R', 'F')] },
      },
      mark: { key: 'hold/piece-above-home', at: 'URF', home: 'DFR' },
      why: { key: 'why/piece-out' },
    }
    expect(stepWords(t, step, 'white')).toMatchObject({
      look: 'Look for the white, green and orange corner. It is at the top front left and shows white to the left.',
      why: 'Then the white, green and orange corner is in the top layer. From there it can go home.',
    })
  })

  test('[WO4] a repair says first that an earlier layer is broken', () => {
    const { look } = stepWords(t, { ...A_STEP, isRepair: true }, 'white')
    expect(look).toBe(
      'An earlier layer is broken. It is mended first. Look at the top edges. None shows yellow on top: this is the dot.',
    )
    const repairs = lessonSteps(cubeAfter("R U R' U' F2"), { from: 7, to: 7 })
    expect(repairs.some(({ isRepair }) => isRepair)).toBe(true)
    for (const step of repairs) {
      expect(stepWords(t, asSent(step), 'white').look.startsWith('An earlier layer is broken.')).toBe(step.isRepair)
    }
  })

  test.each([
    [{ key: 'hold/line', along: 'left-to-right' }, 'Hold the cube so that the line goes from left to right.'],
    [
      { key: 'hold/arms', at: ['B', 'L'] },
      'Hold the cube so that the two arms of the corner shape point to the back and to the left.',
    ],
    [
      { key: 'hold/corners', corners: [{ place: 'UFL', facing: 'L' }] },
      'Hold the cube so that the top front left corner shows yellow to the left.',
    ],
    [
      {
        key: 'hold/corners',
        corners: [
          { place: 'UFL', facing: 'F' },
          { place: 'ULB', facing: 'U' },
        ],
      },
      'Hold the cube so that the top front left corner shows yellow to the front and the top back left corner shows yellow on top.',
    ],
    [{ key: 'hold/pair', side: 'B' }, 'Hold the cube so that the two corners that match are at the back.'],
    [{ key: 'hold/finished-side', side: 'F' }, 'Hold the cube so that the finished side is in front.'],
    [
      { key: 'hold/exchange', at: ['UF', 'UR'] },
      'Hold the cube so that the top front edge and the top right edge have to change places.',
    ],
    [{ key: 'hold/any' }, 'Hold the cube as you like, with white at the bottom.'],
    [{ key: 'hold/base-down' }, 'Hold the cube with the white centre at the bottom.'],
  ] as const)('[WO5] the landmark %j', (mark, words) => {
    expect(stepWords(t, { ...A_STEP, mark }, 'white').hold).toBe(words)
  })

  test('[WO5] where the hold is free and the case depends on it, the reason is that one sequence less is left', () => {
    const steps = arrangementsOf(7).flatMap((start) => lessonSteps(start, { from: 7, to: 7 }, CLASSIC_BOOK))
    const beside = steps.find(({ lookFor }) => lookFor.key === 'look/beside')
    expect(beside && stepWords(t, asSent(beside, CLASSIC_BOOK), 'white')).toMatchObject({
      hold: 'Hold the cube as you like, with white at the bottom.',
      why: 'Then this stage needs one sequence less.',
    })
  })

  test('[WO5] a piece that still has to be brought there by the top turn is not said to be there', () => {
    const piece = { home: 'FR', at: 'UB', colours: [facing('F', 'U'), facing('R', 'B')] } as const
    const lookFor = { key: 'look/edge-to-left', caseId: 'edge-to-left', piece } as const
    const words = (mark: WayStepView['mark']) => stepWords(t, { ...A_STEP, stage: 3, lookFor, mark }, 'white').hold
    expect(words({ key: 'hold/piece-above-centre', at: 'UF', home: 'FL' })).toBe(
      'Hold the cube so that the orange centre is in front. The edge comes right above it, to the top front.',
    )
    expect(words({ key: 'hold/piece-at', at: 'UF', home: 'FR' })).toBe(
      'Hold the cube so that the home of the green and orange edge is at the front right. The piece comes to the top front.',
    )
    expect(words({ key: 'hold/piece-at', at: 'FR', home: 'FR' })).toBe(
      'Hold the cube so that the green and orange edge is at the front right.',
    )
  })

  test.each([
    ['', 'Nothing more to do: the cube is held right now.'],
    ["U'", 'Turn the top layer a quarter to the right.'],
    ['F2', 'Do F2.'],
    ['A', 'Do the right trigger.'],
    ['U2 B^3', 'Turn the top layer half way round. Do the left trigger 3 times.'],
    ["F A F'", 'Do F, the right trigger, F’.'],
    ['A^3 y B^3', 'Do the right trigger 3 times, re-hold y, the left trigger 3 times.'],
    [
      'U (A y B)^2',
      'Turn the top layer a quarter to the left. Do 2 times (the right trigger, re-hold y, the left trigger).',
    ],
    // A part of a book that is not the lesson's is said as it is written.
    ["C^2 R'", 'Do C^2 R’.'],
  ])('[WO6] "%s" is said as "%s"', (written, words) => {
    expect(stepWords(t, { ...A_STEP, do: written }, 'white').do).toBe(words)
  })

  test('[WO6] what is said of each sequence of the lesson names every turn of it once', () => {
    for (const stage of STAGES) {
      for (const { written, turns } of LESSON_BOOK.stages[stage]) {
        const text = written
          .map((item) =>
            item.kind === 'turn' ? turnName(item.turn) : item.kind === 'part' ? `${item.name}^${item.power}` : '',
          )
          .join(' ')
        const said = stepWords(t, { ...A_STEP, do: text }, 'white').do
        expect(turnsSaid(said)).toBe(turns.map(turnName).join(' '))
      }
    }
  })
})

function facing<Colour extends string, Facing extends string>(colour: Colour, at: Facing) {
  return { colour, facing: at }
}

/** The goal case of a stage needs no step, but its key is in the list. */
function atTheGoal(): WayStepView[] {
  return (['cross', 'all-up', 'solved'] satisfies CaseId[]).map((caseId) => ({
    ...A_STEP,
    lookFor: { key: `look/${caseId}`, caseId, piece: null },
  }))
}

function isReadable(text: string): boolean {
  const sentences = text.split(/(?<=[.])\s/)
  return (
    !LEAK.test(text) &&
    sentences.every((sentence) => /^[A-Z].*\.$/.test(sentence) && sentence.split(' ').length <= WORDS_IN_A_SENTENCE_MAX)
  )
}

/** Reads the sentence back as turns. */
function turnsSaid(sentence: string): string {
  const turns = sentence
    .replace('Turn the top layer a quarter to the right.', "U'")
    .replaceAll(/the right trigger(?: (\d) times)?/g, (_, n) => "U R U' R' ".repeat(Number(n ?? 1)))
    .replaceAll(/the left trigger(?: (\d) times)?/g, (_, n) => "U' L' U L ".repeat(Number(n ?? 1)))
    .replaceAll(/Do |re-hold|[,.]/g, ' ')
  const read = parseTurns(turns)
  if (!read.ok) throw new Error(`${turns} cannot be read`)
  return read.value.map(turnName).join(' ')
}
