/** Hints that are asked for, as steps of a try. Rules TU: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { playTry } from '../../../engine/contest/play-try.ts'
import { playerOf } from '../../../engine/contest/players.ts'
import { laneOf } from '../../../engine/contest/rank-board.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { anEmptyTry, type Round } from '../../../engine/contest/round-state.ts'
import { hintLevelOf, hintStep, STEP_NAMES, type StepName, stepName, stepOf } from '../../../engine/contest/steps.ts'
import { playSteps, takeTurns } from '../../../engine/contest/take-turns.ts'
import { outerBlockCost } from '../../../engine/cube/outer-block-turns.ts'
import { TURN_NAMES, turnOf } from '../../../engine/cube/turns.ts'
import { SEED } from '../cube/arbitraries.ts'
import { ADA, aRound, BO, clocked, SOLUTION, sent, taken } from './a-round.ts'

const WITH_HINTS: Partial<RoundSettings> = { hints: 3, hintCost: 2 }
const adaIn = (round: Round) => {
  const player = playerOf(round, ADA)
  if (player === undefined) throw new Error('Ada has turned')
  return player
}
const laneIn = (round: Round) => laneOf(round, { id: ADA, name: 'Ada', late: false })

/** Some turns, take-backs and hints of allowed levels, none of which the round refuses. */
const someSteps = fc
  .array(
    fc.oneof(
      { weight: 6, arbitrary: fc.constantFrom<StepName>(...TURN_NAMES) },
      { weight: 2, arbitrary: fc.constant<StepName>('take-back') },
      { weight: 2, arbitrary: fc.constantFrom<StepName>('hint-1', 'hint-2', 'hint-3') },
    ),
    { maxLength: 30 },
  )
  .map((names) => {
    let nStanding = 0
    return names.filter((name) => {
      if (name === 'take-back') return nStanding > 0 && nStanding-- > 0
      if (!name.startsWith('hint')) nStanding++
      return true
    })
  })

describe('the numbers and names of steps', () => {
  test('[TU10] every step has one name, and only the last three of them are hints', () => {
    expect(new Set(STEP_NAMES).size).toBe(STEP_NAMES.length)
    expect(STEP_NAMES.map((name) => stepName(stepOf(name)))).toEqual(STEP_NAMES)
    expect(STEP_NAMES.flatMap((name) => hintLevelOf(stepOf(name)) ?? [])).toEqual([1, 2, 3])
    expect(([1, 2, 3] as const).map((level) => stepName(hintStep(level)))).toEqual(['hint-1', 'hint-2', 'hint-3'])
  })
})

