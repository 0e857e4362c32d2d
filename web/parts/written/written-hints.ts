/**
 * Hints that were asked for while a solution is written down. Each is kept with the turns that were written when it was
 * asked for: from them follow its place among the steps that are sent, and what stands of it on the page. Pure.
 */

import { hintStep, type Step } from '../../../engine/contest/steps.ts'
import { applyTurn } from '../../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../../engine/cube/cube-position.ts'
import { isTurn, type Turn } from '../../../engine/cube/turns.ts'
import { HINT_LEVELS, type HintLevel } from '../../../engine/method/way/hint-level.ts'
import { stepUnderWay } from '../../../engine/method/way/step-under-way.ts'
import { type Lesson, type ShownHint, shownHint } from '../hints/shown-hint.ts'

/** A hint, and the turns behind which it was asked for. */
export type WrittenHint = { readonly level: HintLevel; readonly behind: readonly Turn[] }

/**
 * The steps of a try: each hint at the place at which it was asked for. Where fewer turns are left it stands behind the last
 * one; yet never behind the goal, where the server would leave it off as if nobody had asked.
 *
 * @param turns those that are sent: up to the goal, where they reach it
 * @param reaches whether the last of them reaches the goal
 * @param hints in the order in which they were asked for, which they keep
 */
export function stepsWithHints(turns: readonly Turn[], reaches: boolean, hints: readonly WrittenHint[]): Step[] {
  const last = reaches ? turns.length - 1 : turns.length
  const steps: Step[] = []
  for (let place = 0; place <= turns.length; place++) {
    for (const { level, behind } of hints) if (Math.min(behind.length, last) === place) steps.push(hintStep(level))
    if (place < turns.length) steps.push(turns[place])
  }
  return steps
}

/**
 * Which hint stands beside what is written. It is found from the whole row of turns, and not from the last change of it:
 * half a typed turn takes no hint away, and loading the page again brings back the same.
 */
export function hintBesideWriting(
  start: CubePosition,
  turns: readonly Turn[],
  hints: readonly WrittenHint[],
  lesson: Lesson,
): ShownHint | null {
  const ofThese = hints.filter(({ behind }) => startsWith(turns, behind))
  if (ofThese.length === 0) return null
  const position = copyCube(start)
  let shown: ShownHint | null = null
  for (let nTurns = 0; nTurns <= turns.length; nTurns++) {
    if (nTurns > 0) applyTurn(position, turns[nTurns - 1])
    const given = ofThese.filter(({ behind }) => behind.length === nTurns).map(({ level }) => level)
    if (given.length > 0) {
      const begun = stepUnderWay(start, turns.slice(0, nTurns), lesson.span, lesson.book)
      shown = shownHint(shown, begun?.position ?? copyCube(position), given, lesson)
    } else if (shown !== null) shown = shownHint(shown, copyCube(position), [], lesson)
  }
  return shown
}

/**
 * The same where the teacher has sent a hint for the start, too: it is known there like one that was asked for, and is not
 * asked for again.
 *
 * @param taught the level of it; null for none
 * @returns what stands, and whether it is no more than the teacher has sent
 */
export function hintsBesideWriting(
  start: CubePosition,
  turns: readonly Turn[],
  hints: readonly WrittenHint[],
  taught: HintLevel | null,
  lesson: Lesson,
): { readonly shown: ShownHint | null; readonly isTaught: boolean } {
  const own = hintBesideWriting(start, turns, hints, lesson)
  if (taught === null) return { shown: own, isTaught: false }
  const all = hintBesideWriting(start, turns, [{ level: taught, behind: [] }, ...hints], lesson)
  return { shown: all, isTaught: all !== null && (own === null || own.level < all.level) }
}

/** Reads what was kept; what makes no sense is left out. */
export function readWrittenHints(kept: unknown): readonly WrittenHint[] {
  return Array.isArray(kept) ? kept.filter(isWrittenHint) : []
}

function isWrittenHint(kept: unknown): kept is WrittenHint {
  if (typeof kept !== 'object' || kept === null) return false
  const { level, behind } = kept as Partial<WrittenHint>
  return HINT_LEVELS.some((each) => each === level) && Array.isArray(behind) && behind.every(isTurn)
}

function startsWith(turns: readonly Turn[], first: readonly Turn[]): boolean {
  return first.length <= turns.length && first.every((turn, index) => turns[index] === turn)
}
