/** Turns that come in after the end. Rules TU: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { handIn } from '../../../engine/contest/hand-in.ts'
import { laneOf, rankBoard } from '../../../engine/contest/rank-board.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import type { Round } from '../../../engine/contest/round-state.ts'
import { type StepName, stepOf } from '../../../engine/contest/steps.ts'
import { SEED } from '../cube/arbitraries.ts'
import { ADA, aRound, BO, clocked, SOLUTION, sent, taken } from './a-round.ts'

const END = { kind: 'ended', atMs: 50_000, reason: 'teacher' } as const
const handed = (names: readonly StepName[], tryNumber = 1) => ({ seatId: ADA, tryNumber, steps: names.map(stepOf) })

function ended(settings: Partial<RoundSettings>, ...names: StepName[][]): Round {
  const round = names.reduce(
    (now, each, index) => taken(now, sent(each, { tryNumber: index + 1 })),
    aRound({ settings }),
  )
  return clocked(round, END)
}
function mustHandIn(round: Round, ...given: ReturnType<typeof handed>[]): Round {
  return given.reduce((now, each) => {
    const result = handIn(now, each)
    if (!result.ok) throw new Error(result.error.code)
    return result.value.round
  }, round)
}
const codeOf = (round: Round, given: ReturnType<typeof handed>) => {
  const result = handIn(round, given)
  return result.ok ? null : result.error.code
}
const laneIn = (round: Round) => laneOf(round, { id: ADA, name: 'Ada', late: false })

describe('what is handed in after the end', () => {
  test('[TU15] a try that goes on where the record stops is judged, kept and noted', () => {
    const round = ended({}, SOLUTION.slice(0, 2))
    const result = handIn(round, handed(SOLUTION))
    expect(result).toMatchObject({ ok: true, value: { isKept: true, judged: { turns: 6, reached: { turns: 6 } } } })
    expect(laneIn(mustHandIn(round, handed(SOLUTION))).notes).toMatchObject({ turnsAfterEnd: 6 })
  })

  test('[TU15] who had sent nothing yet can hand in a first try, and a next one where there may be many', () => {
    expect(codeOf(ended({}), handed(SOLUTION))).toBeNull()
    expect(codeOf(ended({}, ['R']), handed(SOLUTION, 2))).toBeNull()
    expect(codeOf(ended({}, ['R']), handed(SOLUTION, 4))).toBeNull()
  })

  test.each<[string, Round, ReturnType<typeof handed>, string]>([
    ['while the round runs', aRound(), handed(SOLUTION), 'contest/still-open'],
    ['before the signal', aRound({ phase: 'ready' }), handed(SOLUTION), 'contest/still-open'],
    ['in a pause', clocked(aRound(), { kind: 'paused', atMs: 9 }), handed(SOLUTION), 'contest/still-open'],
    [
      'of a round that was struck out',
      clocked(aRound(), { kind: 'voided', atMs: 9 }),
      handed(SOLUTION),
      'contest/round-over',
    ],
    ['that differs from the record', ended({}, ['R', 'U']), handed(['R', 'F', 'U']), 'contest/not-the-same-try'],
    ['that stops before the record does', ended({}, ['R', 'U']), handed(['R']), 'contest/not-the-same-try'],
    ['of an earlier try', ended({}, ['R'], ['U']), handed(['R', 'F']), 'contest/not-the-same-try'],
    [
      'of a second try where there is one',
      ended({ tries: 'one' }, ['R']),
      handed(SOLUTION, 2),
      'contest/not-the-same-try',
    ],
    [
      'of a second try where there is one, and none was made',
      ended({ tries: 'one' }),
      handed(SOLUTION, 2),
      'contest/not-the-same-try',
    ],
    [
      'with a take-back where there is none',
      ended({ takeBack: false }),
      handed(['R', 'take-back']),
      'contest/no-take-back',
    ],
    ['with a hint that there was not', ended({ hints: 1 }), handed(['hint-2', 'R']), 'contest/no-such-hint'],
  ])('[TU15] a try %s is refused', (_what, round, given, code) => {
    expect(codeOf(round, given)).toBe(code)
  })

  test('[TU15] hints cost in it what they cost in the round', () => {
    const round = mustHandIn(ended({ hints: 2, hintCost: 3 }), handed(['hint-2', ...SOLUTION]))
    expect(round.handedIn.get(ADA)).toMatchObject({
      turns: 9,
      reached: { turns: 9 },
      hints: [{ level: 2, afterTurns: 0 }],
    })
  })

  test('[TU16] handed in again it changes nothing; nor does what is all on record already', () => {
    const once = mustHandIn(ended({}, ['R']), handed(SOLUTION, 2))
    expect(mustHandIn(once, handed(SOLUTION, 2))).toBe(once)
    const whole = ended({}, ['R', 'U'])
    expect(mustHandIn(whole, handed(['R', 'U']))).toBe(whole)
  })

  test('[TU16] of several the best is kept, whatever order they come in', () => {
    const long: StepName[] = ['U', "U'", ...SOLUTION]
    const tries: [StepName[], number][] = [
      [['R'], 2],
      [long, 3],
      [SOLUTION, 4],
      [['F', 'R', 'U'], 5],
    ]
    fc.assert(
      fc.property(fc.shuffledSubarray(tries, { minLength: 4 }), (order) => {
        const round = mustHandIn(ended({}, ['L']), ...order.map(([names, number]) => handed(names, number)))
        expect(round.handedIn.get(ADA)).toMatchObject({ number: 4, turns: 6 })
      }),
      { seed: SEED },
    )
  })

  test('[TU16] without the goal the one that came further is kept', () => {
    // A turn of the top layer leaves the parts of the cross that are there; a turn of another breaks what is below.
    const round = ended({}, [])
    const [astray, close] = [handed(['R'], 2), handed(['U'], 3)]
    for (const order of [
      [astray, close],
      [close, astray],
    ]) {
      const kept = mustHandIn(round, ...order).handedIn.get(ADA)
      expect([kept?.number, kept?.reached]).toEqual([3, null])
      expect(kept?.progress).toBeGreaterThan(0)
    }
  })

  test('[TU16] it takes no place, and nobody else loses one', () => {
    const before = clocked(taken(aRound(), sent(['U', "U'", ...SOLUTION], { seatId: BO })), END)
    const after = mustHandIn(before, handed(SOLUTION))
    const lanes = [ADA, BO].map((id) => laneOf(after, { id, name: id, late: false }))
    expect(rankBoard(lanes, 'ended').map(({ seatId, place }) => [seatId, place])).toEqual([
      [BO, 1],
      [ADA, null],
    ])
    expect(after.players).toBe(before.players)
  })
})