describe('what a hint does', () => {
  test('[TU10] it costs what the round says, moves nothing, and stands at its place', () => {
    const round = taken(aRound({ settings: WITH_HINTS }), sent(['F', 'hint-1', 'R', 'hint-3']))
    expect(adaIn(round).current).toMatchObject({
      turns: 2 + 2 * 2,
      hints: [
        { level: 1, afterTurns: 1 },
        { level: 3, afterTurns: 2 },
      ],
      standing: [turnOf('F'), turnOf('R')],
    })
    const without = taken(aRound(), sent(['F', 'R']))
    expect(adaIn(round).current.position).toEqual(adaIn(without).current.position)
  })

  test('[TU10] taking back removes turns and their count, never a hint', () => {
    const round = taken(aRound({ settings: WITH_HINTS }), sent(['F', 'hint-2', 'take-back']))
    expect(adaIn(round).current).toMatchObject({ turns: 2, standing: [], hints: [{ level: 2, afterTurns: 1 }] })
    expect(takeTurns(round, sent(['take-back'], { from: 3 }))).toEqual({
      ok: false,
      error: { code: 'contest/nothing-to-take-back', held: 3 },
    })
  })

  test('[TU10] what it costs counts in the try that reached the goal; a hint behind the goal is left off', () => {
    const round = taken(aRound({ settings: WITH_HINTS }), sent(['hint-1', ...SOLUTION, 'hint-3']))
    expect(adaIn(round).best).toMatchObject({ turns: 6 + 2, hints: [{ level: 1, afterTurns: 0 }] })
    expect(adaIn(round).current.steps.length).toBe(7)
  })

  test('[TU8] a try with more turns and no hint can be better than one with hints', () => {
    const round = taken(
      aRound({ settings: WITH_HINTS }),
      sent(['hint-1', ...SOLUTION]),
      sent(['U', "U'", ...SOLUTION], { tryNumber: 2, atMs: 2_000 }),
      sent(['U', 'take-back', ...SOLUTION], { tryNumber: 3, atMs: 3_000 }),
    )
    expect(adaIn(round).best).toMatchObject({ turns: 6, tryNumber: 3, hints: [] })
  })

  test.each([
    [0, 'hint-1'],
    [1, 'hint-2'],
    [2, 'hint-3'],
  ] as const)(
    '[TU10] where hints go up to level %i, %s is refused with that level, and the try stays as it was',
    (hints, name) => {
      const before = taken(aRound({ settings: { hints } }), sent(['F']))
      expect(takeTurns(before, sent(['R', name, 'U'], { from: 1 }))).toEqual({
        ok: false,
        error: { code: 'contest/no-such-hint', max: hints, held: 1 },
      })
      expect(adaIn(before).current.steps.length).toBe(1)
    },
  )

  test('[TU10] a try counts its standing turns and what its hints cost, whatever was turned and taken back', () => {
    fc.assert(
      fc.property(someSteps, fc.nat(20), (names, hintCost) => {
        const { settings, start } = aRound({ settings: { hints: 3, hintCost } })
        const played = playTry(anEmptyTry(start, 1), names.map(stepOf), settings, 0)
        if (!played.ok) throw new Error(played.error.code)
        const { standing, hints, turns } = played.value
        expect(turns).toBe(standing.reduce((sum, turn) => sum + outerBlockCost(turn), 0) + hints.length * hintCost)
      }),
      { seed: SEED },
    )
  })
})

describe('once more', () => {
  test('[TU11] a try with hints is the same step by step, in parts, and read back from the record', () => {
    fc.assert(
      fc.property(someSteps, fc.infiniteStream(fc.integer({ min: 1, max: 7 })), (names, sizes) => {
        const start = aRound({ settings: WITH_HINTS })
        let inParts = start
        let stepByStep = start
        for (let from = 0; from < names.length; ) {
          const size = sizes.next().value
          const part = takeTurns(inParts, sent(names.slice(from, from + size), { from, atMs: 1_000 + 10 * from }))
          if (!part.ok) {
            expect(part.error.code).toBe('contest/try-over')
            break
          }
          inParts = part.value.round
          // As a restart does: each step alone, with the moment that its message came in at.
          const fresh = part.value.fresh?.steps ?? []
          for (const [index, step] of fresh.entries()) {
            const event = sent([stepName(step)], { from: from + index, atMs: 1_000 + 10 * from })
            const played = playSteps(stepByStep, { ...event, momentMs: 1_000 + 10 * from })
            if (!played.ok) throw new Error(played.error.code)
            stepByStep = played.value.round
          }
          from += size
        }
        expect(stepByStep.players).toEqual(inParts.players)
      }),
      { seed: SEED, numRuns: 300 },
    )
  })
})

describe('how turns came in', () => {
  test('[TU12] a try is marked once any of its turns was kept on the device or written down, and no other try is', () => {
    const round = taken(
      aRound(),
      sent(['F']),
      sent(['R'], { from: 1, how: { kept: true, written: false } }),
      sent(['U'], { from: 2 }),
      sent(['F'], { tryNumber: 2, how: { kept: false, written: true } }),
      sent(['R'], { tryNumber: 3 }),
    )
    expect(adaIn(round).current.how).toEqual({ kept: false, written: false })
    const second = taken(aRound(), sent(['F']), sent(['R'], { from: 1, how: { kept: true, written: true } }))
    expect(adaIn(second).current.how).toEqual({ kept: true, written: true })
  })

  test('[TU12] turns that are known already mark nothing', () => {
    const round = taken(aRound(), sent(['F', 'R']), sent(['F', 'R'], { how: { kept: true, written: true } }))
    expect(adaIn(round).current.how).toEqual({ kept: false, written: false })
  })

  test('[TU12] the best try carries its own mark', () => {
    const round = taken(
      aRound(),
      sent(SOLUTION, { how: { kept: false, written: true } }),
      sent(['U', 'U', ...SOLUTION], { tryNumber: 2, how: { kept: true, written: false } }),
    )
    expect(adaIn(round).best?.how).toEqual({ kept: false, written: true })
  })
})

