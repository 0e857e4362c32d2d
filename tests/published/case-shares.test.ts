/**
 * How often each case of the last layer comes up.
 * Source: common practice of the trade; the counts were computed with GAP 4.12.1 by double cosets, independently of the
 * project. Edges: none up 1/8, two beside 1/2, two across 1/4, all 1/8. Corners: all up 1/27, one pattern 2/27, six
 * patterns 4/27. Corners in place up to a turn of the layer: 1/6.
 */

import { expect, test } from 'vitest'
import { CASES_OF_STAGE, type CaseId, caseOf, LAST_LAYER_STAGES } from '../../engine/method/cases.ts'
import { arrangementsOf } from '../../engine/method/last-layer-arrangements.ts'

const N_ARRANGEMENTS = { 4: 8, 5: 27, 6: 24, 7: 12 } as const

const COUNTS: Readonly<Record<4 | 5 | 6 | 7, ReadonlyArray<readonly [CaseId, number]>>> = {
  4: [
    ['cross', 1],
    ['dot', 1],
    ['line', 2],
    ['corner-shape', 4],
  ],
  5: [
    ['all-up', 1],
    ['one-up-clockwise', 4],
    ['one-up-anticlockwise', 4],
    ['two-up-across', 4],
    ['two-up-one-side', 4],
    ['two-up-two-sides', 4],
    ['none-up-two-sides', 2],
    ['none-up-three-sides', 4],
  ],
  6: [
    ['aligned', 4],
    ['pair', 16],
    ['diagonal', 4],
  ],
  7: [
    ['solved', 1],
    ['three-clockwise', 4],
    ['three-anticlockwise', 4],
    ['across', 1],
    ['beside', 2],
  ],
}

test.each(LAST_LAYER_STAGES.map((stage) => [stage, N_ARRANGEMENTS[stage]] as const))(
  '[CA1] stage %i has %i arrangements',
  (stage, nArrangements) => {
    expect(arrangementsOf(stage).length).toBe(nArrangements)
  },
)

test.each(LAST_LAYER_STAGES.flatMap((stage) => COUNTS[stage].map(([id, count]) => [stage, id, count] as const)))(
  '[CA1] at stage %i the case %s has %i arrangements',
  (stage, id, count) => {
    expect(arrangementsOf(stage).filter((position) => caseOf(position, stage) === id).length).toBe(count)
  },
)

test('[CA1] no case is left out', () => {
  for (const stage of LAST_LAYER_STAGES) expect(COUNTS[stage].map(([id]) => id)).toEqual(CASES_OF_STAGE[stage])
})
