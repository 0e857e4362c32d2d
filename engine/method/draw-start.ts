/**
 * Draws the start of a round: exactly uniform over all legal cubes from which the span can be played.
 *
 * A legal arrangement is drawn without any redraw: the free pieces of each kind are shuffled, one fixed exchange repairs
 * the parity (it pairs every odd arrangement with one even one), and the last free piece takes the twist or flip that
 * makes the sum right. Starts already at the goal, or of an unwanted case, are then drawn again, which keeps the rest
 * uniform.
 * Source: shuffle and rejection as in `chance/random-source.ts`; World Cube Association, Regulations 2024, 4b3, asks for
 * the same of scrambles.
 */

import { below, type RandomSource, shuffle } from '../chance/random-source.ts'
import { type CubePosition, EDGES_AT, solvedCube } from '../cube/cube-position.ts'
import { isOddPermutation } from '../cube/legality.ts'
import { cornerCode, edgeCode } from '../cube/piece-code.ts'
import { assert } from '../result.ts'
import { type CaseId, caseOf, isCaseOf, isLastLayerStage } from './cases.ts'
import { goalMet } from './goals.ts'
import { arrangementsOf } from './last-layer-arrangements.ts'
import type { Stage, StageSpan } from './stages.ts'
import { freedomBefore, type KindFreedom } from './start-freedom.ts'

/** What start is wanted. */
export type StartWish = {
  readonly span: StageSpan
  /** Only these cases of stage `span.from` (4 to 7); all when left out. */
  readonly cases?: readonly CaseId[]
  readonly random: RandomSource
}

/**
 * Most draws for one start. The rarest case has 1 arrangement in 27; a sound source fails to meet it this often in a row
 * less than once in 10^160.
 */
const DRAWS_MAX = 10_000

/**
 * @returns a position held home: each legal cube that meets the goals before `span.from`, misses the goal of `span.to`
 *   and shows one of the cases has the same chance; no other has any
 * Asserts that the span is in order and that the cases are of stage `span.from` and leave a start.
 */
export function drawStart({ span, cases, random }: StartWish): CubePosition {
  assert(span.from <= span.to, 'a span ends where it begins or later')
  const isWanted = caseFilter(span, cases)
  for (let draw = 0; draw < DRAWS_MAX; draw++) {
    const position = drawArrangement(span.from, random)
    if (!goalMet(position, span.to) && isWanted(position)) return position
  }
  throw new Error('The random source never gives a start that is wanted')
}

/**
 * Is there a start of these cases that is not at the goal already? Not, for example, for the finished cross alone in a
 * round of stage 4. The teacher's form asks this before it asks for a start.
 */
export function casesLeaveAStart(span: StageSpan, cases: readonly CaseId[]): boolean {
  const stage = span.from
  if (!isLastLayerStage(stage) || !cases.every((wanted) => isCaseOf(wanted, stage))) return false
  if (span.to > stage) return cases.length > 0
  return arrangementsOf(stage).some((position) => !goalMet(position, stage) && cases.includes(caseOf(position, stage)))
}

/**
 * Draws from all legal cubes that meet the goals before `stage`, uniformly and without any redraw; some are at the
 * stage's goal.
 *
 * @returns a position held home
 */
export function drawArrangement(stage: Stage, random: RandomSource): CubePosition {
  const { corners, edges } = freedomBefore(stage)
  const position = solvedCube()
  const cornerHomes = shuffled(corners.places, random)
  const edgeHomes = shuffled(edges.places, random)
  if (isOddPermutation(cornerHomes) !== isOddPermutation(edgeHomes)) {
    ;[edgeHomes[0], edgeHomes[1]] = [edgeHomes[1], edgeHomes[0]]
  }
  const twists = drawTurns(corners, 3, random)
  const flips = drawTurns(edges, 2, random)
  corners.places.forEach((place, index) => {
    position[place] = cornerCode(cornerHomes[index], twists[index])
  })
  edges.places.forEach((place, index) => {
    position[place] = edgeCode(edgeHomes[index] - EDGES_AT, flips[index])
  })
  return position
}

function caseFilter(span: StageSpan, cases: readonly CaseId[] | undefined): (position: CubePosition) => boolean {
  if (cases === undefined) return () => true
  const stage = span.from
  assert(isLastLayerStage(stage) && casesLeaveAStart(span, cases), `cases ${cases} leave a start of stage ${stage}`)
  return (position) => cases.includes(caseOf(position, stage))
}

function shuffled(places: readonly number[], random: RandomSource): number[] {
  const order = [...places]
  shuffle(random, order)
  return order
}

/** Draws how each piece of a kind is turned; the last one makes the sum a multiple of `nWays`. */
function drawTurns({ places, mayTurn }: KindFreedom, nWays: number, random: RandomSource): number[] {
  if (!mayTurn) return places.map(() => 0)
  const free = places.slice(1).map(() => below(random, nWays))
  const sum = free.reduce((total, amount) => total + amount, 0)
  return [...free, (nWays - (sum % nWays)) % nWays]
}
