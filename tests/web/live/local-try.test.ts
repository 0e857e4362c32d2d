/** A student's tries on the page: nothing is lost, nothing is doubled, the server's word wins. Rules LT: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { RoundId } from '../../../engine/contest/ids.ts'
import { MESSAGE_STEPS_MAX } from '../../../engine/contest/limits.ts'
import { playerOf } from '../../../engine/contest/players.ts'
import type { Reached, Round } from '../../../engine/contest/round-state.ts'
import { type Step, stepName, stepOf, TAKE_BACK } from '../../../engine/contest/steps.ts'
import { takeTurns } from '../../../engine/contest/take-turns.ts'
import { TURN_NAMES } from '../../../engine/cube/turns.ts'
import type { TryView } from '../../../engine/wire/views.ts'
import {
  afterAnswer,
  afterGap,
  currentTry,
  nextMessage,
  type Outbox,
  outboxFromView,
  showTry,
  type TurnsMessage,
  withNextTry,
  withoutNews,
  withSteps,
} from '../../../web/live/local-try.ts'
import { ADA, aRound, SOLUTION } from '../../engine/contest/a-round.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'

const ROUND = 'round' as RoundId
const OTHER_ROUND = 'other' as RoundId
const anEmptyOutbox = (roundId = ROUND) => outboxFromView(roundId, null, null)
const shownOf = (outbox: Outbox, reached: Reached | null = null) =>
  showTry(outbox, aRound().start, aRound().settings, reached)
/** As it comes back from the device. */
const reloaded = (outbox: Outbox) => JSON.parse(JSON.stringify(outbox)) as Outbox

const steps = (...names: Parameters<typeof stepOf>[0][]): Step[] => names.map(stepOf)

/** The server as the page sees it: takes a message, and may lose it or its answer. */
function aServerSide() {
  let round: Round = aRound({ settings: { timeLimitMs: null } })
  return {
    take({ kept, written, ...message }: TurnsMessage) {
      const taken = takeTurns(round, { seatId: ADA, late: false, atMs: 1_000, how: { kept, written }, ...message })
      if (taken.ok) round = taken.value.round
      return taken.ok ? taken.value.answer : null
    },
    view(): TryView | null {
      const player = playerOf(round, ADA)
      if (player === undefined) return null
      return {
        number: player.current.number,
        steps: player.current.steps.map(stepName),
        reached: player.current.reached,
        best: player.best,
      }
    },
    allSteps: () => playerOf(round, ADA)?.current.steps ?? [],
  }
}

