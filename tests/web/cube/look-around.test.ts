/** Looking around a cube by presses. */

import { expect, test } from 'vitest'
import { isFromFront, LOOK_FROM_FRONT, LOOK_SIDES, type LookSide, lookFromSide } from '../../../web/cube/look-around.ts'

const pressed = (...sides: LookSide[]) => sides.reduce(lookFromSide, LOOK_FROM_FRONT)

test('[SW14] each press looks from further on that side, and its opposite leads back', () => {
  expect(LOOK_SIDES.map((side) => pressed(side))).toEqual([
    { pitch: -31, yaw: 10 },
    { pitch: -31, yaw: -80 },
    { pitch: -76, yaw: -35 },
    { pitch: 14, yaw: -35 },
  ])
  expect(isFromFront(pressed('left', 'right'))).toBe(true)
  expect(isFromFront(pressed('below', 'above'))).toBe(true)
})

test('[SW14] all the way round, every side is seen, and one is back where one was', () => {
  const round: LookSide[] = Array.from({ length: 8 }, () => 'left')
  expect(pressed(...round)).toEqual(LOOK_FROM_FRONT)
})

test('[SW14] straight from above there is nothing further', () => {
  expect(pressed('above', 'above')).toEqual({ pitch: -90, yaw: -35 })
  expect(pressed('above', 'above', 'above')).toEqual(pressed('above', 'above'))
})
