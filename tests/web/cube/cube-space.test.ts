import { expect, test } from 'vitest'
import { stickerPermutation } from '../../../engine/cube/generators.ts'
import { STICKER_PLACES as PLACES_OF_ENGINE } from '../../../engine/cube/sticker-places.ts'
import { ALL_TURNS, turnKind, turnName } from '../../../engine/cube/turns.ts'
import { AXES, add, cross, STICKER_PLACES, scale, type Vector } from '../../../web/cube/cube-space.ts'
import { isInLayers, outlineSides, rotationOf, turnOfLayer } from '../../../web/cube/layer-rotation.ts'

test('[DR1] stickers lie where the engine says, with y turned down as CSS has it', () => {
  for (const place of STICKER_PLACES) {
    const { cell, facing } = PLACES_OF_ENGINE[place.index]
    expect(place.piece).toEqual([cell[0], -cell[1], cell[2]].map((n) => n + 0))
    const out = add(place.centre, scale(place.piece, -1))
    expect(out.map((n) => Math.sign(n) + 0)).toEqual([facing[0], -facing[1], facing[2]].map((n) => Math.sign(n) + 0))
  }
})

test.each(ALL_TURNS.map((turn) => [turnName(turn), turn] as const))(
  '[DR1] %s rotates as the engine turns',
  (_, turn) => {
    const rotation = rotationOf(turn)
    const permutation = stickerPermutation(turn)
    for (const place of STICKER_PLACES) {
      const turns = isInLayers(place.piece, rotation)
      const carried = turns ? rotated(place.centre, rotation.axis, rotation.degrees) : place.centre
      expect(carried.map(plain)).toEqual(STICKER_PLACES[permutation[place.index]].centre.map(plain))
    }
  },
)

test('[DR4] every quarter of every layer has its turn, and a whole circle has none', () => {
  for (const turn of ALL_TURNS) {
    if (turnKind(turn) !== 'face' && turnKind(turn) !== 'slice') continue
    const { axis, layers, degrees } = rotationOf(turn)
    expect(turnOfLayer(axis, layers[0], degrees)).toBe(turn)
    expect(turnOfLayer(axis, layers[0], degrees + 360)).toBe(turn)
  }
  expect(turnOfLayer('x', 1, 0)).toBeNull()
  expect(turnOfLayer('x', 1, 360)).toBeNull()
})

test('[DR7] an outline has 12 sides around an outer face, 4 x 8 around its belt; every turn of a layer closes', () => {
  // The face of the layer itself: 12 sides. Each of the four faces beside it: a row of three, 3 + 3 + 1 + 1 sides.
  const sides = STICKER_PLACES.flatMap((place) => outlineSides(place, { axis: 'x', layers: [1] }) ?? [])
  expect(sides.filter(Boolean)).toHaveLength(12 + 4 * 8)
  const middle = STICKER_PLACES.flatMap((place) => outlineSides(place, { axis: 'x', layers: [0] }) ?? [])
  expect(middle.filter(Boolean)).toHaveLength(4 * 8)
  const whole = STICKER_PLACES.flatMap((place) => outlineSides(place, { axis: 'y', layers: [-1, 0, 1] }) ?? [])
  expect(whole.filter(Boolean)).toHaveLength(6 * 12)
})

/** As CSS rotates, by quarters: the part along the axis stays, the rest goes on by the cross product. */
function rotated(vector: Vector, axis: (typeof AXES)[number], degrees: number): Vector {
  const about = AXES.map((each) => (each === axis ? 1 : 0)) as unknown as Vector
  let now = vector
  for (let quarter = 0; quarter < (((degrees / 90) % 4) + 4) % 4; quarter++) {
    const along = about.map((value, i) => value * now[i]) as unknown as Vector
    now = add(along, cross(about, now))
  }
  return now
}

function plain(value: number): number {
  return Math.round(value * 1e6) / 1e6 + 0
}
