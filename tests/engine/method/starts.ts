/** Positions for the tests of the method: starts of a stage, and starts that a few more turns have spoilt. */

import fc from 'fast-check'
import { chachaSource } from '../../../engine/chance/chacha-source.ts'
import type { RandomSource } from '../../../engine/chance/random-source.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { drawArrangement } from '../../../engine/method/draw-start.ts'
import { STAGES, type Stage, type StageSpan } from '../../../engine/method/stages.ts'
import { aTurn } from '../cube/arbitraries.ts'

/** @returns a source that differs from number to number and is the same in every run */
export function sourceNumbered(number: number): RandomSource {
  const seed = new Uint8Array(32)
  new DataView(seed.buffer).setUint32(0, number)
  return chachaSource(seed)
}

/** A position that meets the goals before a stage, held home. */
export function anArrangementOf(stage: Stage): fc.Arbitrary<CubePosition> {
  return fc.nat().map((number) => drawArrangement(stage, sourceNumbered(number)))
}

/** A position near the goals: of any stage, with up to three turns of any kind after it. */
export const aNearbyPosition: fc.Arbitrary<CubePosition> = fc
  .tuple(fc.constantFrom(...STAGES).chain(anArrangementOf), fc.array(aTurn, { maxLength: 3 }))
  .map(([position, turns]) => afterTurns(position, turns))

/** One stage or several. */
export const aSpan: fc.Arbitrary<StageSpan> = fc
  .tuple(fc.constantFrom(...STAGES), fc.constantFrom(...STAGES))
  .map((ends) => ({ from: Math.min(...ends) as Stage, to: Math.max(...ends) as Stage }))
