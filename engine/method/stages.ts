/**
 * The seven stages of the layer method that the lesson teaches. The base layer is the one of home face D; its colour is
 * a matter of the colour scheme only.
 * Source: common practice of the trade.
 */

/** Stage 1 is the cross of the base layer, stage 7 the solved cube; each has a file `stage-N-....ts`. */
export const STAGES = [1, 2, 3, 4, 5, 6, 7] as const

/** One of the seven. */
export type Stage = (typeof STAGES)[number]

/** Several stages in one go: from the goal before `from` to the goal of `to`. Never `to` before `from`. */
export type StageSpan = { readonly from: Stage; readonly to: Stage }

/** Pieces that each stage brings to its goal. */
export const PARTS_PER_STAGE = 4

/** @returns the number of stages in a span, 1..7 */
export function nStagesIn({ from, to }: StageSpan): number {
  return to - from + 1
}
