import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { composePositions } from '../../../engine/cube/compose-positions.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { FACES } from '../../../engine/cube/faces.ts'
import { asHeldHome, centreAt, HELD_CUBES } from '../../../engine/cube/hold.ts'
import { formatStickers } from '../../../engine/cube/stickers.ts'
import { ALL_TURNS, turnKind } from '../../../engine/cube/turns.ts'
import {
  goalMet,
  goalMetForBase,
  goalsBeforeMet,
  nPartsDone,
  stageProgress,
  stickersThatMatter,
} from '../../../engine/method/goals.ts'
import { STAGES, type Stage, type StageSpan } from '../../../engine/method/stages.ts'
import { aPosition, cubeAfter, SEED } from '../cube/arbitraries.ts'
import { looksLikeGoal } from './seen-goals.ts'
import { aNearbyPosition } from './starts.ts'

const aReHold = fc.constantFrom(...ALL_TURNS.filter((turn) => turnKind(turn) === 're-hold'))
const aStage = fc.constantFrom(...STAGES)

test('[GO1] the solved cube meets every goal, a scrambled one none', () => {
  expect(STAGES.map((stage) => goalMet(solvedCube(), stage))).toEqual(STAGES.map(() => true))
  const scrambled = cubeAfter("R U2 F' D L2 B R' D2 F U'")
  expect(STAGES.map((stage) => goalMet(scrambled, stage))).toEqual(STAGES.map(() => false))
})

test('[GO1] a goal includes the goals of all stages before it', () => {
  fc.assert(
    fc.property(aNearbyPosition, (position) => {
      const isMet = STAGES.map((stage) => goalMet(position, stage))
      expect(isMet).toEqual([...isMet].sort((a, b) => Number(b) - Number(a)))
      expect(STAGES.map((stage) => goalsBeforeMet(position, stage))).toEqual([true, ...isMet.slice(0, -1)])
    }),
    { seed: SEED, numRuns: 500 },
  )
})

test('[GO2] a re-hold changes neither goals nor parts', () => {
  fc.assert(
    fc.property(aNearbyPosition, fc.array(aReHold, { maxLength: 3 }), aStage, (position, reHolds, stage) => {
      const held = afterTurns(position, reHolds)
      expect(goalMet(held, stage)).toBe(goalMet(position, stage))
      expect(nPartsDone(held, stage)).toBe(nPartsDone(position, stage))
    }),
    { seed: SEED, numRuns: 500 },
  )
})

test('[GO3] with D as base the goal for any base is the goal', () => {
  fc.assert(
    fc.property(aNearbyPosition, aStage, (position, stage) => {
      expect(goalMetForBase(position, stage, 'D')).toBe(goalMet(position, stage))
    }),
    { seed: SEED },
  )
})

test('[GO3] a base is as good as any other: the same turns done from another hold give the same answer', () => {
  fc.assert(
    fc.property(aNearbyPosition, aStage, fc.nat(23), (position, stage, hold) => {
      const base = centreAt(HELD_CUBES[hold], 'D')
      expect(goalMetForBase(composePositions(HELD_CUBES[hold], position), stage, base)).toBe(goalMet(position, stage))
    }),
    { seed: SEED, numRuns: 500 },
  )
})

test('[GO3] after R the left layer is done, two layers of it, and no other', () => {
  const done = FACES.map((base) => STAGES.filter((stage) => goalMetForBase(cubeAfter('R'), stage, base)))
  expect(done).toEqual([[], [], [], [], [1, 2, 3, 4, 5], []])
})

test('[GO4] the goal is met exactly when it is seen on the stickers', () => {
  fc.assert(
    fc.property(aNearbyPosition, (position) => {
      const picture = formatStickers(asHeldHome(position))
      for (const stage of STAGES) expect(goalMet(position, stage)).toBe(looksLikeGoal(picture, stage))
    }),
    { seed: SEED, numRuns: 1_000 },
  )
})

