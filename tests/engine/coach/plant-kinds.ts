/**
 * The mistakes that are planted: for each kind, every form it can take in one step of the lesson. A form is what is turned
 * in place of the step; what comes after is the lesson's way from where the cube stands then.
 */

import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { oppositeFace } from '../../../engine/cube/faces.ts'
import { mirrorTurns } from '../../../engine/cube/mirror-turns.ts'
import {
  FACE_TURNS,
  inverseTurn,
  inverseTurns,
  turnAxis,
  turnKind,
  turnNamed,
  turnOf,
  turnQuarters,
} from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { RIGHT_TRIGGER } from '../../../engine/method/sequence-book.ts'
import { STAGES, type Stage } from '../../../engine/method/stages.ts'
import { turnsOfStep } from '../../../engine/method/way/lesson-step.ts'
import { lessonSteps } from '../../../engine/method/way/lesson-steps.ts'
import { repeated, turns } from '../cube/arbitraries.ts'
import { otherPieceSteps } from './other-pieces.ts'
import {
  added,
  amount,
  breakingTurns,
  endsWithTrigger,
  type Form,
  gaps,
  inSequence,
  inserted,
  isMadeOfTriggers,
  isMirrorTrigger,
  layerTurns,
  replaced,
  runs,
  same,
  splitInTwo,
  suffix,
  triggers,
  whole,
} from './plant-forms.ts'
import { longWays } from './plant-long-ways.ts'
import { inFront, type Place } from './plant-place.ts'
import { twoSlips } from './plant-two-slips.ts'

/** All forms that a kind can take at a place. */
export type Kind = {
  readonly key: string
  readonly stages?: readonly Stage[]
  readonly forms: (place: Place) => Form[]
  /** Does the try end with the mistake, the cube never mended? */
  readonly isLast?: boolean
  /** Is it so much rarer than the others that they need not be told apart from it? */
  readonly isRare?: boolean
}

const RE_HOLDS = ['y', "y'", 'y2'] as const
const N_TRIGGER = RIGHT_TRIGGER.length

