/**
 * A stage of the last layer as a small graph: its arrangements in each of the four holds with the base down, joined by
 * what a student may do next (a turn of the top layer, a re-hold, a sequence of the book). The shortest way through it
 * is the lesson way, so no hold and no case is ever written down by hand, and a teacher's own book gets its own way.
 *
 * Shortest means: fewest sequences, then fewest turns of the top layer, then fewest re-holds. At most 108 states; built
 * in a few milliseconds.
 * Source of the method: Bellman's equation solved by sweeps, R. Bellman, On a routing problem, 1958.
 */

import { afterTurns } from '../cube/apply-turn.ts'
import { type CubePosition, solvedCube } from '../cube/cube-position.ts'
import { asHeldHome, centreAt } from '../cube/hold.ts'
import { type Turn, turnOf } from '../cube/turns.ts'
import { assert, err, ok, type Result } from '../result.ts'
import { type CaseId, caseOf, type LastLayerStage } from './cases.ts'
import { goalMet, goalsBeforeMet } from './goals.ts'
import { arrangementKey, arrangementsOf } from './last-layer-arrangements.ts'

/** One step of a lesson way, in the order in which it is done. At least one part is there. */
export type LessonStep = {
  /** A turn of the top layer. */
  readonly topTurn: Turn | undefined
  /** A re-hold about the vertical axis: y, y' or y2. */
  readonly reHold: Turn | undefined
  /** A sequence of the book; empty when turning the top layer is all that is left. */
  readonly sequence: readonly Turn[]
}

/** Why a book does not serve for a stage. */
export type BookFault =
  /** The sequence undoes a goal before its stage. Data: its place in the list. Do: correct it. */
  | { readonly code: 'method/breaks-earlier-stage'; readonly stage: LastLayerStage; readonly sequenceIndex: number }
  /** The sequence ends with the base elsewhere than down. Data: its place in the list. Do: add a re-hold. */
  | { readonly code: 'method/base-not-down'; readonly stage: LastLayerStage; readonly sequenceIndex: number }
  /** Some case is never finished. Data: the case. Do: add a sequence. */
  | { readonly code: 'method/cannot-finish'; readonly stage: LastLayerStage; readonly caseId: CaseId }

/** The shortest ways of one stage, asked position by position. */
export type CaseGraph = {
  /**
   * @param position meets the goals before the stage, base down
   * @returns the first step of the shortest way; undefined when the goal is met
   */
  firstStep(position: CubePosition): LessonStep | undefined
  /** @returns how many sequences the shortest way takes */
  nSequences(position: CubePosition): number
}

/** Costs that keep the order of importance apart: a way has fewer than 20 top turns and 100 re-holds. */
const SEQUENCE_COST = 100_000
const TOP_TURN_COST = 1_000
/** A top turn ahead of a sequence costs a little more, so that the layer is aligned at the end, as it is taught. */
const EARLY_TOP_TURN_COST = 1_100
const RE_HOLD_COST = 1

const TOP_TURNS = [undefined, turnOf('U'), turnOf("U'"), turnOf('U2')]
const RE_HOLDS = [undefined, turnOf('y'), turnOf("y'"), turnOf('y2')]

type Choice = { readonly step: LessonStep; readonly cost: number }
type State = { readonly position: CubePosition; firstStep: LessonStep | undefined; cost: number }

/** @returns the turns of a step in the order in which they are done */
export function turnsOfStep({ topTurn, reHold, sequence }: LessonStep): Turn[] {
  return [...present(topTurn), ...present(reHold), ...sequence]
}

/**
 * Works out the shortest way from every arrangement of a stage.
 *
 * @param sequences the book's sequences for this stage
 * @returns the graph, or why the sequences cannot be taught
 */