describe('what the ranking says beside a lane', () => {
  test('[RA6] nothing, when nothing helped', () => {
    expect(laneIn(aRound()).notes).toBeNull()
    expect(laneIn(taken(aRound(), sent(SOLUTION))).notes).toBeNull()
  })

  test('[RA6] the hints of the try that counts, not of a later one', () => {
    const round = taken(
      aRound({ settings: { hints: 3 } }),
      sent(['hint-1', 'hint-2', ...SOLUTION]),
      sent(['hint-3', 'hint-3', 'hint-3', 'R'], { tryNumber: 2 }),
    )
    expect(laneIn(round).notes).toEqual({
      nHints: 2,
      hintLevel: 2,
      nHintsBefore: 0,
      nTriesHelped: 0,
      nNudges: 0,
      kept: false,
      written: false,
      turnsAfterEnd: null,
    })
  })

  test('[RA6] as long as no try has reached the goal, the hints of the one under way', () => {
    const round = taken(
      aRound({ settings: { hints: 3 } }),
      sent(['hint-3', 'R']),
      sent(['hint-1', 'R'], { tryNumber: 2, how: { kept: true, written: false } }),
    )
    expect(laneIn(round).notes).toMatchObject({ nHints: 1, hintLevel: 1, kept: true })
  })
})

describe('hints of earlier tries', () => {
  const WITH_THREE = { settings: { hints: 3, hintCost: 2 } } as const

  test('[RA7] whoever asks, starts again and solves without a hint counts no hint, and the footnote tells of them', () => {
    const round = taken(
      aRound(WITH_THREE),
      sent(['hint-1', 'hint-2', 'hint-3']),
      sent(SOLUTION, { tryNumber: 2, atMs: 2_000 }),
    )
    expect(laneIn(round)).toMatchObject({
      best: { turns: SOLUTION.length },
      notes: { nHints: 0, hintLevel: 0, nHintsBefore: 3, nTriesHelped: 1 },
    })
  })

  test('[RA7] only tries before the one that counts are told of, and those without a hint are not counted', () => {
    const round = taken(
      aRound(WITH_THREE),
      sent(['hint-1', 'R']),
      sent(['R'], { tryNumber: 2 }),
      sent(['hint-1', 'hint-2'], { tryNumber: 3 }),
      sent(['hint-1', ...SOLUTION], { tryNumber: 4, atMs: 2_000 }),
      sent(['hint-1', 'hint-2', 'hint-3'], { tryNumber: 5, atMs: 3_000 }),
      sent(['R'], { tryNumber: 6, atMs: 4_000 }),
    )
    expect(laneIn(round).notes).toMatchObject({ nHints: 1, nHintsBefore: 3, nTriesHelped: 2 })
  })

  test('[RA7] as long as no try has reached the goal, those before the one under way', () => {
    const round = taken(aRound(WITH_THREE), sent(['hint-1', 'hint-2']), sent(['R'], { tryNumber: 2 }))
    expect(laneIn(round)).toMatchObject({ turns: 1, notes: { nHints: 0, nHintsBefore: 2, nTriesHelped: 1 } })
  })
})

describe('where each plays alone', () => {
  test('[TU14] moments are 0, so that equal turns share the place however long they took', () => {
    const round = taken(
      aRound({ settings: { pace: 'alone' } }),
      sent(SOLUTION, { atMs: 1_000 }),
      sent(SOLUTION, { seatId: BO, atMs: 50_000 }),
    )
    for (const player of round.players) {
      expect(player.best?.momentMs).toBe(0)
      expect([player.lastStepMomentMs, player.lastGainMomentMs]).toEqual([0, 0])
    }
  })

  test('[TU14] its clock still ends the round', () => {
    const round = aRound({ settings: { pace: 'alone' } })
    const ended = clocked(round, { kind: 'ended', atMs: 60_000, reason: 'time' })
    expect(takeTurns(ended, sent(['R'], { atMs: 60_001 }))).toMatchObject({ error: { code: 'contest/round-over' } })
    expect(takeTurns(round, sent(['R'], { atMs: 60_000 }))).toMatchObject({ error: { code: 'contest/round-over' } })
  })
})
