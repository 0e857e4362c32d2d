/** All slips that are known, tried at one place. */

import { leftOut } from './left-out.ts'
import { onceMore } from './once-more.ts'
import type { Begun, Slip, SlipFinder } from './slip.ts'
import { strayInside } from './stray-inside.ts'
import { twoForOneInside } from './two-for-one-inside.ts'
import { findTwoSlips } from './two-slips.ts'
import { undoneInside } from './undone-inside.ts'
import { unfinished } from './unfinished.ts'
import { wrongPart } from './wrong-part.ts'
import { wrongTurn } from './wrong-turn.ts'

/** In the order in which an equally likely slip is believed. */
const FINDERS: readonly SlipFinder[] = [
  undoneInside,
  twoForOneInside,
  wrongPart,
  onceMore,
  wrongTurn,
  leftOut,
  strayInside,
  unfinished,
  findTwoSlips,
]

/** @returns every reading of the sequence as done with one slip, or with two; few, mostly none */
export function findSlips(begun: Begun): Slip[] {
  return FINDERS.flatMap((find) => find(begun) ?? [])
}

/** What may come at the end of a sequence that was done as the book has it. */
const FINDERS_AT_END: readonly SlipFinder[] = [wrongPart, onceMore]

/** @param begun with all its tokens right @returns readings by which something was added to it at once */
export function findAdded(begun: Begun): Slip[] {
  return FINDERS_AT_END.flatMap((find) => find(begun) ?? [])
}
