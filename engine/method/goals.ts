/**
 * Is a goal reached, and how much of it? Every question is answered in any hold, from where the centres are. A goal
 * includes the goals of all stages before it.
 */

import { composePositions } from '../cube/compose-positions.ts'
import { type CubePosition, EDGES_AT, solvedCube } from '../cube/cube-position.ts'
import type { Face } from '../cube/faces.ts'
import { centreAt, HELD_CUBES, holdOf } from '../cube/hold.ts'
import { cornerPiece, cornerTwist, edgeFlip, edgePiece, N_PIECE_CODES } from '../cube/piece-code.ts'
import { CENTRE_STICKERS, CORNER_PLACES, EDGE_PLACES } from '../cube/piece-places.ts'
import { N_STICKERS, STICKERS_PER_FACE } from '../cube/sticker-places.ts'
import { assert } from '../result.ts'
import { ANY_CODE, GOAL_MASKS, maskRow, N_GOAL_PLACES, PART_MASKS } from './goal-masks.ts'
import { nStagesIn, PARTS_PER_STAGE, STAGES, type Stage, type StageSpan } from './stages.ts'

/** Does the position meet the goals of stages 1 to `stage`? */
export function goalMet(position: CubePosition, stage: Stage): boolean {
  return meetsRow(position, maskRow(stage, holdOf(position)))
}

/** Does the position meet all goals before `stage`? Every position does for stage 1. */
export function goalsBeforeMet(position: CubePosition, stage: Stage): boolean {
  return meetsRow(position, maskRow((stage - 1) as Stage | 0, holdOf(position)))
}

/** @returns the first stage whose goal is not met, at most `to`; undefined when the goal of `to` is met, or `to` is 0 */
export function firstStageToDo(position: CubePosition, to: Stage | 0): Stage | undefined {
  return STAGES.find((stage) => stage <= to && !goalMet(position, stage))
}

/** @returns how many of the stage's own four pieces are as its goal wants them, 0..4; earlier goals are not looked at */
export function nPartsDone(position: CubePosition, stage: Stage): number {
  const row = maskRow(stage, holdOf(position))
  let nDone = 0
  for (let place = 0; place < N_GOAL_PLACES; place++) {
    const mask = PART_MASKS[row + place]
    if (mask !== ANY_CODE && (mask >>> position[place]) & 1) nDone++
  }
  return nDone
}

/**
 * How far a try has come on its way through a span, for the board and the wall.
 *
 * @returns 0 while a goal before the span is broken; else 4 for each stage of the span that is reached without a gap,
 *   plus the parts done of the next one; at most 4 times the number of stages
 */
export function stageProgress(position: CubePosition, span: StageSpan): number {
  if (!goalsBeforeMet(position, span.from)) return 0
  let stage: number = span.from
  while (stage <= span.to && goalMet(position, stage as Stage)) stage++
  const nReached = stage - span.from
  if (nReached === nStagesIn(span)) return PARTS_PER_STAGE * nReached
  return PARTS_PER_STAGE * nReached + nPartsDone(position, stage as Stage)
}

/**
 * The goal with any face as base layer. Equal to `goalMet` for base D.
 * The cube's colours are renamed so that the base takes the name D: turns from a held cube instead of a solved one.
 */
export function goalMetForBase(position: CubePosition, stage: Stage, base: Face): boolean {
  const renaming = HELD_CUBES.find((held) => centreAt(held, base) === 'D')
  assert(renaming !== undefined, 'every centre can be brought to every face')
  return goalMet(composePositions(renaming, position), stage)
}

/**
 * Which stickers a goal picture shows in colour; the others are grey and smaller.
 *
 * @returns 54 flags in reading order, for a solved cube held home. A sticker matters when the goal leaves it no choice
 *   of colour; a centre matters when another sticker of its face does.
 */
export function stickersThatMatter(stage: Stage): Uint8Array {
  const flags = new Uint8Array(N_STICKERS)
  const row = maskRow(stage, holdOf(solvedCube()))
  for (let place = 0; place < N_GOAL_PLACES; place++) {
    const { stickers } = place < EDGES_AT ? CORNER_PLACES[place] : EDGE_PLACES[place - EDGES_AT]
    stickers.forEach((sticker, side) => {
      const colours = new Set(codesIn(GOAL_MASKS[row + place]).map((code) => colourShown(place, code, side)))
      if (colours.size === 1) flags[sticker] = 1
    })
  }
  for (const centre of CENTRE_STICKERS) {
    const face = Math.trunc(centre / STICKERS_PER_FACE) * STICKERS_PER_FACE
    if (flags.subarray(face, face + STICKERS_PER_FACE).includes(1)) flags[centre] = 1
  }
  return flags
}

function meetsRow(position: CubePosition, row: number): boolean {
  for (let place = 0; place < N_GOAL_PLACES; place++) {
    if (((GOAL_MASKS[row + place] >>> position[place]) & 1) === 0) return false
  }
  return true
}

function codesIn(mask: number): number[] {
  return Array.from({ length: N_PIECE_CODES }, (_, code) => code).filter((code) => (mask >>> code) & 1)
}

/** @returns the home face whose colour a piece with this code shows on the given side of its place */
function colourShown(place: number, code: number, side: number): number {
  if (place < EDGES_AT) return CORNER_PLACES[cornerPiece(code)].faces[(side + 3 - cornerTwist(code)) % 3]
  return EDGE_PLACES[edgePiece(code)].faces[(side + edgeFlip(code)) % 2]
}
