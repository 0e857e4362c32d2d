/**
 * What the lesson's sequences do. A and B are the right and the left trigger, U R U' R' and U' L' U L.
 * Source: common practice of the trade; computed independently of the project.
 */

import { expect, test } from 'vitest'
import { afterTurns } from '../../engine/cube/apply-turn.ts'
import { CENTRES_AT, type CubePosition, EDGES_AT, solvedCube } from '../../engine/cube/cube-position.ts'
import { asHeldHome } from '../../engine/cube/hold.ts'
import { cornerPiece, cornerTwist, edgeFlip, edgePiece } from '../../engine/cube/piece-code.ts'
import { CORNER_PLACES, EDGE_PLACES } from '../../engine/cube/piece-places.ts'
import { type Turn, turnKind } from '../../engine/cube/turns.ts'
import { formatWritten } from '../../engine/method/book/format-book.ts'
import { LESSON_BOOK } from '../../engine/method/book/lesson-book.ts'
import { LAST_LAYER_STAGES, type LastLayerStage } from '../../engine/method/cases.ts'
import { goalMet } from '../../engine/method/goals.ts'
import { arrangementsOf } from '../../engine/method/last-layer-arrangements.ts'
import { lessonWay } from '../../engine/method/lesson-way.ts'
import { LEFT_TRIGGER, RIGHT_TRIGGER } from '../../engine/method/sequence-book.ts'
import { lessonSteps } from '../../engine/method/way/lesson-steps.ts'
import { repeated, turns } from '../engine/cube/arbitraries.ts'

/** What a sequence does to a solved cube, in the home hold: `UFL to ULB` (`, turned` when it does not land upright). */
function effectOf(sequence: readonly Turn[]): string[] {
  const after = asHeldHome(afterTurns(solvedCube(), sequence))
  const effects: string[] = []
  for (let place = 0; place < CENTRES_AT; place++) {
    if (after[place] === solvedCube()[place]) continue
    const isCorner = place < EDGES_AT
    const from = isCorner ? CORNER_PLACES[cornerPiece(after[place])] : EDGE_PLACES[edgePiece(after[place])]
    const to = isCorner ? CORNER_PLACES[place] : EDGE_PLACES[place - EDGES_AT]
    const isTurned = (isCorner ? cornerTwist(after[place]) : edgeFlip(after[place])) !== 0
    effects.push(`${from.name} to ${to.name}${isTurned ? ', turned' : ''}`)
  }
  return effects.sort()
}

const solvesAfter = (sequence: readonly Turn[], times: number) => effectOf(repeated(sequence, times)).length === 0

test.each([
  ['A', RIGHT_TRIGGER, 6],
  ['B', LEFT_TRIGGER, 6],
  ["F A F'", LESSON_BOOK.stages[4][0].turns, 6],
  ["L' A^2 L A^3 L' A L", LESSON_BOOK.stages[6][0].turns, 3],
  ['A^5 B^5 A B', LESSON_BOOK.stages[7][0].turns, 3],
])('[LW1] %s has order %3$i', (_, sequence, order) => {
  for (let times = 1; times < order; times++) expect(solvesAfter(sequence, times)).toBe(false)
  expect(solvesAfter(sequence, order)).toBe(true)
})

test('[LW1] five of a trigger undo one', () => {
  expect(effectOf(repeated(RIGHT_TRIGGER, 5))).toEqual(effectOf(turns("R U R' U'")))
})

test.each([
  [
    'A^3 exchanges two pairs of corners, one of them turning, and moves no edge',
    repeated(RIGHT_TRIGGER, 3),
    ['DFR to URF', 'UBR to ULB, turned', 'ULB to UBR, turned', 'URF to DFR'],
  ],
  [
    'A^3 y B^3 sends three top corners round and turns each, and moves no edge',
    LESSON_BOOK.stages[5][0].turns,
    ['UBR to UFL, turned', 'UFL to ULB, turned', 'ULB to UBR, turned'],
  ],
  [
    "L' A^2 L A^3 L' A L sends three top corners round without turning them, and moves no edge",
    LESSON_BOOK.stages[6][0].turns,
    ['UBR to ULB', 'UFL to UBR', 'ULB to UFL'],
  ],
  [
    'A^5 B^5 A B sends three top edges round and moves nothing else',
    LESSON_BOOK.stages[7][0].turns,
    ['UB to UL', 'UL to UR', 'UR to UB'],
  ],
])('[LW1] %s', (_, sequence, effect) => {
  expect(effectOf(sequence)).toEqual(effect)
})

