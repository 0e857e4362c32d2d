/** How steps are taken. Rules TU: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { changeClock } from '../../../engine/contest/change-clock.ts'
import { TRIES_MAX, TRY_STEPS_MAX } from '../../../engine/contest/limits.ts'
import { playerOf } from '../../../engine/contest/players.ts'
import type { Round } from '../../../engine/contest/round-state.ts'
import type { StepName } from '../../../engine/contest/steps.ts'
import { takeTurns } from '../../../engine/contest/take-turns.ts'
import { TURN_NAMES } from '../../../engine/cube/turns.ts'
import { SEED } from '../cube/arbitraries.ts'
import { ADA, aRound, BO, SOLUTION, sent, taken } from './a-round.ts'

const codeOf = (round: Round, event: ReturnType<typeof sent>) => {
  const result = takeTurns(round, event)
  return result.ok ? null : result.error.code
}
const filler = (n: number): StepName[] => Array.from({ length: n }, (_, index) => (['R', "R'"] as const)[index % 2])

describe('counting', () => {
  // Outer block turn metric, WCA Regulations 2024, 12a5; a slice as two outer turns, Regulations 2009, 12a17.
  test.each<[StepName[], number]>([
    [['R', 'U2', "F'"], 3],
    [['Rw', 'Uw2'], 2],
    [['M', 'S2'], 4],
    [['x', "y'", 'z2'], 0],
    [['R', 'take-back'], 0],
    [['R', 'M', 'take-back', 'U'], 2],
    [['x', 'take-back', 'U'], 1],
  ])('[TU6] %j counts %i turns', (steps, turns) => {
    const round = taken(aRound(), sent(steps))
    expect(playerOf(round, ADA)?.current.turns).toBe(turns)
  })

  test('[TU7] the goal ends the try at the step that reaches it; what was sent behind it is left off and not counted', () => {
    const result = takeTurns(aRound(), sent([...SOLUTION, 'R', 'U']))
    expect(result).toMatchObject({ ok: true, value: { answer: { held: 6, reached: { turns: 6, momentMs: 1_000 } } } })
    if (result.ok) expect(codeOf(result.value.round, sent(['R'], { from: 6 }))).toBe('contest/try-over')
  })

  test('[TU7] the moment is the played time, cut to hundredths; a pause does not count', () => {
    let round = aRound()
    for (const event of [{ kind: 'paused', atMs: 10_000 } as const, { kind: 'resumed', atMs: 25_000 } as const]) {
      const changed = changeClock(round, event)
      if (changed.ok) round = changed.value
    }
    const result = takeTurns(round, sent(SOLUTION, { atMs: 26_239 }))
    expect(result).toMatchObject({ ok: true, value: { answer: { reached: { momentMs: 11_230 } } } })
  })

  test('[TU8] the best try counts: fewer turns, then the earlier moment', () => {
    const long: StepName[] = ['U', "U'", ...SOLUTION]
    const round = taken(
      aRound(),
      sent(long),
      sent(SOLUTION, { tryNumber: 2, atMs: 5_000 }),
      sent(long, { tryNumber: 3, atMs: 6_000 }),
    )
    expect(playerOf(round, ADA)?.best).toMatchObject({ turns: 6, momentMs: 5_000, tryNumber: 2 })
  })

  test('[TU8] of two tries with equally many turns the earlier one stays', () => {
    const round = taken(aRound(), sent(SOLUTION), sent(SOLUTION, { tryNumber: 2, atMs: 5_000 }))
    expect(playerOf(round, ADA)?.best).toMatchObject({ momentMs: 1_000, tryNumber: 1 })
  })
})

describe('what is refused', () => {
  const running = aRound()
  const afterGoal = taken(running, sent(SOLUTION))
  const paused = changeClock(running, { kind: 'paused', atMs: 500 })
  const ended = changeClock(running, { kind: 'ended', atMs: 500, reason: 'teacher' })
  if (!paused.ok || !ended.ok) throw new Error('a running round can be paused and ended')

  test.each<[string, Round, ReturnType<typeof sent>, string]>([
    ['before the round was started', aRound({ phase: 'ready' }), sent(['R']), 'contest/not-started'],
    ['before the signal', running, sent(['R'], { atMs: -1 }), 'contest/not-started'],
    ['in a pause', paused.value, sent(['R']), 'contest/paused'],
    ['after the end', ended.value, sent(['R']), 'contest/round-over'],
    ['at the very end of the clock', running, sent(['R'], { atMs: 60_000 }), 'contest/round-over'],
    ['a gap', running, sent(['R'], { from: 2 }), 'contest/gap'],
    ['after the goal', afterGoal, sent(['R'], { from: 6 }), 'contest/try-over'],
    ['a try too far on', afterGoal, sent(['R'], { tryNumber: 3 }), 'contest/try-gap'],
    [
      'more of an earlier try',
      taken(afterGoal, sent(['R'], { tryNumber: 2 })),
      sent(['R'], { from: 6 }),
      'contest/try-closed',
    ],
    [
      'a second try where one is given',
      taken(aRound({ settings: { tries: 'one' } }), sent(['R'])),
      sent([], { tryNumber: 2 }),
      'contest/one-try-only',
    ],
    [
      'taking back where it is not allowed',
      aRound({ settings: { takeBack: false } }),
      sent(['R', 'take-back']),
      'contest/no-take-back',
    ],
    ['taking back nothing', running, sent(['take-back']), 'contest/nothing-to-take-back'],
    [
      'a try that grows too long',
      taken(running, sent(filler(TRY_STEPS_MAX))),
      sent(['R'], { from: TRY_STEPS_MAX }),
      'contest/too-many-turns',
    ],
    ['a try too many', manyTries(running), sent([], { tryNumber: TRIES_MAX + 1 }), 'contest/too-many-tries'],
  ])('[TU9] %s is refused, and the round stays as it was', (_what, round, event, code) => {
    expect(codeOf(round, event)).toBe(code)
  })

  function manyTries(round: Round): Round {
    let now = taken(round, sent(['R']))
    for (let tryNumber = 2; tryNumber <= TRIES_MAX; tryNumber++) now = taken(now, sent([], { tryNumber }))
    return now
  }

  test('[TU9] a message is taken as a whole or not at all', () => {
    const before = taken(running, sent(['R']))
    expect(codeOf(before, sent(['U', 'take-back', 'take-back', 'take-back'], { from: 1 }))).toBe(
      'contest/nothing-to-take-back',
    )
    expect(playerOf(before, ADA)?.current.steps.length).toBe(1)
  })

  test('[TU1] what is on record already is answered even after the end', () => {
    const played = taken(running, sent(['R', 'U']))
    const over = changeClock(played, { kind: 'ended', atMs: 2_000, reason: 'teacher' })
    if (!over.ok) throw new Error('it can end')
    expect(takeTurns(over.value, sent(['R', 'U'], { atMs: 9_000 }))).toMatchObject({
      ok: true,
      value: { fresh: null, answer: { held: 2 } },
    })
  })
})

describe('sending again', () => {
  const anySteps = fc.array(fc.constantFrom(...TURN_NAMES), {
    minLength: 1,
    maxLength: 40,
  })
  /** Overlapping parts of one row of steps, as an impatient page on a bad network sends them. */
  const anyParts = fc.array(fc.tuple(fc.nat(40), fc.integer({ min: 1, max: 12 })), { maxLength: 30 })

  test('[TU2] in whatever overlapping parts a try is sent and sent again, the record is the row of steps, each once', () => {
    fc.assert(
      fc.property(anySteps, anyParts, (steps, parts) => {
        let round = aRound()
        const whole: [number, number] = [0, steps.length]
        for (const [from, length] of [...parts, whole, whole]) {
          const result = takeTurns(
            round,
            sent(steps.slice(from, from + length), { from: Math.min(from, steps.length) }),
          )
          if (result.ok) round = result.value.round
          else expect(['contest/gap', 'contest/try-over']).toContain(result.error.code)
        }
        const alone = takeTurns(aRound(), sent(steps))
        if (!alone.ok) throw new Error(alone.error.code)
        const kept = playerOf(round, ADA)?.current
        const expected = playerOf(alone.value.round, ADA)?.current
        expect(kept?.steps).toEqual(expected?.steps)
        expect(kept?.turns).toBe(expected?.turns)
        expect([...(kept?.position ?? [])]).toEqual([...(expected?.position ?? [])])
      }),
      { seed: SEED, numRuns: 300 },
    )
  })

  const throughTheGoal: StepName[] = [...SOLUTION, 'R', 'U']
  const afterGoal = taken(aRound(), sent(throughTheGoal))

  test('[TU1] steps behind the goal are left off each time that they are sent, and the answer is the same', () => {
    const first = takeTurns(aRound(), sent(throughTheGoal))
    const again = takeTurns(afterGoal, sent(throughTheGoal, { atMs: 2_000 }))
    expect(again).toMatchObject({ ok: true, value: { fresh: null } })
    expect(again.ok && again.value.answer).toEqual(first.ok && first.value.answer)
  })

  test('[TU1] a try that reached the goal is answered so even when the next one has begun', () => {
    const next = taken(afterGoal, sent(['L'], { tryNumber: 2 }))
    for (const steps of [SOLUTION, throughTheGoal]) {
      expect(takeTurns(next, sent(steps, { atMs: 2_000 }))).toMatchObject({
        ok: true,
        value: { fresh: null, answer: { tryNumber: 1, held: 6, reached: { turns: 6, momentMs: 1_000 } } },
      })
    }
  })

  test('[TU1] a try that was opened without a step is known, even after the end', () => {
    const opened = taken(aRound(), sent(['R']), sent([], { tryNumber: 2 }))
    const over = changeClock(opened, { kind: 'ended', atMs: 2_000, reason: 'teacher' })
    if (!over.ok) throw new Error('it can end')
    expect(takeTurns(over.value, sent([], { tryNumber: 2, atMs: 9_000 }))).toMatchObject({
      ok: true,
      value: { fresh: null, answer: { tryNumber: 2, held: 0 } },
    })
    expect(codeOf(aRound(), sent([], { atMs: 90_000 }))).toBe('contest/round-over')
  })

  test('[TU5] what one student sends changes no other player', () => {
    const round = taken(aRound(), sent(['R']), sent(['U', 'F'], { seatId: BO }))
    const after = taken(round, sent(['L'], { from: 1 }))
    expect(playerOf(after, BO)).toBe(playerOf(round, BO))
  })
})
