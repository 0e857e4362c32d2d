/**
 * What the teacher can talk through after a round: par, a shortest solution, and the lesson way. Worked out as soon as the
 * round is dealt, beside the event loop, and again after a restart: it follows from the start, so it is not recorded.
 *
 * One stage is known at once. Over several stages a good line is known within a second and called best known; a longer
 * search then goes on in the background, until it has proven it or found better, or another round is dealt.
 */

import type { RoundId } from '../../engine/contest/ids.ts'
import type { Round } from '../../engine/contest/round-state.ts'
import { afterTurns } from '../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../engine/cube/cube-position.ts'
import { countOuterBlockTurns } from '../../engine/cube/outer-block-turns.ts'
import { type TurnName, turnName, turnOf } from '../../engine/cube/turns.ts'
import { nStagesIn, STAGES } from '../../engine/method/stages.ts'
import { type LessonStep, turnsOfStep } from '../../engine/method/way/lesson-step.ts'
import { lessonSteps, writeStep } from '../../engine/method/way/lesson-steps.ts'
import type { ShortestAnswer } from '../../engine/search/shortest/shortest-answer.ts'
import type { ParView, WayStepView, WaysView } from '../../engine/wire/views.ts'
import type { LiveParts } from './parts.ts'

/** Par and ways of one round. */
export type Guide = { readonly par: ParView; readonly ways: WaysView }

/** Turns that bring a solved real cube to the start, or why there are none. */
export type RoundSetup =
  | { readonly kind: 'turns'; readonly turns: readonly TurnName[] }
  /** None of a length that gives nothing away, or the search failed. Do: play fewer stages at once. */
  | { readonly kind: 'none' }

/** The first answer over several stages has to be there within a second of the start. */
const FIRST_ANSWER_MS = 700
/** How long the proof may take behind it. */
const PROOF_MS = 30_000
/** How long a shorter setup is looked for; the first one is there after some milliseconds. */
const SETUP_MS = 300
/** After a fault, or when too many ask at once: longer each time, a minute in all. */
const AGAIN_AFTER_MS = 1_000
const ATTEMPTS_MAX = 10

type GuideParts = Pick<LiveParts, 'search' | 'log'>

export class RoundGuide {
  readonly #parts: GuideParts
  readonly #tell: () => void
  #roundId: RoundId | null = null
  #guide: Guide | null = null
  #setup: RoundSetup | null = null
  #stop = new AbortController()

  /** @param tell called whenever there is something new to show */
  constructor(parts: GuideParts, tell: () => void) {
    this.#parts = parts
    this.#tell = tell
  }

  /** @returns what is known of the round; null for another round, and for a moment at the beginning */
  of(roundId: RoundId): Guide | null {
    return this.#roundId === roundId ? this.#guide : null
  }

  /** @returns the setup of a round for real cubes; null for other rounds, and until it is found */
  setupOf(roundId: RoundId): RoundSetup | null {
    return this.#roundId === roundId ? this.#setup : null
  }

