import { expect, test } from 'vitest'
import { FACES, faceIndex, oppositeFace } from '../../../engine/cube/faces.ts'
import { CENTRE_STICKERS, CORNER_PLACES, EDGE_PLACES } from '../../../engine/cube/piece-places.ts'
import { STICKER_PLACES, stickerIndexAt } from '../../../engine/cube/sticker-places.ts'

test('[CU15] opposite faces share no edge, all others do', () => {
  for (const a of FACES) {
    for (const b of FACES.filter((face) => face !== a)) {
      const doTouch = EDGE_PLACES.some(({ faces }) => faces.includes(faceIndex(a)) && faces.includes(faceIndex(b)))
      expect(doTouch).toBe(oppositeFace(a) !== b)
    }
  }
})

test('[CU15] eight corners, twelve edges and six centres share the 54 stickers out among them', () => {
  const stickers = [...CORNER_PLACES, ...EDGE_PLACES].flatMap((place) => place.stickers).concat(CENTRE_STICKERS)
  expect([CORNER_PLACES.length, EDGE_PLACES.length, CENTRE_STICKERS.length]).toEqual([8, 12, 6])
  expect(stickers.sort((a, b) => a - b)).toEqual(Array.from({ length: 54 }, (_, index) => index))
})

test('[CU15] places are named by their faces: U or D first, else F or B, corners clockwise', () => {
  expect(CORNER_PLACES.map(({ name }) => name)).toEqual(['ULB', 'UBR', 'UFL', 'URF', 'DFR', 'DRB', 'DLF', 'DBL'])
  expect(EDGE_PLACES.map(({ name }) => name).join(' ')).toBe('UB UL UR UF FR BR FL BL DR DF DL DB')
})

test('[CU15] a sticker is found by its cell and the way it looks; a sticker inside the cube is not', () => {
  STICKER_PLACES.forEach(({ cell, facing }, index) => {
    expect(stickerIndexAt(cell, facing)).toBe(index)
  })
  expect(() => stickerIndexAt([1, 0, 0], [0, 1, 0])).toThrow('sticker')
})
