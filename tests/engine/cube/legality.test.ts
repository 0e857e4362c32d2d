import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { findLegalityFault, isOddPermutation } from '../../../engine/cube/legality.ts'
import { CORNER_PLACES, EDGE_PLACES, type PiecePlace } from '../../../engine/cube/piece-places.ts'
import { formatStickers, parseStickers } from '../../../engine/cube/stickers.ts'
import { aPosition, aTurn, cubeAfter, SEED } from './arbitraries.ts'

const cornerAt = (name: string) => CORNER_PLACES.find((place) => place.name === name) as PiecePlace
const edgeAt = (name: string) => EDGE_PLACES.find((place) => place.name === name) as PiecePlace

/** Takes the pieces at two places (or one and the same) out of a picture and puts them back `by` stickers further. */
function reassembled(picture: string, from: PiecePlace, to: PiecePlace, by: number): string {
  const stickers = picture.split('')
  from.stickers.forEach((sticker, side) => {
    const target = to.stickers[(side + by) % to.stickers.length]
    stickers[target] = picture[sticker]
    if (from !== to) stickers[sticker] = picture[target]
  })
  return stickers.join('')
}

const SCRAMBLED = formatStickers(cubeAfter("R U2 F' D L2 B x"))
const [URF, UFL] = [cornerAt('URF'), cornerAt('UFL')]
const [UF, FR, UB] = [edgeAt('UF'), edgeAt('FR'), edgeAt('UB')]

test.each([
  ['one corner twisted clockwise', reassembled(SCRAMBLED, URF, URF, 1), { code: 'cube/corner-twist', nThirds: 1 }],
  ['one corner twisted anticlockwise', reassembled(SCRAMBLED, URF, URF, 2), { code: 'cube/corner-twist', nThirds: 2 }],
  ['one edge flipped', reassembled(SCRAMBLED, UF, UF, 1), { code: 'cube/edge-flip' }],
  ['two edges exchanged', reassembled(SCRAMBLED, UF, UB, 0), { code: 'cube/parity' }],
  ['two corners exchanged', reassembled(SCRAMBLED, URF, UFL, 0), { code: 'cube/parity' }],
])('[LE1] %s is named', (_, picture, error) => {
  expect(parseStickers(picture)).toEqual({ ok: false, error })
})

test.each([
  ['two corners twisted in opposite ways', reassembled(reassembled(SCRAMBLED, URF, URF, 1), UFL, UFL, 2)],
  ['two edges flipped', reassembled(reassembled(SCRAMBLED, UF, UF, 1), FR, FR, 1)],
  ['two edges and two corners exchanged', reassembled(reassembled(SCRAMBLED, UF, UB, 0), URF, UFL, 0)],
])('[LE1] %s can be solved and is accepted', (_, picture) => {
  expect(parseStickers(picture).ok).toBe(true)
})

const SOLVED = formatStickers(cubeAfter(''))
const withSticker = (index: number, letter: string) => SOLVED.slice(0, index) + letter + SOLVED.slice(index + 1)

test.each([
  ['nothing', '', { code: 'cube/sticker-count', nStickers: 0 }],
  ['one sticker too few', SOLVED.slice(1), { code: 'cube/sticker-count', nStickers: 53 }],
  ['one sticker too many', `${SOLVED}U`, { code: 'cube/sticker-count', nStickers: 55 }],
  ['a letter that is no face', withSticker(7, 'W'), { code: 'cube/unknown-sticker', token: 'W', at: 7 }],
  ['a letter in the wrong case', withSticker(0, 'u'), { code: 'cube/unknown-sticker', token: 'u', at: 0 }],
  ['a character of two units', withSticker(3, '😀'), { code: 'cube/unknown-sticker', token: '😀', at: 3 }],
  ['two equal centres', withSticker(4, 'D'), { code: 'cube/centres' }],
  ['the centres of a mirrored cube', SOLVED.replace(/[RL]/g, (l) => (l === 'R' ? 'L' : 'R')), { code: 'cube/centres' }],
  ['a corner with two equal colours', withSticker(8, 'F'), { code: 'cube/unknown-piece', place: 'URF' }],
  ['an edge with opposite colours', withSticker(7, 'B'), { code: 'cube/unknown-piece', place: 'UF' }],
  // The URF corner with its colours in anticlockwise order: R and F exchanged.
  ['a mirrored corner', withSticker(9, 'F').replace(/^(.{20})F/, '$1R'), { code: 'cube/unknown-piece', place: 'URF' }],
  // The UF edge shows U and R: there are two UR edges then.
  ['the same edge twice', withSticker(19, 'R'), { code: 'cube/doubled-piece', place: 'UF', piece: 'UR' }],
])('[LE1] %s is named', (_, picture, error) => {
  expect(parseStickers(picture)).toEqual({ ok: false, error })
})

test('[LE2] of the twelve ways to put a corner, an edge and a pair of edges back, one is legal', () => {
  const assemblies = [0, 1, 2].flatMap((twist) =>
    [0, 1].flatMap((flip) =>
      [false, true].map((isExchanged) => {
        const turned = reassembled(reassembled(SCRAMBLED, URF, URF, twist), FR, FR, flip)
        return isExchanged ? reassembled(turned, UF, UB, 0) : turned
      }),
    ),
  )
  expect(assemblies.map((picture) => parseStickers(picture).ok)).toEqual([true, ...new Array(11).fill(false)])
})

test('[LE5] turns lead from legal positions to legal positions', () => {
  fc.assert(
    fc.property(aPosition, aTurn, (position, turn) => {
      expect(findLegalityFault(afterTurns(position, [turn]))).toBeUndefined()
    }),
    { seed: SEED },
  )
})

test('[LE4] no text makes the reader throw, and what it accepts it writes again', () => {
  const nearlyPictures = fc
    .tuple(aPosition, fc.nat(53), fc.constantFrom('U', 'R', 'F', 'D', 'L', 'B', 'Q', ''))
    .map(([position, at, letter]) => {
      const picture = formatStickers(position)
      return picture.slice(0, at) + letter + picture.slice(at + 1)
    })
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: 'binary', maxLength: 80 }), nearlyPictures), (text) => {
      const read = parseStickers(text)
      if (read.ok) expect(formatStickers(read.value)).toBe(text.replace(/\s/g, ''))
      else expect(read.error.code).toMatch(/^cube\//)
    }),
    { seed: SEED, numRuns: 500 },
  )
})

test.each([
  [[], false],
  [[0, 1, 2], false],
  [[1, 0, 2], true],
  [[1, 2, 0], false],
  [[19, 8, 12, 9], false],
])('[LE6] is the permutation %j odd? %s', (permutation, isOdd) => {
  expect(isOddPermutation(permutation)).toBe(isOdd)
})