export const KINDS: readonly Kind[] = [
  {
    key: 'coach/undone',
    forms: (place) =>
      gaps(place).flatMap((at) =>
        FACE_TURNS.flatMap((turn) => {
          const half = turnQuarters(turn) === 2
          return [
            inserted(place, at, [turn, inverseTurn(turn)]),
            ...(half ? [] : [inserted(place, at, repeated([turn], 4))]),
          ]
        }),
      ),
  },
  {
    key: 'coach/two-for-one',
    forms: (place) =>
      layerTurns(place).flatMap(({ at, turn }) => splitInTwo(turn).map((two) => replaced(place, at, 1, two))),
  },
  {
    key: 'coach/unfinished',
    forms: (place) => [
      ...triggers(place).flatMap(({ at }) => [1, 2].map((n) => replaced(place, at + N_TRIGGER - n, n, []))),
      ...(place.once.length > N_TRIGGER && !endsWithTrigger(place)
        ? [replaced(place, turnsOfStep(place.step).length - 1, 1, [])]
        : []),
    ],
  },
  {
    key: 'coach/wrong-trigger',
    forms: (place) => {
      const all = turnsOfStep(place.step)
      const found = runs(place)
      const isOnlyTrigger = place.once.length === N_TRIGGER
      const spans = isOnlyTrigger ? found : [...found, ...triggers(place).map(({ at }) => ({ at, n: 1 }))]
      return spans.map(({ at, n }) =>
        replaced(place, at, n * N_TRIGGER, mirrorTurns(all.slice(at, at + n * N_TRIGGER))),
      )
    },
  },
  {
    key: 'coach/wrong-hold',
    forms: (place) => {
      if (place.step.hold.mark.key === 'hold/any' || place.once.length === 0) return []
      const [hold] = place.step.hold.turns
      return [undefined, ...RE_HOLDS.map(turnOf)]
        .filter((other) => other !== hold)
        .map((other) => whole([...(other === undefined ? [] : [other]), ...place.step.do.turns]))
    },
  },
  {
    key: 'coach/wrong-top-turn',
    stages: [1, 2, 3],
    forms: (place) => {
      const { topTurn } = place.step.do
      const sequence = repeated(place.once, place.step.do.nTimes)
      return [undefined, ...(['U', "U'", 'U2'] as const).map(turnOf)]
        .filter((other) => other !== (topTurn ?? undefined))
        .map((other) => whole([...place.step.hold.turns, ...(other === undefined ? [] : [other]), ...sequence]))
    },
  },
  {
    key: 'coach/wrong-sequence',
    forms: (place) =>
      place.once.length === 0
        ? []
        : STAGES.flatMap((stage) => LESSON_BOOK.stages[stage])
            .filter((other) => !same(other.turns, place.once) && !isMirrorTrigger(other.turns, place.once))
            // The same as just before would be once too often.
            .filter((other) => !same(other.turns.slice(0, N_TRIGGER), place.before.slice(-N_TRIGGER)))
            // What is made of triggers alone is two steps of stages 1 and 2.
            .filter((other) => place.step.stage > 2 || !isMadeOfTriggers(other.turns))
            .map((other) => whole([...place.step.hold.turns, ...other.turns])),
  },
  {
    key: 'coach/too-often',
    forms: (place) => {
      const all = turnsOfStep(place.step)
      if (place.once.length === N_TRIGGER && place.step.stage === 2) return [added(all, place.once)]
      const isLastOfStage = place.rest[0]?.stage !== place.step.stage && place.rest.length > 0
      const again =
        isLastOfStage && place.once.length > 0 && place.step.stage > 3
          ? [{ ...added(all, place.once), stage: place.rest[0].stage }]
          : []
      const inside = runs(place)
        .filter(({ n }) => n > 1)
        .map(({ at, n }) => inserted(place, at + n * N_TRIGGER, all.slice(at, at + N_TRIGGER)))
      return [...again, ...(place.step.stage > 3 ? inside : [])]
    },
  },
  {
    key: 'coach/too-seldom',
    stages: [2, 5, 6, 7],
    forms: (place) => {
      const all = turnsOfStep(place.step)
      if (place.step.stage !== 2) {
        return runs(place)
          .filter(({ n }) => n > 1)
          .map(({ at, n }) => ({ ...replaced(place, at, N_TRIGGER, []), to: at + n * N_TRIGGER }))
      }
      if (place.step.do.nTimes < 2) return []
      const stopped = all.slice(0, -N_TRIGGER)
      return otherPieceSteps(afterTurns(place.position, stopped), 2, place.step.lookFor).map((other) => ({
        turns: [...stopped, ...other],
        from: 0,
        to: stopped.length,
      }))
    },
  },
  {
    key: 'coach/layer-broken',
    stages: [2, 3, 4, 5, 6, 7],
    forms: (place) => breakingTurns(place).map((turn) => whole([turn])),
  },
  {
    key: 'coach/layer-left-broken',
    stages: [2, 3, 4, 5, 6, 7],
    isLast: true,
    forms: (place) =>
      breakingTurns(place).flatMap((turn) =>
        [0, 1, 2].map((n) => ({
          turns: [turn, ...[place.step, ...place.rest].slice(0, n).flatMap(turnsOfStep)],
          from: 0,
          to: 1,
        })),
      ),
  },
  {
    key: 'coach/wrong-way',
    forms: (place) =>
      inSequence(place)
        .filter(({ turn }) => turnQuarters(turn) !== 2)
        .map(({ at, turn }) => replaced(place, at, 1, [inverseTurn(turn)])),
  },
  {
    key: 'coach/wrong-amount',
    forms: (place) =>
      inSequence(place).flatMap(({ at, turn }) =>
        turnQuarters(turn) === 2
          ? [replaced(place, at, 1, [amount(turn, '')]), replaced(place, at, 1, [amount(turn, "'")])]
          : [replaced(place, at, 1, [amount(turn, '2')]), replaced(place, at, 1, [turn, turn])],
      ),
  },
  {
    key: 'coach/turn-left-out',
    forms: (place) => {
      const ends = triggers(place).map(({ at }) => at + N_TRIGGER - 1)
      const last = turnsOfStep(place.step).length - 1
      return inSequence(place)
        .filter(({ at }) => !ends.includes(at) && at !== last)
        .map(({ at }) => replaced(place, at, 1, []))
    },
  },
  {
    key: 'coach/wrong-layer',
    forms: (place) =>
      inSequence(place).flatMap(({ at, turn }) => {
        const other = turnNamed(`${oppositeFace(turnAxis(turn))}${suffix(turn)}`)
        return other === undefined ? [] : [other, inverseTurn(other)].map((wrong) => replaced(place, at, 1, [wrong]))
      }),
  },
  {
    key: 'coach/re-hold-left-out',
    stages: [3, 5],
    forms: (place) =>
      turnsOfStep(place.step).flatMap((turn, at) =>
        at <= inFront(place).length || turnKind(turn) !== 're-hold'
          ? []
          : [[], ...RE_HOLDS.map((name) => [turnOf(name)])]
              .filter(([other]) => other !== turn)
              .map((other) => replaced(place, at, 1, other)),
      ),
  },
  {
    key: 'coach/needless-top-turn',
    stages: [4, 5, 6],
    forms: (place) =>
      place.once.length === 0
        ? []
        : (['U', "U'", 'U2'] as const).flatMap((name) => {
            const turn = turnOf(name)
            const [next] = lessonSteps(afterTurns(place.position, [turn]), place.span)
            return next === undefined ? [] : [whole([turn])]
          }),
  },
  {
    key: 'coach/needless-re-hold',
    forms: (place) =>
      gaps(place).flatMap((at) =>
        ["y y'", "y' y", 'y2 y2', "x x'", 'y y2 y', "z' z"].map((pair) => inserted(place, at, turns(pair))),
      ),
  },
  {
    key: 'coach/led-nowhere',
    forms: () => [
      ...['R U', 'F R', "U R U'", 'R2 F', "L' U' B", 'D R', "R U R' U'"].map((word) => {
        const there = turns(word)
        return whole([...there, ...inverseTurns(there)])
      }),
      ...["R U R' U'", "R' F R F'", 'R2 U2'].map((word) => whole(repeated(turns(word), 6))),
    ],
  },
  { key: 'coach/two-slips', isRare: true, forms: twoSlips },
  { key: 'coach/long-way', stages: [2], forms: longWays },
]
