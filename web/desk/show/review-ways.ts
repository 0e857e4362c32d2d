/** Which ways of a round are laid beside each other, and under what names. Pure. */

import type { SeatId } from '../../../engine/contest/ids.ts'
import { countOuterBlockTurns } from '../../../engine/cube/outer-block-turns.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import { SHOWN_WAYS_MAX } from '../../../engine/wire/limits.ts'
import type { Shown, ShownWay } from '../../../engine/wire/shown.ts'
import type { ReviewView, SolutionView } from '../../../engine/wire/views.ts'

export type WaysChoice = {
  readonly shortest: boolean
  readonly lesson: boolean
  /** In the order in which they are shown. */
  readonly seats: readonly SeatId[]
}

/** Students whose ways a review begins with: the best, one in the middle, and one who took many turns. */
const STUDENTS_AT_FIRST = 3

/** @returns the two ways of the guide, and students from along the ranking */
export function defaultChoice({ solutions, ways }: ReviewView): WaysChoice {
  const reached = solutions.filter((solution) => solution.reached !== null)
  const from = reached.length > 0 ? reached : solutions
  const n = Math.min(STUDENTS_AT_FIRST, from.length)
  const picked = Array.from({ length: n }, (_, index) =>
    n === 1 ? from[0] : from[Math.round((index * (from.length - 1)) / (n - 1))],
  )
  return { shortest: ways !== null, lesson: ways !== null, seats: picked.map(({ seatId }) => seatId) }
}

/** @returns how many ways a choice shows */
export function nChosen({ shortest, lesson, seats }: WaysChoice): number {
  return Number(shortest) + Number(lesson) + seats.length
}

/** @param hidesNames students are called A, B, C in the order in which they are shown */
export function waysToShow({ ways, par, solutions }: ReviewView, choice: WaysChoice, hidesNames: boolean): ShownWay[] {
  const shown: ShownWay[] = []
  if (choice.shortest && ways !== null) {
    const kind = par?.proven === false ? 'best-known' : 'shortest'
    shown.push({ owner: { kind }, turns: ways.shortest, reached: true, hintTurns: 0 })
  }
  if (choice.lesson && ways !== null)
    shown.push({ owner: { kind: 'lesson' }, turns: ways.lesson.turns, reached: true, hintTurns: 0 })
  for (const [index, seatId] of choice.seats.entries()) {
    const solution = solutions.find((each) => each.seatId === seatId)
    if (solution === undefined) continue
    const owner = hidesNames
      ? ({ kind: 'letter', letter: 'ABCDEFGH'[index] } as const)
      : ({ kind: 'name', name: solution.name } as const)
    const { turns, reached } = solution
    shown.push({ owner, turns, reached: reached !== null, hintTurns: hintTurnsOf(solution) })
  }
  return shown.slice(0, SHOWN_WAYS_MAX)
}

/**
 * Whoever goes in again while the class sees this review goes on with it.
 *
 * @returns what makes the same ways; null when another thing is shown, or ways that this review has no more
 */
export function takenUpChoice(
  review: ReviewView,
  shown: Shown,
): { readonly choice: WaysChoice; readonly hidesNames: boolean } | null {
  if (shown.kind !== 'review' || shown.roundNumber !== review.round.number || shown.start !== review.round.start) {
    return null
  }
  const isOwner = (...kinds: string[]) => shown.ways.some(({ owner }) => kinds.includes(owner.kind))
  const hidesNames = isOwner('letter')
  const seats: SeatId[] = []
  for (const { owner, turns, hintTurns } of shown.ways) {
    if (owner.kind !== 'name' && owner.kind !== 'letter') continue
    const solution = review.solutions.find(
      (each) =>
        !seats.includes(each.seatId) &&
        (owner.kind === 'letter' || owner.name === each.name) &&
        each.turns.join() === turns.join() &&
        hintTurnsOf(each) === hintTurns,
    )
    if (solution !== undefined) seats.push(solution.seatId)
  }
  const choice = { shortest: isOwner('shortest', 'best-known'), lesson: isOwner('lesson'), seats }
  const made = waysToShow(review, choice, hidesNames)
  const isSame = made.length === shown.ways.length && made.every((way, index) => isSameWay(way, shown.ways[index]))
  return isSame ? { choice, hidesNames } : null
}

/** Counted turns of a solution that are none of its squares. */
function hintTurnsOf({ turns, reached }: SolutionView): number {
  return reached === null ? 0 : Math.max(0, reached.turns - countOuterBlockTurns(turns.map(turnOf)))
}

function isSameWay(one: ShownWay, other: ShownWay): boolean {
  return one.reached === other.reached && ownerOf(one) === ownerOf(other) && one.turns.join() === other.turns.join()
}

function ownerOf({ owner }: ShownWay): string {
  return owner.kind === 'name' ? `name ${owner.name}` : owner.kind === 'letter' ? `letter ${owner.letter}` : owner.kind
}
