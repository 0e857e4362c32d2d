/**
 * Plays steps on a try: what each does to the cube and to the count, and where the try ends (rules TU6, TU7, TU9). The
 * server judges by it, and the page shows by it ahead of the server's answer.
 */

import { applyTurn } from '../cube/apply-turn.ts'
import { copyCube } from '../cube/cube-position.ts'
import { outerBlockCost } from '../cube/outer-block-turns.ts'
import { inverseTurn, type Turn } from '../cube/turns.ts'
import { goalMet, stageProgress } from '../method/goals.ts'
import type { Stage } from '../method/stages.ts'
import { err, ok, type Result } from '../result.ts'
import type { ContestRefusal } from './contest-refusal.ts'
import { TRY_STEPS_MAX } from './limits.ts'
import type { RoundSettings } from './round-settings.ts'
import type { GivenHint, Try } from './round-state.ts'
import { hintLevelOf, type Step, TAKE_BACK } from './steps.ts'

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
): Result<Try, ContestRefusal> {
  const held = before.steps.length
  const position = copyCube(before.position)
  const standing: Turn[] = [...before.standing]
  const played: Step[] = [...before.steps]
  const hints: GivenHint[] = [...before.hints]
  let { turns, reached, progress, highest, brokeAfter } = before
  for (const step of steps) {
    if (reached !== null) break
    if (played.length === TRY_STEPS_MAX) return err({ code: 'contest/too-many-turns', max: TRY_STEPS_MAX, held })
    const level = hintLevelOf(step)
    if (level !== null) {
      if (level > settings.hints) return err({ code: 'contest/no-such-hint', max: settings.hints, held })
      hints.push({ level, afterTurns: standing.length })
      turns += settings.hintCost
      played.push(step)
      continue
    }
    if (step === TAKE_BACK) {
      if (!settings.takeBack) return err({ code: 'contest/no-take-back', held })
      const last = standing.pop()
      if (last === undefined) return err({ code: 'contest/nothing-to-take-back', held })
      applyTurn(position, inverseTurn(last))
      turns -= outerBlockCost(last)
    } else {
      applyTurn(position, step as Turn)
      standing.push(step as Turn)
      turns += outerBlockCost(step as Turn)
    }
    while (highest < settings.to && goalMet(position, (highest + 1) as Stage)) highest = (highest + 1) as Stage
    brokeAfter = highest === 0 || goalMet(position, highest) ? null : (brokeAfter ?? played.length)
    played.push(step)
    progress = Math.max(progress, stageProgress(position, settings))
    if (goalMet(position, settings.to)) reached = { turns, momentMs: cutToHundredths(momentMs) }
  }
  return ok({ ...before, steps: played, standing, turns, position, reached, hints, progress, highest, brokeAfter })
}

/** Times are cut to hundredths of a second (WCA Regulations 2024, 9f1), so that equal means equal for everyone. */
function cutToHundredths(ms: number): number {
  return Math.floor(ms / 10) * 10
}
