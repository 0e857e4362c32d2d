import { expect, test } from 'vitest'
import { COLOURS, colourOfFaces } from '../../../engine/cube/colour-scheme.ts'
import { FACES } from '../../../engine/cube/faces.ts'
import { cross, FACE_NORMALS, sameVector } from '../../../engine/cube/geometry.ts'

test('[CU10] white base: yellow up, green in front, orange right', () => {
  expect(colourOfFaces('white')).toEqual({
    U: 'yellow',
    R: 'orange',
    F: 'green',
    D: 'white',
    L: 'red',
    B: 'blue',
  })
})

test.each(COLOURS)('[CU10] with a %s base all six colours are there, and that one is down', (base) => {
  const scheme = colourOfFaces(base)
  expect(Object.values(scheme).sort()).toEqual([...COLOURS].sort())
  expect(scheme.D).toBe(base)
})

test.each(COLOURS)('[CU10] a %s base shows the usual opposites', (base) => {
  const scheme = colourOfFaces(base)
  const opposites = [
    [scheme.U, scheme.D],
    [scheme.R, scheme.L],
    [scheme.F, scheme.B],
  ].map((pair) => pair.sort().join(' and '))
  expect(opposites.sort()).toEqual(['blue and green', 'orange and red', 'white and yellow'])
})

test.each(COLOURS)(
  '[CU10] a %s base shows the same real cube: white up and green in front have red at the right',
  (base) => {
    const scheme = colourOfFaces(base)
    const normalOf = (colour: string) => FACE_NORMALS[FACES.find((face) => scheme[face] === colour) ?? 'U']
    expect(sameVector(cross(normalOf('white'), normalOf('green')), normalOf('red'))).toBe(true)
  },
)

test.each([
  ['white', 'green'],
  ['yellow', 'green'],
  ['orange', 'green'],
  ['red', 'green'],
  ['green', 'white'],
  ['blue', 'white'],
] as const)('[CU10] with a %s base %s is in front', (base, front) => {
  expect(colourOfFaces(base).F).toBe(front)
})