  /** Works for this round from now on, and no more for the one before. */
  follow(round: Round): void {
    if (this.#roundId === round.id) return
    this.stop()
    this.#roundId = round.id
    this.#guide = null
    this.#setup = null
    this.#stop = new AbortController()
    this.#workOut(round, this.#stop.signal).catch((fault: unknown) => {
      this.#parts.log.error(
        { round: round.id, fault: String(fault) },
        'par and ways of a round could not be worked out',
      )
    })
  }

  /** Gives up what is still searched. What was found stays. */
  stop(): void {
    this.#stop.abort()
  }

  async #workOut(round: Round, signal: AbortSignal): Promise<void> {
    const lesson = lessonOf(round)
    for (const budgetMs of budgetsFor(round)) {
      const answer = await this.#ask(round, budgetMs, signal)
      if (answer === null || signal.aborted) return
      this.#keepBetter(answer, lesson)
      if (this.#setup === null && round.settings.cube !== 'screen') await this.#findSetup(round, answer, lesson, signal)
      if (answer.proven) return
    }
  }

  /** A setup gives nothing away: its inverse is never as short as par and a good deal more, nor the lesson way. */
  async #findSetup(
    round: Round,
    { turns }: ShortestAnswer,
    lesson: WaysView['lesson'],
    signal: AbortSignal,
  ): Promise<void> {
    const secrets = { to: round.settings.to, parTurns: turns.length, lessonWay: lesson.turns.map(turnOf) }
    const found = await this.#parts.search.setup({ position: round.start, secrets, budgetMs: SETUP_MS, signal })
    if (signal.aborted) return
    if (!found.ok) this.#parts.log.warn({ round: round.id, code: found.error.code }, 'no setup for real cubes')
    this.#setup = found.ok ? { kind: 'turns', turns: found.value.turns.map(turnName) } : { kind: 'none' }
    this.#tell()
  }

  async #ask(round: Round, budgetMs: number, signal: AbortSignal): Promise<ShortestAnswer | null> {
    for (let attempt = 1; attempt <= ATTEMPTS_MAX && !signal.aborted; attempt++) {
      const asked = { position: round.start, to: round.settings.to, budgetMs, signal }
      const answer = await this.#parts.search.shortest(asked)
      if (answer.ok) return answer.value
      if (answer.error.code === 'search/stopped') return null
      this.#parts.log.warn({ round: round.id, code: answer.error.code, attempt }, 'no par yet')
      await pause(AGAIN_AFTER_MS * attempt)
    }
    return null
  }

  #keepBetter(answer: ShortestAnswer, lesson: WaysView['lesson']): void {
    const known = this.#guide
    const isBetter = known === null || answer.turns.length < known.par.turns
    const turns = isBetter ? answer.turns.length : known.par.turns
    const lowerBound = Math.max(answer.lowerBound, known?.par.lowerBound ?? 0)
    const par = { turns, proven: turns === lowerBound, lowerBound }
    const shortest = isBetter ? answer.turns.map(turnName) : known.ways.shortest
    this.#guide = { par, ways: { shortest, lesson } }
    this.#tell()
  }
}

/**
 * Of a round that is over and no longer held, for a review.
 *
 * @returns what is known after the first answer; null when none came
 */
export async function guideFor(round: Round, parts: GuideParts): Promise<Guide | null> {
  return new Promise((resolve) => {
    const guide = new RoundGuide(parts, () => {
      resolve(guide.of(round.id))
      guide.stop()
    })
    guide.follow(round)
    void pause(GUIDE_WAIT_MS).then(() => {
      guide.stop()
      resolve(guide.of(round.id))
    })
  })
}

/** A review that waits longer for par opens without it. */
const GUIDE_WAIT_MS = 4_000

/**
 * Makes what the first round would have to wait for, and every other room with it: the graphs of the lesson and the shipped
 * pars, a sixth of a second in all. To be called before the server listens.
 */
export async function prepareGuides({ search, log }: GuideParts): Promise<void> {
  const position = afterTurns(solvedCube(), [turnOf('F')])
  for (const stage of STAGES) lessonSteps(position, { from: stage, to: stage })
  const known = await search.shortest({ position, to: 1, budgetMs: FIRST_ANSWER_MS })
  if (!known.ok) log.warn({ code: known.error.code }, 'there will be no pars')
}

/**
 * Of a round that has ended, read back after a restart, the class has seen a par before: a quick guess that may differ is
 * not told, only what the long search finds. For one that was struck out nobody waits.
 */
function budgetsFor({ settings, clock }: Round): number[] {
  if (nStagesIn(settings) === 1 || clock.phase === 'void') return [FIRST_ANSWER_MS]
  return clock.phase === 'ended' ? [PROOF_MS] : [FIRST_ANSWER_MS, PROOF_MS]
}

function lessonOf({ start, settings }: Round): WaysView['lesson'] {
  const steps = lessonSteps(start, settings)
  const turns = steps.flatMap(turnsOfStep)
  return { turns: turns.map(turnName), nTurns: countOuterBlockTurns(turns), steps: steps.map(stepView) }
}

function stepView(step: LessonStep): WayStepView {
  const { stage, isRepair, lookFor, why } = step
  return { stage, isRepair, lookFor, why, mark: step.hold.mark, ...writeStep(step), nSteps: turnsOfStep(step).length }
}

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, ms).unref()
  })
}