describe('the page and the server', () => {
  test('[LT1] turns are shown at once and wait until the server holds them', () => {
    const outbox = withSteps(anEmptyOutbox(), steps('R', 'M', 'take-back', 'x'))
    const shown = shownOf(outbox)
    expect(shown).toMatchObject({ turns: 1, nWaiting: 4, reachedHere: false })
    expect(shown.standing.map(stepName)).toEqual(['R', 'x'])
    expect(nextMessage(outbox, 2)).toMatchObject({ tryNumber: 1, from: 0, steps: steps('R', 'M') })
    const held = afterAnswer(outbox, { tryNumber: 1, held: 2, reached: null })
    expect(nextMessage(held, 64)).toMatchObject({ tryNumber: 1, from: 2, steps: steps('take-back', 'x') })
  })

  test('[LT4] steps that were kept on the device, or written down, are so still after the page comes back', () => {
    for (const how of [
      { kept: true, written: false },
      { kept: false, written: true },
    ]) {
      const outbox = withSteps(anEmptyOutbox(), steps('R', 'U'), how)
      expect(nextMessage(outboxFromView(ROUND, null, reloaded(outbox)), 64)).toMatchObject(how)
    }
  })

  test('[LT2] the goal is seen on the page before the server says so', () => {
    const outbox = withSteps(anEmptyOutbox(), steps(...SOLUTION))
    expect(shownOf(outbox)).toMatchObject({ turns: 6, reachedHere: true, reached: null })
  })

  test('[LT2] a trigger that passes through the goal ends there, on the page as on the server', () => {
    const outbox = withSteps(anEmptyOutbox(), steps(...SOLUTION, 'R', 'U'))
    const shown = shownOf(outbox)
    expect(shown).toMatchObject({ turns: 6, reachedHere: true })
    expect(shown.steps).toEqual(steps(...SOLUTION))
    const server = aServerSide()
    const answer = server.take(nextMessage(outbox, 64)!)!
    expect(nextMessage(afterAnswer(outbox, answer), 64)).toBeNull()
    // The answer was lost and the page loaded again: nothing is left to send either.
    expect(nextMessage(outboxFromView(ROUND, server.view(), reloaded(outbox)), 64)).toBeNull()
  })

  test('[LT3] a try is left while its turns are still on their way: they are sent before those of the next one', () => {
    const outbox = withSteps(withNextTry(withSteps(anEmptyOutbox(), steps('R')))!, steps('U'))
    expect(nextMessage(outbox, 64)).toMatchObject({ tryNumber: 1, from: 0, steps: steps('R') })
    const next = afterAnswer(outbox, { tryNumber: 1, held: 1, reached: null })
    expect(nextMessage(next, 64)).toMatchObject({ tryNumber: 2, from: 0, steps: steps('U') })
  })

  test('[LT4] after a reload the page goes on from what it kept and what the server holds', () => {
    const kept = withSteps(anEmptyOutbox(), steps('R', 'U', 'F'))
    const mine: TryView = { number: 1, steps: ['R'], reached: null, best: null }
    const again = outboxFromView(ROUND, mine, reloaded(kept))
    expect(nextMessage(again, 64)).toMatchObject({ tryNumber: 1, from: 1, steps: steps('U', 'F') })
  })

  test.each<[string, TryView, Outbox | null, Step[]]>([
    [
      'another tab went another way',
      { number: 1, steps: ['L'], reached: null, best: null },
      withSteps(anEmptyOutbox(), steps('R', 'U')),
      steps('L'),
    ],
    [
      'another tab is a try further on',
      { number: 2, steps: ['L'], reached: null, best: null },
      withSteps(anEmptyOutbox(), steps('R')),
      steps('L'),
    ],
    [
      'what was kept is of another round',
      { number: 1, steps: ['L'], reached: null, best: null },
      withSteps(anEmptyOutbox(OTHER_ROUND), steps('R')),
      steps('L'),
    ],
    ['nothing was kept', { number: 3, steps: ['L', 'D'], reached: null, best: null }, null, steps('L', 'D')],
  ])('[LT5] %s: the page takes what the server holds', (_what, mine, kept, expected) => {
    const outbox = outboxFromView(ROUND, mine, kept)
    expect(currentTry(outbox)).toMatchObject({ number: mine.number, steps: expected })
    expect(nextMessage(outbox, 64)).toBeNull()
  })

  test('[LT6] what the server does not hold can be given up', () => {
    const outbox = withoutNews(
      afterAnswer(withSteps(anEmptyOutbox(), steps('R', 'U')), { tryNumber: 1, held: 1, reached: null }),
    )
    expect(currentTry(outbox).steps).toEqual(steps('R'))
  })

  test('[LT6] tries that the server has not opened are given up: the last one that it has is under way again', () => {
    const held = afterAnswer(withSteps(anEmptyOutbox(), steps('R')), { tryNumber: 1, held: 1, reached: null })
    const second = withSteps(withNextTry(held)!, steps('U'))
    const third = withNextTry(second)!
    for (const outbox of [second, third, reloaded(third)]) {
      const rest = withoutNews(outbox)
      expect(currentTry(rest)).toMatchObject({ number: 1, steps: steps('R') })
      expect(nextMessage(rest, 64)).toBeNull()
    }
    const opened = afterAnswer(third, { tryNumber: 2, held: 1, reached: null })
    expect(currentTry(withoutNews(opened))).toMatchObject({ number: 2, steps: steps('U') })
  })

  test('[LT1] a gap in one try sends nothing of another one again', () => {
    const held = afterAnswer(withSteps(anEmptyOutbox(), steps('R', 'U')), { tryNumber: 1, held: 2, reached: null })
    const second = withSteps(withNextTry(held)!, steps('F', 'D'))
    const taken = afterAnswer(second, { tryNumber: 2, held: 2, reached: null })
    expect(nextMessage(afterGap(taken, 2, 1), 64)).toMatchObject({ tryNumber: 2, from: 1, steps: steps('D') })
  })

  test('[LT7] over lost messages, lost answers and reloads, the server ends up with exactly the steps that were made', () => {
    const anyStep = fc.constantFrom(...TURN_NAMES.map(stepOf))
    const anyDeed = fc.oneof(
      {
        weight: 4,
        arbitrary: fc.record({
          kind: fc.constant('turn' as const),
          steps: fc.array(anyStep, { minLength: 1, maxLength: 4 }),
        }),
      },
      { weight: 1, arbitrary: fc.record({ kind: fc.constant('take-back' as const) }) },
      {
        weight: 5,
        arbitrary: fc.record({ kind: fc.constant('send' as const), isLost: fc.boolean(), isAnswerLost: fc.boolean() }),
      },
      { weight: 1, arbitrary: fc.record({ kind: fc.constant('reload' as const) }) },
      { weight: 1, arbitrary: fc.record({ kind: fc.constant('again' as const) }) },
    )
    fc.assert(
      fc.property(fc.array(anyDeed, { maxLength: 60 }), (deeds) => {
        const server = aServerSide()
        let outbox = anEmptyOutbox()
        const send = (isLost = false, isAnswerLost = false) => {
          const message = nextMessage(outbox, MESSAGE_STEPS_MAX)
          const answer = message === null || isLost ? null : server.take(message)
          if (answer !== null && !isAnswerLost) outbox = afterAnswer(outbox, answer)
        }
        for (const deed of deeds) {
          const shown = shownOf(outbox)
          if (deed.kind === 'turn' && !shown.reachedHere) outbox = withSteps(outbox, deed.steps)
          if (deed.kind === 'take-back' && !shown.reachedHere && shown.standing.length > 0)
            outbox = withSteps(outbox, [TAKE_BACK])
          if (deed.kind === 'again' && shown.steps.length > 0) outbox = withNextTry(outbox) ?? outbox
          if (deed.kind === 'send') send(deed.isLost, deed.isAnswerLost)
          if (deed.kind === 'reload') outbox = outboxFromView(ROUND, server.view(), reloaded(outbox))
        }
        for (let left = 0; left < 200 && nextMessage(outbox, MESSAGE_STEPS_MAX) !== null; left++) send()
        expect(nextMessage(outbox, MESSAGE_STEPS_MAX)).toBeNull()
        const made = shownOf(outbox)
        expect(server.view()?.number ?? 1).toBe(made.number)
        expect(server.allSteps()).toEqual(made.steps)
      }),
      { seed: SEED, numRuns: 400 },
    )
  })
})
