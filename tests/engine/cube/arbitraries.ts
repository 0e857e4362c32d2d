/** What fast-check draws for the tests of the engine, and short ways to write turns and positions in rows. */

import fc from 'fast-check'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { type CubePosition, solvedCube } from '../../../engine/cube/cube-position.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import { ALL_TURNS, FACE_TURNS, type Turn } from '../../../engine/cube/turns.ts'

/** Every property runs with this seed, so that a run that failed can be repeated. */
export const SEED = 20_251_125

export const aTurn: fc.Arbitrary<Turn> = fc.constantFrom(...ALL_TURNS)

export const someTurns: fc.Arbitrary<Turn[]> = fc.array(aTurn, { maxLength: 40 })

export const someFaceTurns: fc.Arbitrary<Turn[]> = fc.array(fc.constantFrom(...FACE_TURNS), { maxLength: 40 })

/** A position in any hold, as far from solved as 40 turns lead. */
export const aPosition: fc.Arbitrary<CubePosition> = someTurns.map((turns) => afterTurns(solvedCube(), turns))

/** @returns written turns as numbers; throws where the row of a test is misspelt */
export function turns(text: string): Turn[] {
  const read = parseTurns(text)
  if (!read.ok) throw new Error(`${text} is misspelt: ${JSON.stringify(read.error)}`)
  return read.value
}

/** @returns the solved cube after written turns */
export function cubeAfter(text: string): CubePosition {
  return afterTurns(solvedCube(), turns(text))
}

export function repeated<T>(items: readonly T[], times: number): T[] {
  return Array.from({ length: times }, () => items).flat()
}
