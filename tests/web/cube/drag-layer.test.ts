import { expect, test } from 'vitest'
import { turnName } from '../../../engine/cube/turns.ts'
import { AXES, cross, FACE_FRAMES, STICKER_PLACES, type Vector } from '../../../web/cube/cube-space.ts'
import { draggedDegrees, holdLayer, turnAtRelease } from '../../../web/cube/drag-layer.ts'
import { directionOnScreen, LOOK_FROM_FRONT, lookFurther } from '../../../web/cube/look-around.ts'

const HALF_SIDE_PX = 100

// Rows: sticker, where the finger goes (pixels), the turn. Sticker 20 is the upper right one of the front.
test.each([
  [20, 0, -140, 'R'],
  [20, 0, 140, "R'"],
  [18, 0, 140, 'L'],
  [18, 150, 45, "U'"],
  [18, -150, -45, 'U'],
  [24, 150, 45, 'D'],
  [19, 0, -140, "M'"],
  [21, 150, 45, 'E'],
  [9, 0, -140, "F'"],
  [0, 150, 50, "B'"],
  [10, 0, 140, 'S'],
  [20, 0, -330, 'R2'],
  [20, 0, 330, 'R2'],
])('[DR3] sticker %i dragged by %i, %i is %s', (sticker, x, y, name) => {
  const held = holdLayer(sticker, { x, y }, LOOK_FROM_FRONT, HALF_SIDE_PX)
  const turn = turnAtRelease(held, draggedDegrees(held, { x, y }))
  expect(turn === null ? null : turnName(turn)).toBe(name)
})

test('[DR3] from wherever the eye looks the sticker goes where the finger goes', () => {
  for (let pitch = -75; pitch <= 75; pitch += 25) {
    for (let yaw = -180; yaw < 180; yaw += 20) {
      for (const place of STICKER_PLACES) {
        const look = { pitch, yaw }
        if (!isSeenWell(place.index, look)) continue
        for (const [x, y] of [
          [60, 0],
          [-60, 10],
          [5, 60],
          [-20, -60],
        ]) {
          const held = holdLayer(place.index, { x, y }, look, HALF_SIDE_PX)
          const about = AXES.map((axis) => (axis === held.axis ? 1 : 0)) as unknown as Vector
          // The way along the face; how it rises from the face as it turns is not asked.
          const [goesX, goesY] = directionOnScreen(cross(about, FACE_FRAMES[place.face].out), look)
          const degrees = draggedDegrees(held, { x, y })
          expect((goesX * x + goesY * y) * Math.sign(degrees)).toBeGreaterThan(0)
          expect(held.layer).toBe(place.piece[AXES.indexOf(held.axis)])
        }
      }
    }
  }
})

test.each([
  [0, null],
  [44, null],
  [-44, null],
  [46, 'R'],
  [-46, "R'"],
  [134, 'R'],
  [136, 'R2'],
  [-180, 'R2'],
])('[DR4] let go at %i degrees it is %s', (degrees, name) => {
  const held = holdLayer(20, { x: 0, y: -50 }, LOOK_FROM_FRONT, HALF_SIDE_PX)
  const turn = turnAtRelease(held, degrees)
  expect(turn === null ? null : turnName(turn)).toBe(name)
})

test('[DR6] looking ends straight above and below and goes round without end', () => {
  expect(lookFurther(LOOK_FROM_FRONT, { pitch: -500, yaw: 0 }).pitch).toBe(-90)
  expect(lookFurther(LOOK_FROM_FRONT, { pitch: 500, yaw: 0 }).pitch).toBe(90)
  expect(lookFurther({ pitch: 0, yaw: 170 }, { pitch: 0, yaw: 20 }).yaw).toBe(-170)
  expect(lookFurther({ pitch: 0, yaw: -170 }, { pitch: 0, yaw: -20 }).yaw).toBe(170)
})

function isSeenWell(sticker: number, look: { pitch: number; yaw: number }): boolean {
  const { right, down } = FACE_FRAMES[STICKER_PLACES[sticker].face]
  const [a, b] = [directionOnScreen(right, look), directionOnScreen(down, look)]
  return a[0] * b[1] - a[1] * b[0] > 0.2
}
