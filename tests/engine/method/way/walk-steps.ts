/** Goes along the steps of a lesson way on a real cube, and looks at its stickers. */

import { applyTurns } from '../../../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../../../engine/cube/cube-position.ts'
import { FACES } from '../../../../engine/cube/faces.ts'
import { CORNER_PLACES, EDGE_PLACES } from '../../../../engine/cube/piece-places.ts'
import { stickersOf } from '../../../../engine/cube/stickers.ts'
import type { SequenceBook } from '../../../../engine/method/sequence-book.ts'
import type { Stage } from '../../../../engine/method/stages.ts'
import { type LessonStep, turnsOfStep } from '../../../../engine/method/way/lesson-step.ts'
import { lessonSteps } from '../../../../engine/method/way/lesson-steps.ts'

/** The holds with the base down, from any of them. */
export const SIDE_HOLDS = ['', 'y', "y'", 'y2'] as const

/** Calls back with each step and the positions before and after it. */
export function walk(
  start: CubePosition,
  steps: readonly LessonStep[],
  visit: (step: LessonStep, before: CubePosition, after: CubePosition) => void,
): void {
  const position = copyCube(start)
  for (const step of steps) {
    const before = copyCube(position)
    applyTurns(position, turnsOfStep(step))
    visit(step, before, position)
  }
}

/** How many sequences the lesson does until the goal of a stage. */
export function nSequencesLeft(position: CubePosition, stage: Stage, book?: SequenceBook): number {
  return lessonSteps(position, { from: stage, to: stage }, book).reduce((count, step) => count + step.do.nTimes, 0)
}

const PLACE_NAMES = [...CORNER_PLACES, ...EDGE_PLACES].map(({ name }) => name)

/** The name of the place where the piece with just these colours is; colours by home face. */
export function placeOfColours(position: CubePosition, colours: readonly string[]): string {
  const wanted = [...colours].sort().join('')
  const found = PLACE_NAMES.find((name) => coloursAt(position, name).sort().join('') === wanted)
  if (found === undefined) throw new Error(`no piece has the colours ${wanted}`)
  return found
}

/** The colours of the piece at a place, in the order of the place's faces. */
export function coloursAt(position: CubePosition, place: string): string[] {
  return [...place].map((face) => colourAt(position, place, face))
}

/** @returns the home face whose colour is seen at a place, on one of its faces */
export function colourAt(position: CubePosition, place: string, face: string): string {
  const found = [...CORNER_PLACES, ...EDGE_PLACES].find(({ name }) => sorted(name) === sorted(place))
  if (found === undefined) throw new Error(`${place} is no place`)
  return FACES[stickersOf(position)[found.stickers[[...found.name].indexOf(face)]]]
}

function sorted(name: string): string {
  return [...name].sort().join('')
}
