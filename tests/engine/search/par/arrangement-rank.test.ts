import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../../engine/cube/cube-position.ts'
import { findLegalityFault } from '../../../../engine/cube/legality.ts'
import { conjugatePosition, N_UPRIGHT_SYMMETRIES } from '../../../../engine/cube/symmetry.ts'
import { goalMet, goalsBeforeMet } from '../../../../engine/method/goals.ts'
import { STAGES, type Stage } from '../../../../engine/method/stages.ts'
import { arrangementClasses } from '../../../../engine/search/par/arrangement-classes.ts'
import {
  imagesOfArrangement,
  nArrangements,
  rankArrangement,
  unrankArrangement,
} from '../../../../engine/search/par/arrangement-rank.ts'
import { SEED, someFaceTurns } from '../../cube/arbitraries.ts'
import { anArrangementOf } from '../../method/starts.ts'
import { heapGrowthOf } from './heap-growth-of.ts'

const anyStage = fc.constantFrom(...STAGES)
const aStart = anyStage.chain((stage) => anArrangementOf(stage).map((start) => ({ stage, start })))

describe('the numbers of arrangements', () => {
  // Origin: what the goals before a stage leave free, counted: 12*11*10*9*2^4, 8*7*6*5*3^4, 8*7*6*5*2^4, 2^3, 3^3, 4!, 4!/2.
  test.each([
    [1, 190_080],
    [2, 136_080],
    [3, 26_880],
    [4, 8],
    [5, 27],
    [6, 24],
    [7, 12],
  ] as const)('[SE1] stage %i has %i arrangements, each a legal start with its own number', (stage, nExpected) => {
    expect(nArrangements(stage)).toBe(nExpected)
    let nWrong = 0
    for (let rank = 0; rank < nExpected; rank++) {
      const start = unrankArrangement(rank, stage)
      const isRight =
        rankArrangement(start, stage) === rank && findLegalityFault(start) === undefined && goalsBeforeMet(start, stage)
      if (!isRight) nWrong++
    }
    expect(nWrong).toBe(0)
  })

  test('[SE1] every start has the number of an arrangement from which the same turns reach the goal', () => {
    fc.assert(
      fc.property(aStart, someFaceTurns, ({ stage, start }, turns) => {
        const same = unrankArrangement(rankArrangement(start, stage), stage)
        expect(goalMet(afterTurns(same, turns), stage)).toBe(goalMet(afterTurns(start, turns), stage))
        expect(goalMet(same, stage)).toBe(goalMet(start, stage))
      }),
      { seed: SEED },
    )
  })

  test('[SE1] of each stage exactly one number is that of the goal', () => {
    const atGoal = (stage: Stage) => {
      let nAtGoal = 0
      for (let rank = 0; rank < nArrangements(stage); rank++) {
        if (goalMet(unrankArrangement(rank, stage), stage)) nAtGoal++
      }
      return nAtGoal
    }
    expect(STAGES.map(atGoal)).toEqual([1, 1, 1, 1, 1, 1, 1])
    for (const stage of STAGES)
      expect(goalMet(unrankArrangement(rankArrangement(solvedCube(), stage), stage), stage)).toBe(true)
  })

  test('[SE2] ranking takes no memory', () => {
    const starts = STAGES.map((stage) => ({ stage, start: unrankArrangement(nArrangements(stage) - 1, stage) }))
    const rankAll = () => {
      for (const { stage, start } of starts) rankArrangement(start, stage)
    }
    expect(heapGrowthOf(rankAll)).toBeLessThan(1)
  })
})

describe('the classes of arrangements', () => {
  test('[SE3] the images of a number are the numbers of the images', () => {
    const images = new Uint32Array(N_UPRIGHT_SYMMETRIES)
    fc.assert(
      fc.property(aStart, ({ stage, start }) => {
        imagesOfArrangement(rankArrangement(start, stage), stage, images)
        expect([...images]).toEqual(
          Array.from(images, (_, symmetry) => rankArrangement(conjugatePosition(start, symmetry), stage)),
        )
      }),
      { seed: SEED },
    )
  })

  test('[SE3] the symmetry of an arrangement leads to the first one of its class', () => {
    const classesOf = STAGES.map(arrangementClasses)
    fc.assert(
      fc.property(aStart, ({ stage, start }) => {
        const { classOf, toFirst, firstOf } = classesOf[stage - 1]
        const rank = rankArrangement(start, stage)
        const first = rankArrangement(conjugatePosition(start, toFirst[rank]), stage)
        expect(first).toBe(firstOf[classOf[rank]])
        expect(first).toBeLessThanOrEqual(rank)
      }),
      { seed: SEED },
    )
  })
})
