/**
 * How a step of the lesson is changed into a step with a mistake, and where its triggers and turns are. The kinds of mistake
 * stand in `plant-kinds.ts`.
 */

import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { mirrorTurns } from '../../../engine/cube/mirror-turns.ts'
import {
  FACE_TURNS,
  type Turn,
  turnAxis,
  turnKind,
  turnLetters,
  turnNamed,
  turnOf,
  turnQuarters,
} from '../../../engine/cube/turns.ts'
import { goalsBeforeMet } from '../../../engine/method/goals.ts'
import { LEFT_TRIGGER, RIGHT_TRIGGER } from '../../../engine/method/sequence-book.ts'
import type { Stage } from '../../../engine/method/stages.ts'
import { turnsOfStep } from '../../../engine/method/way/lesson-step.ts'
import { inFront, type Place } from './plant-place.ts'

const N_TRIGGER = RIGHT_TRIGGER.length

/** A mistake as turned, and which of its turns are the mistake. */
export type Form = {
  readonly turns: readonly Turn[]
  readonly from: number
  readonly to: number
  /** The stage at which the mistake is made, when it is not that of the step. */
  readonly stage?: Stage
  /** Where more than one turn is otherwise: the place of each; of one left out, that of the turn behind it. */
  readonly places?: readonly number[]
  /** Which two turns of the sequence they are. */
  readonly pair?: readonly [number, number]
}

/** Turns that break an earlier stage. Not of the top layer, which is a top turn, and not F2, which is a sequence of stage 1. */
export function breakingTurns({ position, step }: Place): Turn[] {
  return FACE_TURNS.filter(
    (turn) =>
      turnAxis(turn) !== 'U' && turn !== turnOf('F2') && !goalsBeforeMet(afterTurns(position, [turn]), step.stage),
  )
}

/** All of it is the mistake. */
export function whole(all: readonly Turn[]): Form {
  return { turns: all, from: 0, to: all.length }
}

/** Something more at the end. */
export function added(all: readonly Turn[], more: readonly Turn[]): Form {
  return { turns: [...all, ...more], from: 0, to: all.length + more.length }
}

/** Something more inside the step. */
export function inserted(place: Place, at: number, more: readonly Turn[]): Form {
  return replaced(place, at, 0, more)
}

/** Other turns for some of the step. */
export function replaced({ step }: Place, at: number, nGone: number, more: readonly Turn[]): Form {
  const all = turnsOfStep(step)
  return {
    turns: [...all.slice(0, at), ...more, ...all.slice(at + nGone)],
    from: Math.max(0, at - 1),
    to: at + Math.max(1, more.length),
  }
}

/** Where something can be put in. */
export function gaps({ step }: Place): number[] {
  return [...turnsOfStep(step).keys()]
}

type Placed = { readonly at: number; readonly turn: Turn }

/** The turns of the step but for re-holds. */
export function layerTurns({ step }: Place): Placed[] {
  return turnsOfStep(step).flatMap((turn, at) => (turnKind(turn) === 're-hold' ? [] : [{ at, turn }]))
}

/** Those of its sequence. */
export function inSequence(place: Place): Placed[] {
  return layerTurns(place).filter(({ at }) => at >= inFront(place).length)
}

/** The triggers in the sequence. */
export function triggers(place: Place): { at: number; side: 'right' | 'left' }[] {
  const all = turnsOfStep(place.step)
  const found: { at: number; side: 'right' | 'left' }[] = []
  for (let at = inFront(place).length; at < all.length; at++) {
    const next = all.slice(at, at + N_TRIGGER)
    const side = same(next, RIGHT_TRIGGER) ? 'right' : same(next, LEFT_TRIGGER) ? 'left' : null
    if (side === null) continue
    found.push({ at, side })
    at += N_TRIGGER - 1
  }
  return found
}

/** The same trigger several times in a row. */
export function runs(place: Place): { at: number; n: number }[] {
  const found: { at: number; n: number; side: string }[] = []
  for (const { at, side } of triggers(place)) {
    const last = found[found.length - 1]
    if (last !== undefined && last.side === side && last.at + last.n * N_TRIGGER === at) last.n++
    else found.push({ at, n: 1, side })
  }
  return found
}

/** Is the end of the sequence the end of a trigger? */
export function endsWithTrigger({ once }: Place): boolean {
  return [RIGHT_TRIGGER, LEFT_TRIGGER].some((trigger) => same(once.slice(-N_TRIGGER), trigger))
}

/** Several triggers and nothing else but re-holds? */
export function isMadeOfTriggers(turns: readonly Turn[]): boolean {
  const layers = turns.filter((turn) => turnKind(turn) !== 're-hold')
  const parts = Array.from({ length: Math.ceil(layers.length / N_TRIGGER) }, (_, index) =>
    layers.slice(index * N_TRIGGER, (index + 1) * N_TRIGGER),
  )
  return parts.length > 1 && parts.every((part) => [RIGHT_TRIGGER, LEFT_TRIGGER].some((trigger) => same(part, trigger)))
}

/** The one trigger for the other? */
export function isMirrorTrigger(a: readonly Turn[], b: readonly Turn[]): boolean {
  return a.length === N_TRIGGER && same(mirrorTurns(a), b)
}

export function same(a: readonly Turn[], b: readonly Turn[]): boolean {
  return a.length === b.length && a.every((turn, index) => turn === b[index])
}

/** Two turns of the layer that do what this one does. */
export function splitInTwo(turn: Turn): Turn[][] {
  switch (turnQuarters(turn)) {
    case 2:
      return [
        [amount(turn, ''), amount(turn, '')],
        [amount(turn, "'"), amount(turn, "'")],
      ]
    case 1:
      return [
        [amount(turn, '2'), amount(turn, "'")],
        [amount(turn, "'"), amount(turn, '2')],
      ]
    case 3:
      return [
        [amount(turn, '2'), amount(turn, '')],
        [amount(turn, ''), amount(turn, '2')],
      ]
  }
}

/** The same layer by another amount. */
export function amount(turn: Turn, text: '' | "'" | '2'): Turn {
  const other = turnNamed(`${turnLetters(turn)}${text}`)
  if (other === undefined) throw new Error('every layer turns in three amounts')
  return other
}

/** The part of its name behind the layer. */
export function suffix(turn: Turn): string {
  return ['', '', '2', "'"][turnQuarters(turn)]
}
