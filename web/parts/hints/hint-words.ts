/** The rungs of a hint as sentences, the lowest first. What the level keeps back is not among them. Pure. */

import type { TFunction } from 'i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { hintFor } from '../../../engine/method/way/hint-ladder.ts'
import type { HintLevel } from '../../../engine/method/way/hint-level.ts'
import { writeStep } from '../../../engine/method/way/lesson-steps.ts'
import { assert } from '../../../engine/result.ts'
import { stepWords } from '../lesson/step-words.ts'
import type { Lesson } from './shown-hint.ts'

/** One rung: what it tells, and at the last one also why. */
export type Rung = { readonly kind: 'look' | 'hold' | 'do'; readonly words: string; readonly why: string | null }

/** @param position not at the goal of the span; asserted @returns one rung for each level up to `level` */
export function hintWords(
  t: TFunction,
  position: CubePosition,
  level: HintLevel,
  baseColour: Colour,
  { span, book }: Lesson,
): Rung[] {
  const hint = hintFor(position, span, 3, book)
  assert(hint !== null && hint.hold !== null && hint.do !== null && hint.why !== null, 'the whole ladder tells all')
  const { stage, lookFor, why, brokenStage } = hint
  const isRepair = brokenStage !== null
  const written = writeStep({ stage, isRepair, lookFor, hold: hint.hold, do: hint.do, why }, book)
  const words = stepWords(t, { stage, isRepair, lookFor, why, mark: hint.hold.mark, ...written }, baseColour)
  const rungs: Rung[] = [
    { kind: 'look', words: words.look, why: null },
    { kind: 'hold', words: words.hold, why: null },
    { kind: 'do', words: words.do, why: words.why },
  ]
  return rungs.slice(0, level)
}
