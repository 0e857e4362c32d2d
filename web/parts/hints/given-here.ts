/** Which hints of a try belong to the position at which it stands: pure, from the steps that the round keeps. */

import { hintLevelOf, type Step, TAKE_BACK } from '../../../engine/contest/steps.ts'
import type { HintLevel } from '../../../engine/method/way/hint-level.ts'

/**
 * A hint belongs to the turns that stood when it was asked for. Whoever takes a turn back and comes again to the same
 * turns still has it; other turns, even as many, do not show it.
 *
 * @param steps all steps of the try @returns the levels, in the order in which they were asked for
 */
export function hintsGivenHere(steps: readonly Step[]): HintLevel[] {
  const standing: Step[] = []
  const given: { readonly level: HintLevel; readonly at: string }[] = []
  for (const step of steps) {
    const level = hintLevelOf(step)
    if (level !== null) given.push({ level, at: standing.join() })
    else if (step === TAKE_BACK) standing.pop()
    else standing.push(step)
  }
  const here = standing.join()
  return given.filter(({ at }) => at === here).map(({ level }) => level)
}
