/** The list of rounds at home. Rules BE: tests/RULES.md. */

import { expect, test } from 'vitest'
import type { RoundId } from '../../../engine/contest/ids.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../../engine/contest/round-settings.ts'
import type { BenchView, RoundInList } from '../../../engine/wire/views.ts'
import { nextToPlay, roundIsOver, roundState, withOwnBest } from '../../../web/bench/round-list.ts'

function aRound(number: number, over: Partial<RoundInList> = {}): RoundInList {
  const id = `r${number}` as RoundId
  return { id, number, settings: DEFAULT_ROUND_SETTINGS, phase: 'running', bestTurns: null, ...over }
}

test('[BE13] a round is reached, begun or not yet; a goal that was reached says so whatever was turned since', () => {
  expect(roundState(aRound(1), false)).toBe('notYet')
  expect(roundState(aRound(1), true)).toBe('begun')
  expect(roundState(aRound(1, { bestTurns: 12 }), true)).toBe('reached')
})

test('[BE13] the next thing to press is the first open round whose goal is not reached', () => {
  const rounds = [aRound(1, { bestTurns: 9 }), aRound(2, { phase: 'ended' }), aRound(3), aRound(4)]
  expect(nextToPlay(rounds)?.number).toBe(3)
  expect(nextToPlay([aRound(1, { bestTurns: 9 })])).toBeNull()
  expect([rounds[1], aRound(5, { phase: 'void' }), rounds[2]].map(roundIsOver)).toEqual([true, true, false])
})

test('[BE13] what was just reached stands in the list at once, and in its own row', () => {
  const rounds = [aRound(1), aRound(2)]
  const view = { rounds, round: { id: rounds[1].id }, mine: { best: { turns: 18, momentMs: 0 } } }
  const best = (mine: unknown) =>
    withOwnBest({ ...view, mine } as unknown as BenchView).map(({ bestTurns }) => bestTurns)
  expect(best(view.mine)).toEqual([null, 18])
  expect(best({ best: null })).toEqual([null, null])
  expect(best(null)).toEqual([null, null])
})
