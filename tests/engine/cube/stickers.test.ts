import fc from 'fast-check'
import { expect, test } from 'vitest'
import { drawCube } from '../../../engine/cube/draw-cube.ts'
import { FACES } from '../../../engine/cube/faces.ts'
import { formatStickers, parseStickers, stickersOf } from '../../../engine/cube/stickers.ts'
import { aPosition, cubeAfter, SEED } from './arbitraries.ts'

test('[CU8] what is written from a position reads back as the same position, hold included', () => {
  fc.assert(
    fc.property(aPosition, (position) => {
      expect(parseStickers(formatStickers(position))).toEqual({ ok: true, value: position })
    }),
    { seed: SEED, numRuns: 300 },
  )
})

test('[CU8] every picture shows each colour nine times', () => {
  fc.assert(
    fc.property(aPosition, (position) => {
      const stickers = stickersOf(position)
      for (let face = 0; face < FACES.length; face++) {
        expect(stickers.filter((seen) => seen === face).length).toBe(9)
      }
    }),
    { seed: SEED },
  )
})

test('[CU8] white space in a picture does not matter', () => {
  const picture = formatStickers(cubeAfter("R U2 F' x"))
  expect(parseStickers(` ${picture.replace(/.{9}/g, '$&\r\n\t')}`)).toEqual(parseStickers(picture))
})

// What one sees after single turns of a solved cube, by hand from the definition of the reading order.
test.each([
  ['U', 'UUUUUUUUU BBBRRRRRR RRRFFFFFF DDDDDDDDD FFFLLLLLL LLLBBBBBB'],
  ['R', 'UUFUUFUUF RRRRRRRRR FFDFFDFFD DDBDDBDDB LLLLLLLLL UBBUBBUBB'],
  ['F', 'UUUUUULLL URRURRURR FFFFFFFFF RRRDDDDDD LLDLLDLLD BBBBBBBBB'],
  ['D', 'UUUUUUUUU RRRRRRFFF FFFFFFLLL DDDDDDDDD LLLLLLBBB BBBBBBRRR'],
  ['x', 'FFFFFFFFF RRRRRRRRR DDDDDDDDD BBBBBBBBB LLLLLLLLL UUUUUUUUU'],
  ['M', 'UBUUBUUBU RRRRRRRRR FUFFUFFUF DFDDFDDFD LLLLLLLLL BDBBDBBDB'],
])('[CU8] %s is seen as written by hand', (written, picture) => {
  expect(formatStickers(cubeAfter(written))).toBe(picture.replaceAll(' ', ''))
})

test('[CU11] a text picture shows the cube unfolded', () => {
  const [top, side, bottom] = ['      U U F', 'L L L F F D R R R U B B', '      D D B']
  expect(drawCube(cubeAfter('R')).split('\n')).toEqual([top, top, top, side, side, side, bottom, bottom, bottom])
})

test('[CU11] every sticker of the picture is one that is seen', () => {
  fc.assert(
    fc.property(aPosition, (position) => {
      const letters = drawCube(position).replace(/\s/g, '')
      expect([...letters].sort()).toEqual([...formatStickers(position)].sort())
    }),
    { seed: SEED },
  )
})