export function buildCaseGraph(
  stage: LastLayerStage,
  sequences: ReadonlyArray<readonly Turn[]>,
): Result<CaseGraph, BookFault> {
  for (const [sequenceIndex, sequence] of sequences.entries()) {
    const after = afterTurns(solvedCube(), sequence)
    if (!goalsBeforeMet(after, stage)) return err({ code: 'method/breaks-earlier-stage', stage, sequenceIndex })
    if (centreAt(after, 'D') !== 'D') return err({ code: 'method/base-not-down', stage, sequenceIndex })
  }
  const states = statesOf(stage)
  findShortestWays(states, stage, choicesWith(sequences))
  const stuck = [...states.values()].find(({ cost }) => cost === Number.POSITIVE_INFINITY)
  if (stuck !== undefined) return err({ code: 'method/cannot-finish', stage, caseId: caseOf(stuck.position, stage) })
  return ok({
    firstStep: (position) => stateOf(position, states, stage).firstStep,
    nSequences: (position) => Math.trunc(stateOf(position, states, stage).cost / SEQUENCE_COST),
  })
}

function statesOf(stage: LastLayerStage): Map<string, State> {
  const states = new Map<string, State>()
  for (const arrangement of arrangementsOf(stage)) {
    for (const reHold of RE_HOLDS) {
      const position = afterTurns(arrangement, present(reHold))
      const cost = goalMet(position, stage) ? 0 : Number.POSITIVE_INFINITY
      states.set(stateKey(position, stage), { position, firstStep: undefined, cost })
    }
  }
  return states
}

/** All that can be done in one step: any top turn and re-hold with a sequence after them, or a top turn alone. */
function choicesWith(sequences: ReadonlyArray<readonly Turn[]>): Choice[] {
  const alone = TOP_TURNS.filter((topTurn) => topTurn !== undefined).map((topTurn) => ({
    step: { topTurn, reHold: undefined, sequence: [] },
    cost: TOP_TURN_COST,
  }))
  const withSequence = sequences.flatMap((sequence) =>
    TOP_TURNS.flatMap((topTurn) =>
      RE_HOLDS.map((reHold) => ({
        step: { topTurn, reHold, sequence },
        cost:
          SEQUENCE_COST + (topTurn === undefined ? 0 : EARLY_TOP_TURN_COST) + (reHold === undefined ? 0 : RE_HOLD_COST),
      })),
    ),
  )
  return [...alone, ...withSequence]
}

/** Sweeps over all states until none finds a cheaper way: at most as many sweeps as the longest way has steps. */
function findShortestWays(states: Map<string, State>, stage: LastLayerStage, choices: readonly Choice[]): void {
  const edges = [...states.values()].flatMap((from) =>
    choices.flatMap(({ step, cost }) => {
      const reached = afterTurns(from.position, turnsOfStep(step))
      // At stage 7 a top turn leads out of the stage. Elsewhere, alone, it is for the end: else any way could begin so.
      const isChoice = goalsBeforeMet(reached, stage) && (step.sequence.length > 0 || goalMet(reached, stage))
      return isChoice ? [{ from, step, cost, to: stateOf(reached, states, stage) }] : []
    }),
  )
  for (let hasChanged = true; hasChanged; ) {
    hasChanged = false
    for (const { from, to, step, cost } of edges) {
      if (to.cost + cost >= from.cost) continue
      from.cost = to.cost + cost
      from.firstStep = step
      hasChanged = true
    }
  }
}

function stateOf(position: CubePosition, states: ReadonlyMap<string, State>, stage: LastLayerStage): State {
  const state = states.get(stateKey(position, stage))
  assert(state !== undefined, `the position is one of stage ${stage}, held with the base down`)
  return state
}

function stateKey(position: CubePosition, stage: LastLayerStage): string {
  assert(goalsBeforeMet(position, stage), `the goals before stage ${stage} are met`)
  return `${centreAt(position, 'D')}${centreAt(position, 'F')} ${arrangementKey(asHeldHome(position), stage)}`
}

function present(turn: Turn | undefined): Turn[] {
  return turn === undefined ? [] : [turn]
}
