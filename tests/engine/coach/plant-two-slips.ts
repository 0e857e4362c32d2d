/**
 * Two single turns of a step that go otherwise: another way or amount, the opposite layer, left out, made twice. There are
 * tens of thousands of such pairs in a long sequence, so that one is drawn instead of listing them all.
 */

import { below } from '../../../engine/chance/random-source.ts'
import { oppositeFace } from '../../../engine/cube/faces.ts'
import { inverseTurn, type Turn, turnAxis, turnNamed, turnQuarters } from '../../../engine/cube/turns.ts'
import { turnsOfStep } from '../../../engine/method/way/lesson-step.ts'
import { amount, type Form, inSequence, suffix } from './plant-forms.ts'
import type { Place } from './plant-place.ts'

/** By so many turns a sequence is known, beside the two that are otherwise. */
const TURNS_LEFT_MIN = 4
/** Other pairs that look alike are no further away than this, in turns. */
const NEAR = 2

/** One turn of a step, otherwise: what stands in its place, and which of that is the slip. */
type SlippedTurn = { readonly at: number; readonly more: readonly Turn[]; readonly place: number }

/** @returns one form, drawn; none where too little of the sequence would be left to know it by */
export function twoSlips(place: Place): Form[] {
  const all = inSequence(place)
  if (all.length < TURNS_LEFT_MIN + 2) return []
  // What is otherwise in a first turn of the top layer is a top turn before the sequence.
  const least = turnAxis(all[0].turn) === 'U' ? 1 : 0
  const second = least + 1 + below(place.random, all.length - least - 1)
  const pairs = pairsOf(place, least + below(place.random, second - least), second)
  return pairs.length === 0 ? [] : [pairs[below(place.random, pairs.length)]]
}

/** @returns every form whose slips are near those of a form of `twoSlips`, itself included */
export function twoSlipsNear(place: Place, { pair = [0, 0] }: Form): Form[] {
  const near = (index: number) => [...inSequence(place).keys()].filter((other) => Math.abs(other - index) <= NEAR)
  return near(pair[0]).flatMap((first) =>
    near(pair[1]).flatMap((second) => (first < second ? pairsOf(place, first, second) : [])),
  )
}

function pairsOf(place: Place, first: number, second: number): Form[] {
  const all = inSequence(place)
  const last = turnsOfStep(place.step).length - 1
  // What is missing at the end is unfinished.
  const seconds = slipsOfOne(all[second]).filter(({ at, more }) => at !== last || more.length > 0)
  return slipsOfOne(all[first]).flatMap((one) =>
    seconds.map((two) => ({ ...replacedTwice(place, one, two), pair: [first, second] as const })),
  )
}

function slipsOfOne({ at, turn }: { readonly at: number; readonly turn: Turn }): SlippedTurn[] {
  const other = turnNamed(`${oppositeFace(turnAxis(turn))}${suffix(turn)}`)
  const instead = [
    ...(['', "'", '2'] as const).map((text) => amount(turn, text)).filter((each) => each !== turn),
    ...(other === undefined ? [] : [other, inverseTurn(other)]),
  ]
  return [
    ...instead.map((more) => ({ at, more: [more], place: 0 })),
    { at, more: [], place: 0 },
    ...(turnQuarters(turn) === 2 ? [] : [{ at, more: [turn, turn], place: 1 }]),
  ]
}

function replacedTwice({ step }: Place, first: SlippedTurn, second: SlippedTurn): Form {
  const all = turnsOfStep(step)
  const head = [...all.slice(0, first.at), ...first.more, ...all.slice(first.at + 1, second.at)]
  const places = [first.at + first.place, head.length + second.place]
  return { turns: [...head, ...second.more, ...all.slice(second.at + 1)], from: places[0], to: places[1] + 1, places }
}
