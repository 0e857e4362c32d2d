/**
 * How far a showing has gone, as people count: turns, of which a re-hold is none. Where it stands among the entries of the
 * row is another number, which nobody is shown.
 */

import type { TFunction } from 'i18next'
import { countOuterBlockTurns } from '../../../engine/cube/outer-block-turns.ts'
import { type Turn, turnKind } from '../../../engine/cube/turns.ts'
import { turnWords } from '../turn-words.ts'

/** @param at entries of the row that are done @returns counted turns among them: squares of the ribbon */
export function nTurnsDone(turns: readonly Turn[], at: number): number {
  return countOuterBlockTurns(turns.slice(0, at))
}

/** @returns "after 4 turns of 12" */
export function turnsDoneWords(t: TFunction, turns: readonly Turn[], at: number): string {
  return t('showing:afterTurn', { count: nTurnsDone(turns, at), of: nTurnsDone(turns, turns.length) })
}

/** @returns the same for whoever hears it, who is told of a re-hold too: "after 4 turns of 12, re-hold: the front goes to the left" */
export function lastDoneWords(t: TFunction, turns: readonly Turn[], at: number): string {
  const after = turnsDoneWords(t, turns, at)
  // Who looks on alone may stand behind the end: the teacher has taken turns back since.
  const last = turns.slice(0, at).at(-1)
  return last === undefined ? after : t('showing:afterThis', { after, turn: turnWords(t, last) })
}

/** @returns the re-hold that was just done; null when it was a turn, or nothing */
export function reHoldJustDone(turns: readonly Turn[], at: number): Turn | null {
  const last = turns[at - 1]
  return last !== undefined && turnKind(last) === 're-hold' ? last : null
}
