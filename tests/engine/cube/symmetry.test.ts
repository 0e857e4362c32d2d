import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import {
  conjugatePosition,
  conjugateTurn,
  inverseSymmetry,
  N_AXIS_SYMMETRIES,
  N_SYMMETRIES,
  N_UPRIGHT_SYMMETRIES,
} from '../../../engine/cube/symmetry.ts'
import { FACE_TURNS, turnAxis, turnOf } from '../../../engine/cube/turns.ts'
import { SEED } from './arbitraries.ts'

const aWord = fc.array(fc.constantFrom(...FACE_TURNS), { maxLength: 20 })
const aSymmetry = fc.nat(N_SYMMETRIES - 1)

test('[CU16] turning and then looking from another side, or in a mirror, is looking and then turning the image', () => {
  fc.assert(
    fc.property(aWord, fc.constantFrom(...FACE_TURNS), aSymmetry, (word, turn, symmetry) => {
      const position = afterTurns(solvedCube(), word)
      const turned = conjugatePosition(afterTurns(position, [turn]), symmetry)
      expect(turned).toEqual(afterTurns(conjugatePosition(position, symmetry), [conjugateTurn(turn, symmetry)]))
    }),
    { seed: SEED, numRuns: 500 },
  )
})

test('[CU16] each symmetry has another that undoes it, and a solved cube looks solved from everywhere', () => {
  fc.assert(
    fc.property(aWord, aSymmetry, (word, symmetry) => {
      const position = afterTurns(solvedCube(), word)
      expect(conjugatePosition(conjugatePosition(position, symmetry), inverseSymmetry(symmetry))).toEqual(position)
      expect(conjugatePosition(solvedCube(), symmetry)).toEqual(solvedCube())
    }),
    { seed: SEED },
  )
})

test('[CU16] the 48 images of one turn and another are all different; the first 8 keep the top up, the first 16 its axis', () => {
  const images = Array.from({ length: N_SYMMETRIES }, (_, symmetry) =>
    [turnOf('U'), turnOf('R'), turnOf('F')].map((turn) => conjugateTurn(turn, symmetry)),
  )
  expect(new Set(images.map(String)).size).toBe(48)
  const axes = images.map(([up]) => turnAxis(up))
  expect(axes.map((axis) => axis === 'U')).toEqual(axes.map((_, symmetry) => symmetry < N_UPRIGHT_SYMMETRIES))
  expect(axes.map((axis) => axis === 'U' || axis === 'D')).toEqual(
    axes.map((_, symmetry) => symmetry < N_AXIS_SYMMETRIES),
  )
})