test.each([
  ['A', RIGHT_TRIGGER, ['DR'], 'DFR'],
  ['B', LEFT_TRIGGER, ['DL'], 'DLF'],
])('[LW1] %s keeps the base but for the corner at the front on its side', (_, trigger, edges, corner) => {
  const moved = effectOf(trigger).map((effect) => effect.split(' ')[0])
  expect(moved.filter((name) => name.startsWith('D'))).toEqual([corner])
  expect(moved).not.toContain(edges[0])
})

test.each([
  ['A y B', 'to the right', 'UF to FR'],
  ["B y' A", 'to the left', 'UF to FL'],
])('[LW1] %s brings the edge above the front centre %s and keeps the rest of both layers', (written, _, way) => {
  const index = LESSON_BOOK.stages[3].findIndex((sequence) => formatWritten(sequence.written) === written)
  const effect = effectOf(LESSON_BOOK.stages[3][index].turns)
  expect(effect.filter((each) => !/ to U/u.test(each)).map((each) => each.replace(', turned', ''))).toEqual([way])
})

test.each([
  [4, 6],
  [5, 24],
  [6, 28],
  [7, 48],
] as const)('[LW1] the sequence of stage %i is %i face turns long and keeps two layers', (stage, nTurns) => {
  const [{ turns: sequence }] = LESSON_BOOK.stages[stage]
  expect(nFaceTurns(sequence)).toBe(nTurns)
  expect(goalMet(afterTurns(solvedCube(), sequence), 3)).toBe(true)
})

test('[LW1] the sequence of stage 7 does in 48 turns what 15 do', () => {
  expect(effectOf(LESSON_BOOK.stages[7][0].turns)).toEqual(effectOf(turns("R U R' U' L' U' L U2 R U' R' U' L' U L")))
})

/** The stage-4 position whose top colour is up on just these edges. */
function withEdgesUp(...names: string[]): CubePosition {
  const isWanted = (position: CubePosition) => edgesUp(position).join() === [...names].sort().join()
  const position = arrangementsOf(4).find(isWanted)
  if (position === undefined) throw new Error(`${names} are no pattern`)
  return position
}

function edgesUp(position: CubePosition): string[] {
  const isUp = (place: number) => EDGE_PLACES[place].name.startsWith('U') && edgeFlip(position[EDGES_AT + place]) === 0
  return EDGE_PLACES.flatMap(({ name }, place) => (isUp(place) ? [name] : [])).sort()
}

test.each([
  ['the corner shape with arms at back and left', ['UB', 'UL'], ['UB', 'UF', 'UL', 'UR']],
  ['a line from left to right', ['UL', 'UR'], ['UB', 'UL']],
  ['the dot', [], ['UB', 'UF']],
  ['the corner shape with arms at front and left', ['UF', 'UL'], ['UF', 'UL']],
  ['the corner shape with arms at back and right', ['UB', 'UR'], ['UB', 'UR']],
  ['the corner shape with arms at front and right', ['UF', 'UR'], []],
])('[LW1] F A F turns %s (%j) into the edges %j', (_, before, after) => {
  expect(edgesUp(afterTurns(withEdgesUp(...before), LESSON_BOOK.stages[4][0].turns))).toEqual(after)
})

test.each([
  [4, [1, 4, 2, 1], 11 / 8],
  [5, [1, 4, 10, 12], 60 / 27],
  [6, [4, 16, 4], 1],
  [7, [1, 4, 7], 1.5],
] as const)(
  '[LW3] at stage %i the arrangements that need 0, 1, 2, ... sequences number %j; the mean is %d',
  (stage, histogram, mean) => {
    const counts = arrangementsOf(stage).map((position) => nSequences(position, stage))
    expect(histogram.map((_, times) => counts.filter((count) => count === times).length)).toEqual(histogram)
    expect(counts.reduce((sum, count) => sum + count, 0) / counts.length).toBeCloseTo(mean, 12)
  },
)

test('[LW3] the lesson way does as many sequences as that, and at most one turn besides, to align at stage 6', () => {
  for (const stage of LAST_LAYER_STAGES) {
    for (const position of arrangementsOf(stage)) {
      const nInSequences = nSequences(position, stage) * nFaceTurns(LESSON_BOOK.stages[stage][0].turns)
      const nBesides = nFaceTurns(lessonWay(position, { from: stage, to: stage })) - nInSequences
      expect(stage === 6 ? [0, 1] : [0]).toContain(nBesides)
    }
  }
})

function nSequences(position: CubePosition, stage: LastLayerStage): number {
  return lessonSteps(position, { from: stage, to: stage }).reduce((count, step) => count + step.do.nTimes, 0)
}

function nFaceTurns(sequence: readonly Turn[]): number {
  return sequence.filter((turn) => turnKind(turn) === 'face').length
}
