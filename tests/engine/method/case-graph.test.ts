import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import { type BookFault, buildCaseGraph } from '../../../engine/method/case-graph.ts'
import { LAST_LAYER_STAGES, type LastLayerStage } from '../../../engine/method/cases.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import { arrangementsOf } from '../../../engine/method/last-layer-arrangements.ts'
import { lessonGraph } from '../../../engine/method/lesson-way.ts'
import { LESSON_BOOK } from '../../../engine/method/sequence-book.ts'
import { repeated, turns } from '../cube/arbitraries.ts'

const TOP_TURNS = ['', 'U', "U'", 'U2'].map(turns)
const RE_HOLDS = ['', 'y', "y'", 'y2'].map(turns)

/** Can the goal be reached by this many sequences, whatever top turns and holds are chosen? Tries them all. */
function canFinishWithin(position: CubePosition, stage: LastLayerStage, nSequences: number): boolean {
  if (TOP_TURNS.some((topTurn) => goalMet(afterTurns(position, topTurn), stage))) return true
  if (nSequences === 0) return false
  return TOP_TURNS.some((topTurn) =>
    RE_HOLDS.some((reHold) => {
      const next = afterTurns(position, [...topTurn, ...reHold, ...LESSON_BOOK[stage][0]])
      return canFinishWithin(next, stage, nSequences - 1)
    }),
  )
}

test.each(LAST_LAYER_STAGES)(
  '[LW4] at stage %i no choice of turns and holds takes fewer sequences than the graph says',
  (stage) => {
    for (const position of arrangementsOf(stage)) {
      const nSequences = lessonGraph(stage).nSequences(position)
      // Three levels of 16 choices are enough to try every shorter way for all but the longest cases.
      expect(canFinishWithin(position, stage, Math.min(nSequences, 2))).toBe(nSequences <= 2)
      if (nSequences > 0) expect(canFinishWithin(position, stage, nSequences - 1)).toBe(false)
    }
  },
)

test.each([
  ['that turns a lower layer', 4, ['R'], { code: 'method/breaks-earlier-stage', stage: 4, sequenceIndex: 0 }],
  // It keeps two layers and would serve for stage 4, but flips edges of the finished top cross.
  [
    'that unmakes the top cross',
    5,
    ["R U2 R' U' R U' R'", "F R U R' U' F'"],
    { code: 'method/breaks-earlier-stage', stage: 5, sequenceIndex: 1 },
  ],
  [
    'run backwards',
    7,
    [repeated(turns("R U R' U'"), 5)],
    { code: 'method/breaks-earlier-stage', stage: 7, sequenceIndex: 0 },
  ],
  ['that ends upside down', 4, ["F R U R' U' F' x2"], { code: 'method/base-not-down', stage: 4, sequenceIndex: 0 }],
  ['that does nothing', 4, ["R R'"], { code: 'method/cannot-finish', stage: 4, caseId: 'line' }],
  ['that is not there', 6, [], { code: 'method/cannot-finish', stage: 6, caseId: 'pair' }],
  // Only pairs of edges change places: three edges that go round are never finished.
  [
    'that is too weak',
    7,
    ['M2 U M2 U2 M2 U M2'],
    { code: 'method/cannot-finish', stage: 7, caseId: 'three-clockwise' },
  ],
] satisfies Array<[string, LastLayerStage, Array<string | Turn[]>, BookFault]>)(
  '[LW5] a book with a sequence %s is refused for stage %i',
  (_, stage, sequences, error) => {
    const book = sequences.map((sequence) => (typeof sequence === 'string' ? turns(sequence) : sequence))
    expect(buildCaseGraph(stage, book)).toEqual({ ok: false, error })
  },
)

test('[LW5] a teacher with more sequences has a shorter way', () => {
  const shorter = buildCaseGraph(5, [turns("R U R' U R U2 R'"), turns("L' U' L U' L' U2 L")])
  if (!shorter.ok) throw new Error(shorter.error.code)
  const counts = arrangementsOf(5).map((position) => shorter.value.nSequences(position))
  expect(Math.max(...counts)).toBe(2)
})

test('[LW4] a graph is asked only of positions of its stage that are held with the base down', () => {
  const [solved] = arrangementsOf(4)
  expect(() => lessonGraph(4).firstStep(afterTurns(solved, turns('R')))).toThrow('goals before stage 4')
  expect(() => lessonGraph(4).firstStep(afterTurns(solved, turns('x')))).toThrow('base down')
})
