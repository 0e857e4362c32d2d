/** What a teacher sends to students while they play. Rules NU: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { NUDGES_MAX } from '../../../engine/contest/limits.ts'
import { giveNudge, NUDGE_WORDS, type Nudge, PIECE_NAMES } from '../../../engine/contest/nudges.ts'
import { laneOf } from '../../../engine/contest/rank-board.ts'
import type { Round } from '../../../engine/contest/round-state.ts'
import { ADA, aRound, BO, clocked, sent, taken } from './a-round.ts'

const WORDS: Nudge = { kind: 'words', words: 'check-the-hold' }

function nudged(round: Round, ...nudges: Nudge[]): Round {
  return nudges.reduce((now, nudge, index) => {
    const given = giveNudge(now, { seatId: ADA, nudge, atMs: 2_000 + index })
    if (!given.ok) throw new Error(given.error.code)
    return given.value.round
  }, round)
}

describe('a nudge', () => {
  test('[NU1] stands where the try was, after those before it, and changes nothing of what was played', () => {
    const round = taken(aRound(), sent(['R', 'U']), sent(['F'], { tryNumber: 2 }))
    const after = nudged(round, WORDS, { kind: 'point', piece: 'UF' })
    expect(after.nudges.get(ADA)).toEqual([
      { nudge: WORDS, tryNumber: 2, afterSteps: 1, atMs: 2_000 },
      { nudge: { kind: 'point', piece: 'UF' }, tryNumber: 2, afterSteps: 1, atMs: 2_001 },
    ])
    expect(after.players).toBe(round.players)
    expect(after.nudges.get(BO)).toBeUndefined()
  })

  test('[NU1] reaches who has not turned yet, at the beginning of the first try', () => {
    expect(nudged(aRound(), WORDS).nudges.get(ADA)).toMatchObject([{ tryNumber: 1, afterSteps: 0 }])
  })

  test('[NU1] can be given in a pause', () => {
    expect(nudged(clocked(aRound(), { kind: 'paused', atMs: 5 }), WORDS).nudges.get(ADA)).toHaveLength(1)
  })

  test.each<[string, Round]>([
    ['ready', aRound({ phase: 'ready' })],
    ['ended', clocked(aRound(), { kind: 'ended', atMs: 5, reason: 'teacher' })],
    ['void', clocked(aRound(), { kind: 'voided', atMs: 5 })],
  ])('[NU2] where nobody plays (%s) it is refused, with the phase', (phase, round) => {
    expect(giveNudge(round, { seatId: ADA, nudge: WORDS, atMs: 9 })).toEqual({
      ok: false,
      error: { code: 'contest/wrong-phase', phase },
    })
  })

  test('[NU2] after the most for one student there are no more, for that one', () => {
    const full = nudged(aRound(), ...new Array<Nudge>(NUDGES_MAX).fill(WORDS))
    expect(giveNudge(full, { seatId: ADA, nudge: WORDS, atMs: 9 })).toEqual({
      ok: false,
      error: { code: 'contest/too-many-nudges', max: NUDGES_MAX },
    })
    expect(giveNudge(full, { seatId: BO, nudge: WORDS, atMs: 9 }).ok).toBe(true)
  })

  test("[RA6] the ranking's footnote counts all of the round, whichever try they came in", () => {
    const one = nudged(taken(aRound(), sent(['R'])), WORDS)
    const round = nudged(taken(one, sent([], { tryNumber: 2 })), WORDS)
    expect(laneOf(round, { id: ADA, name: 'Ada', late: false }).notes).toMatchObject({ nNudges: 2 })
    // Also of somebody who never turned.
    expect(laneOf(nudged(aRound(), WORDS), { id: ADA, name: 'Ada', late: false }).notes).toMatchObject({ nNudges: 1 })
  })
})

test('[NU1] sentences and pieces are closed lists, each entry once', () => {
  expect(new Set(NUDGE_WORDS).size).toBe(NUDGE_WORDS.length)
  // Eight corners and twelve edges.
  expect([new Set(PIECE_NAMES).size, PIECE_NAMES.length]).toEqual([20, 20])
})
