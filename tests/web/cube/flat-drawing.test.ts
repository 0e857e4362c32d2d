import { expect, test } from 'vitest'
import { FACE_FRAMES, STICKER_PLACES } from '../../../web/cube/cube-space.ts'
import { flatMatrix, flatSticker, SEEN_FACES } from '../../../web/cube/flat-drawing.ts'
import { directionOnScreen } from '../../../web/cube/look-around.ts'

const LOOK = { pitch: -30, yaw: -36 }

// Origin: the drawn cube of our own design sheet, written there by a program of its own.
test.each([
  [0, true, '-0.298,-2.238 0.261,-2.036 -0.145,-1.756 -0.703,-1.959'],
  [0, false, '-0.27,-2.151 0.086,-2.022 -0.173,-1.844 -0.529,-1.973'],
  [18, true, '-1.97,-0.953 -1.412,-0.751 -1.412,-0.153 -1.97,-0.356'],
  [9, true, '0.423,-0.18 0.829,-0.459 0.829,0.139 0.423,0.418'],
])('[DR2] sticker %i has its measures', (index, matters, expected) => {
  const drawn = flatSticker(STICKER_PLACES[index], matters)
  const numbers = (text: string) => text.split(/[ ,]/).map(Number)
  for (const [at, value] of numbers(drawn).entries()) expect(value).toBeCloseTo(numbers(expected)[at], 2)
})

test('[DR2] a mark lies in the plane of its sticker', () => {
  const numbers = /matrix\((.*)\)/.exec(flatMatrix(STICKER_PLACES[22]))?.[1].split(' ').map(Number)
  for (const [at, value] of [0.809, 0.294, 0, 0.866, -0.882, 0.607].entries())
    expect(numbers?.[at]).toBeCloseTo(value, 2)
})

test('[DR2] the plain view shows the three faces that look towards the eye', () => {
  for (const [face, { right, down }] of Object.entries(FACE_FRAMES)) {
    const [a, b] = [directionOnScreen(right, LOOK), directionOnScreen(down, LOOK)]
    // Seen from outside, right and down of a face run clockwise on the screen.
    const isSeen = a[0] * b[1] - a[1] * b[0] > 0
    expect(isSeen).toBe(SEEN_FACES.plain.some((seen) => seen === face))
  }
})

test('[DR2] over a mirror, each sticker of the bottom lies straight below the piece that carries it, and all of them below the cube', () => {
  const yOf = (point: string) => Number(point.split(',')[1])
  for (const place of STICKER_PLACES.filter(({ face }) => face === 'D')) {
    const points = flatSticker(place, true).split(' ')
    const x = points.reduce((sum, point) => sum + Number(point.split(',')[0]), 0) / 4
    expect(x).toBeCloseTo(directionOnScreen(place.centre, LOOK)[0], 2)
    // The lower edges of the outline run between these two corners of the bottom.
    const [left, front] = [directionOnScreen([-1.5, 1.5, 1.5], LOOK), directionOnScreen([1.5, 1.5, 1.5], LOOK)]
    const edgeAtX = left[1] + ((x - left[0]) / (front[0] - left[0])) * (front[1] - left[1])
    if (x < front[0]) expect(Math.min(...points.map(yOf))).toBeGreaterThan(edgeAtX)
  }
})
