/** How the coach explains a stretch of a try: one of a few kinds, each with the price that makes unlikely ones rare. */

import type { SequencePattern } from './sequence-pattern.ts'
import type { Slip } from './slips/slip.ts'

/** A sequence of the book that was begun in a stretch. */
export type SequenceDone = {
  readonly pattern: SequencePattern
  /** How often in a row. */
  readonly nTimes: number
  /** The moment at which the sequence itself begins, behind re-holds and top turns. */
  readonly beginsAt: number
  /** Quarters 0..3 by which the top layer was turned before it, and in how many turns. */
  readonly topQuarters: number
  readonly nTops: number
}

/** What was done between two moments, `from` and `to`. */
export type Segment = { readonly from: number; readonly to: number; readonly price: number } & (
  | { readonly kind: 're-hold' }
  /** The layer of the top was turned, and that was all the case needed. */
  | { readonly kind: 'top-turn' }
  /** A sequence as the book has it; `leadsOn` when the lesson has less to do then. */
  | { readonly kind: 'sequence'; readonly done: SequenceDone; readonly leadsOn: boolean }
  /** A sequence with one slip, or with two. */
  | { readonly kind: 'slip'; readonly done: SequenceDone; readonly slip: Slip }
  /** Turns that undo each other at once. */
  | { readonly kind: 'undone' }
  /** Turns that lead back to where the puzzle was. */
  | { readonly kind: 'nowhere' }
  /** A way of one's own that leads on, and whether it is longer than the lesson's. */
  | { readonly kind: 'own-way'; readonly isLong: boolean }
  /** A sequence is under way when the try ends. */
  | { readonly kind: 'under-way'; readonly done: SequenceDone }
  /** A single turn that nothing explains. */
  | { readonly kind: 'turn'; readonly breaks: boolean }
)

/**
 * Prices add up along a try; the cheapest explanation is believed. What counts is their order: what the lesson teaches is
 * nearly free, one slip is dearer than a right step and cheaper than two, and what explains nothing is dearest.
 */
export const PRICE = {
  /** A sequence that leads on. */
  leadsOn: 1,
  /** What comes between, inside a sequence or not: turns undone at once, several for one. */
  undone: 3,
  twoForOne: 2,
  /** A sequence of the stage under way that does not lead on; one of another stage; one of the stage that was reached
   * before something broke, for whoever did not see that. */
  wrongHere: 6,
  /** At stage 1 a sequence may be a single turn, which must not be dearer than one that nothing explains. */
  wrongAtFirst: 4.8,
  otherStage: 8,
  unseenBreak: 4,
  /** A slip in a sequence that would have led on, and in any other one; and for each turn that is missing at its end. */
  slip: 8,
  slipElsewhere: 13,
  /** Two slips in a sequence that would have led on; in any other one they are not believed. */
  twoSlips: 12,
  /** A trigger once too often, with what it does in plain sight; and another layer at the very end, where nothing after it tells. */
  miscount: 6,
  otherLayerAtEnd: 3,
  missingTurn: 0.6,
  underWay: 2,
  /** A way of one's own, and for each of its turns. */
  ownWay: 2.5,
  ownTurn: 0.5,
  longWay: 10,
  longTurn: 0.8,
  /** Back to where the puzzle was, and for each turn. */
  nowhere: 5,
  nowhereTurn: 0.15,
  /** A turn alone, and one that breaks something. */
  turn: 5,
  breakingTurn: 14,
} as const