test.each([
  // After one turn of the top layer: its edges and corners still look up, but none of them is home.
  ['U', [4, 4, 4, 4, 4, 0, 0]],
  // R takes one base edge, two base corners, two middle edges, one top edge, two top corners.
  ['R', [3, 2, 2, 3, 2, 2, 3]],
  // F R U R' U' F' sends three top edges round and flips two of them, and two pairs of corners.
  ["F R U R' U' F'", [4, 4, 4, 2, 2, 0, 1]],
] as const)('[GO5] after %j the parts done of each stage are %j', (written, nParts) => {
  expect(STAGES.map((stage) => nPartsDone(cubeAfter(written), stage))).toEqual(nParts)
})

test('[GO5] a goal is met exactly when the four parts of each stage up to it are done', () => {
  fc.assert(
    fc.property(aNearbyPosition, aStage, (position, stage) => {
      const areDone = STAGES.filter((each) => each <= stage).every((each) => nPartsDone(position, each) === 4)
      expect(goalMet(position, stage)).toBe(areDone)
    }),
    { seed: SEED, numRuns: 500 },
  )
})

test.each([
  ['', { from: 1, to: 7 }, 28],
  ['', { from: 3, to: 3 }, 4],
  ['', { from: 4, to: 6 }, 12],
  ['U', { from: 1, to: 7 }, 20],
  ['R', { from: 1, to: 7 }, 3],
  ['R', { from: 2, to: 2 }, 0],
  ['U', { from: 7, to: 7 }, 0],
  ['U', { from: 6, to: 7 }, 0],
  ["R U R' U'", { from: 1, to: 2 }, 7],
] satisfies Array<[string, StageSpan, number]>)(
  '[GO6] after %j the progress of %j is %i',
  (written, span, progress) => {
    expect(stageProgress(cubeAfter(written), span)).toBe(progress)
  },
)

test('[GO6] progress is 4 for each stage of the span exactly at its goal, less before, and the same in every hold', () => {
  const aSpan = fc.tuple(aStage, aStage).map((ends): StageSpan => {
    const [from, to] = ends.sort((a, b) => a - b)
    return { from, to }
  })
  fc.assert(
    fc.property(fc.oneof(aNearbyPosition, aPosition), aSpan, aReHold, (position, span, reHold) => {
      const full = 4 * (span.to - span.from + 1)
      const progress = stageProgress(position, span)
      expect(progress).toBeGreaterThanOrEqual(0)
      expect(progress === full).toBe(goalMet(position, span.to))
      expect(progress).toBeLessThanOrEqual(full)
      expect(stageProgress(afterTurns(position, [reHold]), span)).toBe(progress)
    }),
    { seed: SEED, numRuns: 500 },
  )
})

// Nine flags a face in reading order: what the goal's sentence names, and the centre of each face of which it names any.
const NO_FACE = '000000000'
const ALL_FACE = '111111111'
const PLUS_FACE = '010111010'
test.each([
  [1, NO_FACE, '000010010', PLUS_FACE],
  [2, NO_FACE, '000010111', ALL_FACE],
  [3, NO_FACE, '000111111', ALL_FACE],
  [4, PLUS_FACE, '000111111', ALL_FACE],
  [5, ALL_FACE, '000111111', ALL_FACE],
  [6, ALL_FACE, '101111111', ALL_FACE],
  [7, ALL_FACE, ALL_FACE, ALL_FACE],
] satisfies Array<[Stage, string, string, string]>)(
  '[GO7] the goal picture of stage %i colours %s on top, %s on a side, %s below',
  (stage, top, side, base) => {
    expect([...stickersThatMatter(stage)].join('')).toBe(top + side + side + base + side + side)
  },
)

test('[GO7] a sticker that matters has the colour of its face in every position at the goal', () => {
  fc.assert(
    fc.property(aNearbyPosition, aStage, (position, stage) => {
      if (!goalMet(position, stage)) return
      const picture = formatStickers(asHeldHome(position))
      const solved = formatStickers(solvedCube())
      stickersThatMatter(stage).forEach((matters, index) => {
        if (matters === 1) expect(picture[index]).toBe(solved[index])
      })
    }),
    { seed: SEED, numRuns: 500 },
  )
})
