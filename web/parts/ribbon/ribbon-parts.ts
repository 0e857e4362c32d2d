/**
 * Reads the turns of a try as the parts of a ribbon: squares, re-hold tokens, and triggers of four squares joined.
 * Only a whole trigger is joined: an unfinished one stays single squares, the first sign that a turn was forgotten.
 */

import { outerBlockCost } from '../../../engine/cube/outer-block-turns.ts'
import { type Turn, turnKind } from '../../../engine/cube/turns.ts'
import { LEFT_TRIGGER, RIGHT_TRIGGER } from '../../../engine/method/sequence-book.ts'

export type RibbonPart =
  | { readonly kind: 'turn'; readonly at: number; readonly turn: Turn; readonly squares: number }
  | { readonly kind: 're-hold'; readonly at: number; readonly turn: Turn }
  | { readonly kind: 'trigger'; readonly at: number; readonly side: 'left' | 'right'; readonly turns: readonly Turn[] }

/** @returns the parts in order; `at` is the index of a part's first turn */
export function ribbonParts(turns: readonly Turn[]): RibbonPart[] {
  const parts: RibbonPart[] = []
  let at = 0
  while (at < turns.length) {
    const part = partAt(turns, at)
    parts.push(part)
    at += part.kind === 'trigger' ? part.turns.length : 1
  }
  return parts
}

/** Which trigger these turns are, if they are one. */
export function triggerOf(turns: readonly Turn[]): 'left' | 'right' | null {
  if (isSequence(turns, LEFT_TRIGGER)) return 'left'
  return isSequence(turns, RIGHT_TRIGGER) ? 'right' : null
}

function partAt(turns: readonly Turn[], at: number): RibbonPart {
  const next = turns.slice(at, at + RIGHT_TRIGGER.length)
  const side = triggerOf(next)
  if (side !== null) return { kind: 'trigger', at, side, turns: next }
  const turn = turns[at]
  if (turnKind(turn) === 're-hold') return { kind: 're-hold', at, turn }
  return { kind: 'turn', at, turn, squares: outerBlockCost(turn) }
}

function isSequence(turns: readonly Turn[], sequence: readonly Turn[]): boolean {
  return turns.length === sequence.length && turns.every((turn, index) => turn === sequence[index])
}
