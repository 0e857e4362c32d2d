/**
 * The turns of a child's best try of a round, kept on this page: the server tells only how many they were, and the last try is
 * not always the best one.
 */

import { useEffect } from 'react'
import { TURN_NAMES, type Turn } from '../../engine/cube/turns.ts'
import type { BenchView } from '../../engine/wire/views.ts'
import type { LocalTry } from '../live/bench-live.ts'
import { useKept } from './kept-value.ts'

/** A try to look back at. */
export type OwnTry = {
  readonly standing: readonly Turn[]
  /** Counted turns, with what hints cost. */
  readonly turns: number
}

/** @returns the best try that this page has seen reach the goal; null for none */
export function useOwnBest(view: BenchView | null, mine: LocalTry | null): OwnTry | null {
  const [best, keep] = useKept('best', `${view?.me.seatId ?? ''}.${view?.round?.id ?? ''}`, readOwnTry)
  useEffect(() => {
    if (mine === null || mine.reached === null) return
    if (best === null || mine.reached.turns < best.turns) keep({ standing: mine.standing, turns: mine.reached.turns })
  }, [best, mine, keep])
  return best
}

/**
 * @param best what this page has kept @param bestTurns what the server says; null when the goal was not reached
 * @returns the best try where its turns are known, else the last one; null when nothing was turned
 */
export function tryToReview(
  best: OwnTry | null,
  bestTurns: number | null,
  mine: Pick<LocalTry, 'standing' | 'turns' | 'reached'> | null,
): (OwnTry & { readonly isBest: boolean; readonly isReached: boolean }) | null {
  if (bestTurns !== null && best?.turns === bestTurns) return { ...best, isBest: true, isReached: true }
  if (mine === null || mine.standing.length === 0) return null
  const turns = mine.reached?.turns ?? mine.turns
  const isReached = mine.reached !== null
  return { standing: mine.standing, turns, isReached, isBest: isReached && turns === bestTurns }
}

/** Reads what was kept; what makes no sense is no try. */
export function readOwnTry(kept: unknown): OwnTry | null {
  if (typeof kept !== 'object' || kept === null) return null
  const { standing, turns } = kept as Partial<OwnTry>
  const isTurn = (turn: unknown) => Number.isInteger(turn) && TURN_NAMES[turn as number] !== undefined
  return Array.isArray(standing) && standing.every(isTurn) && Number.isInteger(turns)
    ? { standing, turns: turns as number }
    : null
}
