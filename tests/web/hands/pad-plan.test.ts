import { expect, test } from 'vitest'
import { type TurnName, turnOf } from '../../../engine/cube/turns.ts'
import { AXES, cross, STICKER_PLACES, scale, type Vector } from '../../../web/cube/cube-space.ts'
import { isInLayers, rotationOf } from '../../../web/cube/layer-rotation.ts'
import { directionOnScreen, LOOK_FROM_FRONT } from '../../../web/cube/look-around.ts'
import { type ArrowName, PAD } from '../../../web/parts/hands/pad-plan.ts'

/** The sticker that is seen nearest to each strip, and the way that its arrow points there, x to the right and y down. */
const AT_STRIP = { U: 19, L: 21, F: 7, B: 1, R: 23, D: 25 } as const
const WAYS: Readonly<Record<ArrowName, readonly [number, number]>> = {
  up: [0, -1],
  down: [0, 1],
  left: [-1, 0],
  right: [1, 0],
  'up-and-right': [1, 0],
  'up-and-left': [-1, 0],
  'down-and-right': [-1, 0],
  'down-and-left': [1, 0],
}

// The bent arrows of F and B go over the top on their way up: to the right for F, to the left for B. Down is the other way.
test('[BE5] arrows point where the stickers at their strip go', () => {
  for (const { face, first, last } of PAD) {
    for (const { turn, arrow } of [first, last]) {
      const [x, y] = wayOnScreen(turn, AT_STRIP[face])
      const [arrowX, arrowY] = WAYS[arrow]
      expect([turn, arrow, x * arrowX + y * arrowY > 0]).toEqual([turn, arrow, true])
    }
  }
})

test('[BE5] six strips hold the 18 turns of the faces, each once', () => {
  const turns = PAD.flatMap(({ first, half, last }) => [first.turn, half, last.turn])
  expect(new Set(turns).size).toBe(18)
  for (const { face, half } of PAD) expect(half).toBe(`${face}2`)
})

function wayOnScreen(name: TurnName, sticker: number) {
  const { axis, layers, degrees } = rotationOf(turnOf(name))
  const place = STICKER_PLACES[sticker]
  expect(isInLayers(place.piece, { axis, layers })).toBe(true)
  const about = scale(AXES.map((each) => (each === axis ? 1 : 0)) as unknown as Vector, Math.sign(degrees))
  return directionOnScreen(cross(about, place.centre), LOOK_FROM_FRONT)
}
