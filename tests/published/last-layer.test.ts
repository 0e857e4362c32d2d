/**
 * The last layer has 62,208 positions, and the lesson's sequences reach all of them.
 * Source: computed with GAP 4.12.1, independently of the project; also 4! * 4! / 2 * 3^3 * 2^3 by counting.
 */

import { expect, test } from 'vitest'
import { afterTurns } from '../../engine/cube/apply-turn.ts'
import { composePositions } from '../../engine/cube/compose-positions.ts'
import { type CubePosition, solvedCube } from '../../engine/cube/cube-position.ts'
import { asHeldHome } from '../../engine/cube/hold.ts'
import { turnOf } from '../../engine/cube/turns.ts'
import { LAST_LAYER_STAGES } from '../../engine/method/cases.ts'
import { goalMet } from '../../engine/method/goals.ts'
import { LESSON_BOOK } from '../../engine/method/sequence-book.ts'

const N_LAST_LAYER_POSITIONS = 62_208

test('[ST7] the lesson sequences and the top turn lead to all 62,208 positions of the last layer and no further', () => {
  expect(24 * 12 * 3 ** 3 * 2 ** 3).toBe(N_LAST_LAYER_POSITIONS)
  const steps = [[turnOf('U')], ...LAST_LAYER_STAGES.map((stage) => LESSON_BOOK[stage][0])].map((turns) =>
    asHeldHome(afterTurns(solvedCube(), turns)),
  )
  const met = new Map([[solvedCube().join(), solvedCube()]])
  // A map is walked through in the order of arrival, what arrives on the way included.
  for (const position of met.values()) {
    for (const step of steps) {
      const next: CubePosition = composePositions(position, step)
      met.set(next.join(), met.get(next.join()) ?? next)
    }
  }
  expect(met.size).toBe(N_LAST_LAYER_POSITIONS)
  expect([...met.values()].every((position) => goalMet(position, 3))).toBe(true)
})
