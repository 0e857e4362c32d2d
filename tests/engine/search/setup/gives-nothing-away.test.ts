/** What a setup must not give away. Rules SU: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../../engine/cube/cube-position.ts'
import { FACES } from '../../../../engine/cube/faces.ts'
import { formatTurns } from '../../../../engine/cube/format-turns.ts'
import { asHeldHome, HELD_CUBES, N_HOLDS } from '../../../../engine/cube/hold.ts'
import { stickersOf } from '../../../../engine/cube/stickers.ts'
import { inverseTurns, turnKind, turnLetters } from '../../../../engine/cube/turns.ts'
import { givesNothingAway, setupTurnsMin } from '../../../../engine/search/setup/gives-nothing-away.ts'
import { plainFaceTurns } from '../../../../engine/search/setup/plain-face-turns.ts'
import { setupFaces } from '../../../../engine/search/setup/setup-faces.ts'
import { aPosition, cubeAfter, SEED, someTurns, turns } from '../../cube/arbitraries.ts'

/** A word of twelve turns whose undoing meets the goal of stage 7 after twelve turns, and that of stage 1 earlier. */
const setup = turns("F R U R' U' F' U F R2 D R D'")
const start = afterTurns(solvedCube(), setup)
const secrets = (parTurns: number, lessonWay = '') => ({ to: 7 as const, parTurns, lessonWay: turns(lessonWay) })

test('[SU4] a setup is refused whose undoing meets the goal less than six turns over par', () => {
  expect(setupTurnsMin(secrets(6))).toBe(12)
  expect(givesNothingAway(start, setup, secrets(6))).toBe(true)
  expect(givesNothingAway(start, setup, secrets(7))).toBe(false)
})

test('[SU4] the goal counts from where it is met first, not from where the cube is solved', () => {
  const late = turns("U2 R U R' U' R U R' U' R U R' U' F2")
  const position = afterTurns(solvedCube(), late)
  // Undoing F2 finishes the cross of the base: one turn.
  expect(givesNothingAway(position, late, { to: 7, parTurns: 8, lessonWay: [] })).toBe(true)
  expect(givesNothingAway(position, late, { to: 1, parTurns: 1, lessonWay: [] })).toBe(false)
})

test('[SU4] a setup is refused whose undoing is the lesson way, or begins with it, in whatever hold that is written', () => {
  const undoing = inverseTurns(setup)
  expect(givesNothingAway(start, setup, { ...secrets(6), lessonWay: undoing })).toBe(false)
  expect(givesNothingAway(start, setup, { ...secrets(6), lessonWay: undoing.slice(0, 5) })).toBe(false)
  // The same first turns, D R' D' R2, for a cube turned about the vertical axis first; one turn written as two.
  expect(givesNothingAway(start, setup, secrets(6, "y D F' D' F F"))).toBe(false)
  expect(givesNothingAway(start, setup, secrets(6, "y D F' D' F"))).toBe(true)
})

test('[SU5] any turns do to a cube held home what their face turns do', () => {
  fc.assert(
    fc.property(someTurns, fc.nat(N_HOLDS - 1), (word, hold) => {
      const plain = plainFaceTurns(word, hold)
      expect(plain.every((turn) => turnKind(turn) === 'face')).toBe(true)
      expect(plain.every((turn, at) => at === 0 || turnLetters(turn) !== turnLetters(plain[at - 1]))).toBe(true)
      expect(afterTurns(solvedCube(), plain)).toEqual(asHeldHome(afterTurns(HELD_CUBES[hold], word)))
    }),
    { seed: SEED },
  )
})

test.each([
  ['R R', 'R2'],
  ["U D U'", 'D'],
  ['D U', 'U D'],
  ['L R2 L R', "R' L2"],
  ["F R R' F'", ''],
  ['M', "R L'"],
  ['Rw U', 'L F'],
  ['y F', 'R'],
])('[SU5] %s is as face turns %s', (word, plain) => {
  expect(formatTurns(plainFaceTurns(turns(word), 0))).toBe(plain)
})

test('[SU6] the pictures show each face of the cube held home, its own centre in the middle', () => {
  const faces = setupFaces(cubeAfter('R y'))
  expect(faces.F.join('')).toBe('FFDFFDFFD')
  expect(faces.U.join('')).toBe('UUFUUFUUF')
  fc.assert(
    fc.property(aPosition, (position) => {
      const pictures = setupFaces(position)
      expect(FACES.map((face) => pictures[face][4])).toEqual(FACES)
      const seen = FACES.flatMap((face) => pictures[face].map((colour) => FACES.indexOf(colour)))
      expect(seen).toEqual(Array.from(stickersOf(asHeldHome(position))))
    }),
    { seed: SEED },
  )
})
