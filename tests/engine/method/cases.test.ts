import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { formatStickers, parseStickers } from '../../../engine/cube/stickers.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import { CASES_OF_STAGE, type CaseId, caseOf, isCaseOf, LAST_LAYER_STAGES } from '../../../engine/method/cases.ts'
import { goalMet, goalsBeforeMet } from '../../../engine/method/goals.ts'
import { arrangementKey, arrangementsOf } from '../../../engine/method/last-layer-arrangements.ts'
import { STAGES } from '../../../engine/method/stages.ts'
import { cubeAfter, SEED, someTurns } from '../cube/arbitraries.ts'
import { anArrangementOf } from './starts.ts'

const aLastLayerStage = fc.constantFrom(...LAST_LAYER_STAGES)

test('[CA3] every case id belongs to one stage, and stages 1 to 3 have none', () => {
  const all = LAST_LAYER_STAGES.flatMap((stage) => CASES_OF_STAGE[stage])
  expect(new Set(all).size).toBe(all.length)
  for (const id of all) expect(STAGES.filter((stage) => isCaseOf(id, stage)).length).toBe(1)
  expect(isCaseOf('anything', 4)).toBe(false)
})

test.each(LAST_LAYER_STAGES)(
  '[CA1] the listed arrangements of stage %i are legal, at that stage, and all different',
  (stage) => {
    const arrangements = arrangementsOf(stage)
    expect(new Set(arrangements.map((position) => arrangementKey(position, stage))).size).toBe(arrangements.length)
    for (const position of arrangements) {
      expect(parseStickers(formatStickers(position)).ok).toBe(true)
      expect(goalsBeforeMet(position, stage)).toBe(true)
    }
  },
)

test.each(LAST_LAYER_STAGES)('[CA1] every position of stage %i is one of the listed arrangements', (stage) => {
  const listed = new Set(arrangementsOf(stage).map((position) => arrangementKey(position, stage)))
  fc.assert(
    fc.property(anArrangementOf(stage), (position) => {
      expect(listed.has(arrangementKey(position, stage))).toBe(true)
    }),
    { seed: SEED, numRuns: 200 },
  )
})

test('[CA2] a case is the same in every hold, and after a turn of the top layer where the goals allow one', () => {
  fc.assert(
    fc.property(
      aLastLayerStage.chain((stage) => fc.tuple(fc.constant(stage), anArrangementOf(stage))),
      fc.constantFrom('x', 'y', "z'", 'y2'),
      fc.constantFrom('U', "U'", 'U2'),
      ([stage, position], reHold, topTurn) => {
        const found = caseOf(position, stage)
        expect(caseOf(afterTurns(position, [turnOf(reHold)]), stage)).toBe(found)
        if (stage < 7) expect(caseOf(afterTurns(position, [turnOf(topTurn)]), stage)).toBe(found)
      },
    ),
    { seed: SEED, numRuns: 300 },
  )
})

test('[CA4] the first case of a stage is the one of its goal', () => {
  for (const stage of LAST_LAYER_STAGES) {
    expect(caseOf(solvedCube(), stage)).toBe(CASES_OF_STAGE[stage][0])
    for (const position of arrangementsOf(stage)) {
      if (goalMet(position, stage)) expect(caseOf(position, stage)).toBe(CASES_OF_STAGE[stage][0])
      // Only the corners can be aligned without being home: the top layer has still to be turned.
      else if (stage !== 6) expect(caseOf(position, stage)).not.toBe(CASES_OF_STAGE[stage][0])
    }
  }
})

// Seen on a solved cube after turns whose effect on the top layer is well known (A and B are the two triggers).
const A = "U R U' R'"
const B = "U' L' U L"
const CORNER_CYCLE = `L' ${A} ${A} L ${A} ${A} ${A} L' ${A} L`
const EDGE_CYCLE = `R U R' U' L' U' L U ${A} ${B}`
test.each([
  // The inverse of F A F': it makes the corner shape, done twice the line, and from the line held the other way the dot.
  [4, `F R U R' U' F'`, 'corner-shape'],
  [4, `F R U R' U' F' F R U R' U' F'`, 'line'],
  [4, `F R U R' U' F' F R U R' U' F' y F R U R' U' F'`, 'dot'],
  [6, 'U', 'aligned'],
  [6, CORNER_CYCLE, 'pair'],
  [6, `${CORNER_CYCLE} y2 ${CORNER_CYCLE} y2`, 'pair'],
  [7, EDGE_CYCLE, 'three-clockwise'],
  [7, `${EDGE_CYCLE} ${EDGE_CYCLE}`, 'three-anticlockwise'],
  [7, 'M2 U M2 U2 M2 U M2', 'across'],
] satisfies Array<[4 | 5 | 6 | 7, string, CaseId]>)('[CA2] stage %i after %s shows %s', (stage, written, id) => {
  expect(caseOf(cubeAfter(written), stage)).toBe(id)
})

test('[CA5] a case is asked only of positions at that stage', () => {
  expect(() => caseOf(cubeAfter('R'), 4)).toThrow('goals before stage 4')
  fc.assert(
    fc.property(someTurns, aLastLayerStage, (turns, stage) => {
      const position = afterTurns(solvedCube(), turns)
      if (!goalsBeforeMet(position, stage)) expect(() => caseOf(position, stage)).toThrow()
    }),
    { seed: SEED },
  )
})
