/**
 * Plays steps on a try: what each does to the cube and to the count, and where the try ends (rules TU6, TU7, TU9). The
 * server judges by it, and the page shows by it ahead of the server's answer.
 */

import { applyTurn } from '../cube/apply-turn.ts'
import { copyCube } from '../cube/cube-position.ts'
import { outerBlockCost } from '../cube/outer-block-turns.ts'
import { inverseTurn, type Turn } from '../cube/turns.ts'
import { goalMet, stageProgress } from '../method/goals.ts'
import { err, ok, type Result } from '../result.ts'
import type { ContestRefusal } from './contest-refusal.ts'
import { TRY_STEPS_MAX } from './limits.ts'
import type { RoundSettings } from './round-settings.ts'
import type { Reached, Try } from './round-state.ts'
import { type Step, TAKE_BACK } from './steps.ts'

/** The try after the steps, and the furthest that they led: 0 to 4 for each stage of the round; see stageProgress. */
export type PlayedTry = { readonly after: Try; readonly progress: number }

/**
 * @param before stays as it is
 * @param steps taken as a whole or refused as a whole; those behind the goal are left off, for the try ends there
 * @param momentMs played milliseconds at which all of these steps came in
 * @returns the try after them, or why the first step that is not allowed is refused
 */
export function playTry(
  before: Try,
  steps: readonly Step[],
  settings: RoundSettings,
  momentMs: number,
): Result<PlayedTry, ContestRefusal> {
  const held = before.steps.length
  const position = copyCube(before.position)
  const standing: Turn[] = [...before.standing]
  const played: Step[] = [...before.steps]
  let { turns, reached }: { turns: number; reached: Reached | null } = before
  let progress = 0
  for (const step of steps) {
    if (reached !== null) break
    if (played.length === TRY_STEPS_MAX) return err({ code: 'contest/too-many-turns', max: TRY_STEPS_MAX, held })
    if (step === TAKE_BACK) {
      if (!settings.takeBack) return err({ code: 'contest/no-take-back', held })
      const last = standing.pop()
      if (last === undefined) return err({ code: 'contest/nothing-to-take-back', held })
      applyTurn(position, inverseTurn(last))
      turns -= outerBlockCost(last)
    } else {
      applyTurn(position, step)
      standing.push(step)
      turns += outerBlockCost(step)
    }
    played.push(step)
    progress = Math.max(progress, stageProgress(position, settings))
    if (goalMet(position, settings.to)) reached = { turns, momentMs: cutToHundredths(momentMs) }
  }
  return ok({ after: { ...before, steps: played, standing, turns, position, reached }, progress })
}

/** Times are cut to hundredths of a second (WCA Regulations 2024, 9f1), so that equal means equal for everyone. */
function cutToHundredths(ms: number): number {
  return Math.floor(ms / 10) * 10
}
