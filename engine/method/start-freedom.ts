/**
 * What chance may choose in the start of a stage: the pieces that no earlier goal has fixed. Read off the goals, so that
 * the starts can never disagree with them.
 */

import { CENTRES_AT, EDGES_AT } from '../cube/cube-position.ts'
import { N_PIECE_CODES } from '../cube/piece-code.ts'
import { GOAL_MASKS, maskRow } from './goal-masks.ts'
import { STAGES, type Stage } from './stages.ts'

/** The places of one kind whose pieces are exchanged freely among each other. */
export type KindFreedom = {
  /** Indexes into a position. */
  readonly places: readonly number[]
  /** May the pieces be turned in their places as well? */
  readonly mayTurn: boolean
}

/** What chance may choose, kind by kind. */
export type StartFreedom = { readonly corners: KindFreedom; readonly edges: KindFreedom }

const FREEDOM_BY_STAGE: readonly StartFreedom[] = STAGES.map((stage) => ({
  corners: kindFreedom(stage, 0, EDGES_AT),
  edges: kindFreedom(stage, EDGES_AT, CENTRES_AT),
}))

/** @returns the freedom that the goals before `stage` leave, for a cube held home */
export function freedomBefore(stage: Stage): StartFreedom {
  return FREEDOM_BY_STAGE[stage - STAGES[0]]
}

function kindFreedom(stage: Stage, first: number, end: number): KindFreedom {
  const row = maskRow((stage - 1) as Stage | 0, 0)
  const places: number[] = []
  let mayTurn = false
  for (let place = first; place < end; place++) {
    const nAllowed = countBits(GOAL_MASKS[row + place])
    if (nAllowed === 1) continue
    places.push(place)
    // A goal either fixes how all pieces of a kind are turned or says nothing about the place at all.
    mayTurn = nAllowed === N_PIECE_CODES
  }
  return { places, mayTurn }
}

function countBits(mask: number): number {
  let nBits = 0
  for (let rest = mask; rest !== 0; rest &= rest - 1) nBits++
  return nBits
}
