/** Is the real cube ready? Rules WR: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { drawStart } from '../../../engine/method/draw-start.ts'
import { STAGES } from '../../../engine/method/stages.ts'
import { lookOf, readyQuestion } from '../../../web/parts/written/ready-question.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'
import { sourceNumbered } from '../../engine/method/starts.ts'

const aStart = fc.record({
  stage: fc.constantFrom(...STAGES),
  number: fc.integer({ min: 0, max: 9_999 }),
})
const drawn = ({ stage, number }: { stage: (typeof STAGES)[number]; number: number }) =>
  drawStart({ span: { from: stage, to: stage }, random: sourceNumbered(number) })

test('[WR4] one of three pictures is what a hidden side shows; the others stay other pictures, however they are turned', () => {
  fc.assert(
    fc.property(aStart, fc.nat({ max: 9_999 }), (wish, chance) => {
      const start = drawn(wish)
      const { face, options, answer } = readyQuestion(start, sourceNumbered(chance))
      expect(['B', 'L', 'D']).toContain(face)
      expect(options).toHaveLength(3)
      const truth = lookOf(start, face)
      expect(options[answer]).toEqual(truth)
      // All show the same middle, so the middle gives nothing away.
      expect(new Set(options.map((look) => look[4])).size).toBe(1)
      for (const [index, look] of options.entries()) {
        if (index !== answer) expect(rotations(look).map(String)).not.toContain(String(truth))
      }
    }),
    { seed: SEED },
  )
})

test('[WR4] after a wrong answer another side is asked for; each side and each place of the answer comes up', () => {
  const start = drawn({ stage: 1, number: 1 })
  const asked = Array.from({ length: 200 }, (_, chance) => readyQuestion(start, sourceNumbered(chance)))
  expect(new Set(asked.map(({ face }) => face))).toEqual(new Set(['B', 'L', 'D']))
  expect(new Set(asked.map(({ answer }) => answer))).toEqual(new Set([0, 1, 2]))
  for (const { face } of asked) expect(readyQuestion(start, sourceNumbered(7), face).face).not.toBe(face)
})

test('[WR4] a side of one colour is not asked for where another one tells more', () => {
  for (let number = 0; number < 100; number++) {
    const start = drawn({ stage: 7, number })
    const { face } = readyQuestion(start, sourceNumbered(number))
    expect(new Set(lookOf(start, face)).size).toBeGreaterThan(1)
  }
})

function rotations(look: readonly number[]): number[][] {
  const quarter = (nine: readonly number[]) => [6, 3, 0, 7, 4, 1, 8, 5, 2].map((from) => nine[from])
  const once = quarter(look)
  const twice = quarter(once)
  return [[...look], once, twice, quarter(twice)]
}
