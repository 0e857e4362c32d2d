import { expect, test } from 'vitest'
import {
  ALL_TURNS,
  FACE_TURNS,
  inverseTurn,
  isTurn,
  TURN_NAMES,
  turnAxis,
  turnKind,
  turnLayers,
  turnLetters,
  turnName,
  turnNamed,
  turnOf,
} from '../../../engine/cube/turns.ts'

test('[NO8] there are 54 names, each for one turn', () => {
  expect(new Set(TURN_NAMES).size).toBe(54)
  expect(ALL_TURNS.map((turn) => turnOf(turnName(turn)))).toEqual(ALL_TURNS)
})

test('[NO8] families stand in a fixed order', () => {
  expect(TURN_NAMES.slice(0, 6)).toEqual(['U', "U'", 'U2', 'R', "R'", 'R2'])
  expect(TURN_NAMES.slice(18, 21)).toEqual(['Uw', "Uw'", 'Uw2'])
  expect(TURN_NAMES.slice(36, 39)).toEqual(['M', "M'", 'M2'])
  expect(TURN_NAMES.slice(45)).toEqual(['x', "x'", 'x2', 'y', "y'", 'y2', 'z', "z'", 'z2'])
  expect(FACE_TURNS).toEqual(ALL_TURNS.slice(0, 18))
})

test.each([
  ['R', 'face', 'R', [1], "R'"],
  ["Uw'", 'wide', 'U', [1, 0], 'Uw'],
  ['M2', 'slice', 'L', [0], 'M2'],
  ['E', 'slice', 'D', [0], "E'"],
  ["S'", 'slice', 'F', [0], 'S'],
  ['x', 're-hold', 'R', [1, 0, -1], "x'"],
  ['z2', 're-hold', 'F', [1, 0, -1], 'z2'],
] as const)('[NO8] %s is a %s turn about %s of layers %j; its inverse is %s', (name, kind, axis, layers, inverse) => {
  const turn = turnOf(name)
  expect([turnKind(turn), turnAxis(turn), turnLayers(turn)]).toEqual([kind, axis, layers])
  expect(turnName(inverseTurn(turn))).toBe(inverse)
  expect(name.startsWith(turnLetters(turn))).toBe(true)
})

test.each([[''], ['r'], ["R2'"], ['Rw3'], ['X'], ['toString']])('[NO8] %j names no turn', (name) => {
  expect(turnNamed(name)).toBeUndefined()
})

test.each([[-1], [54], [1.5], [Number.NaN], ['1'], [null]])('[NO8] %j is no turn', (value) => {
  expect(isTurn(value)).toBe(false)
})

test('[NO8] 0 and 53 are turns', () => {
  expect([isTurn(0), isTurn(53)]).toEqual([true, true])
})
