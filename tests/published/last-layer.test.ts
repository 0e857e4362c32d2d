/**
 * The last layer has 62,208 positions, the lesson's sequences reach all of them, and up to top turns before and after they
 * fall into as many classes as published.
 * Source: computed with GAP 4.12.1 by double cosets, independently of the project; 62,208 also as 4! * 4! / 2 * 3^3 * 2^3.
 */

import { expect, test } from 'vitest'
import { afterTurns } from '../../engine/cube/apply-turn.ts'
import { composePositions } from '../../engine/cube/compose-positions.ts'
import { type CubePosition, solvedCube } from '../../engine/cube/cube-position.ts'
import { asHeldHome } from '../../engine/cube/hold.ts'
import { cornerTwist, edgeFlip } from '../../engine/cube/piece-code.ts'
import { LESSON_BOOK } from '../../engine/method/book/lesson-book.ts'
import { LAST_LAYER_STAGES } from '../../engine/method/cases.ts'
import { goalMet } from '../../engine/method/goals.ts'
import { TOP_CORNER_RING, TOP_EDGE_RING } from '../../engine/method/top-ring.ts'
import { turns } from '../engine/cube/arbitraries.ts'

const N_LAST_LAYER_POSITIONS = 62_208

const lastLayer = lastLayerPositions()
const TOP_TURNS = [[], turns('U'), turns("U'"), turns('U2')].map((turned) => afterTurns(solvedCube(), turned))

test('[ST7] the lesson sequences and the top turn lead to all 62,208 positions of the last layer and no further', () => {
  expect(24 * 12 * 3 ** 3 * 2 ** 3).toBe(N_LAST_LAYER_POSITIONS)
  expect(lastLayer.length).toBe(N_LAST_LAYER_POSITIONS)
  expect(lastLayer.every((position) => goalMet(position, 3))).toBe(true)
})

test.each([
  ['all', () => true, 3_916],
  ['whose top cross is done', (position: CubePosition) => goalMet(position, 4), 494],
  ['whose top face is done', (position: CubePosition) => goalMet(position, 5), 22],
])(
  '[ST7] the positions of the last layer, %s, fall into %3$i classes, the solved one included',
  (_, isMeant, nClasses) => {
    const classes = new Set(lastLayer.filter(isMeant).map(classOf))
    expect(classes.size).toBe(nClasses)
  },
)

test('[ST7] how the top pieces are turned falls into 58 classes; two have a chance of 1/216, five of 1/108, the others of 1/54', () => {
  const nOfClass = new Map<string, number>()
  for (const position of lastLayer) {
    const seen = least(TOP_TURNS.map((after) => turnedIn(composePositions(position, after))))
    nOfClass.set(seen, (nOfClass.get(seen) ?? 0) + 1)
  }
  const chances = [...nOfClass.values()].map((n) => N_LAST_LAYER_POSITIONS / n)
  expect(chances.length).toBe(58)
  expect([216, 108, 54].map((chance) => chances.filter((found) => found === chance).length)).toEqual([2, 5, 51])
})

/** What all positions share that differ by top turns before and after only. */
function classOf(position: CubePosition): string {
  return least(
    TOP_TURNS.flatMap((before) =>
      TOP_TURNS.map((after) => composePositions(composePositions(before, position), after).join()),
    ),
  )
}

function turnedIn(position: CubePosition): string {
  return [
    ...TOP_CORNER_RING.map((place) => cornerTwist(position[place])),
    ...TOP_EDGE_RING.map((place) => edgeFlip(position[place])),
  ].join()
}

function least(texts: readonly string[]): string {
  return [...texts].sort()[0]
}

/** Breadth-first over what the lesson's sequences and the top turn do. */
function lastLayerPositions(): CubePosition[] {
  const steps = [turns('U'), ...LAST_LAYER_STAGES.map((stage) => LESSON_BOOK.stages[stage][0].turns)].map((sequence) =>
    asHeldHome(afterTurns(solvedCube(), sequence)),
  )
  const met = new Map([[solvedCube().join(), solvedCube()]])
  // A map is walked through in the order of arrival, what arrives on the way included.
  for (const position of met.values()) {
    for (const step of steps) {
      const next: CubePosition = composePositions(position, step)
      met.set(next.join(), met.get(next.join()) ?? next)
    }
    // A sequence that leaves the last layer would lead on and on.
    if (met.size > N_LAST_LAYER_POSITIONS) break
  }
  return [...met.values()]
}
