import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { conjugatePosition, N_UPRIGHT_SYMMETRIES } from '../../../../engine/cube/symmetry.ts'
import { FACE_TURNS } from '../../../../engine/cube/turns.ts'
import { goalMet } from '../../../../engine/method/goals.ts'
import { STAGES } from '../../../../engine/method/stages.ts'
import { cubeAfter, SEED, someTurns, turns } from '../../cube/arbitraries.ts'
import { anArrangementOf } from '../../method/starts.ts'
import { PARS } from './opened.ts'
import { fewestTurns } from './plain-search.ts'

const aStart = fc.constantFrom(...STAGES).chain((stage) => anArrangementOf(stage).map((start) => ({ stage, start })))
const reHolds = fc.array(fc.constantFrom(...turns('x y z')), { maxLength: 4 })

describe('par', () => {
  test('[SE7] par is 0 exactly at the goal', () => {
    fc.assert(
      fc.property(aStart, ({ stage, start }) => {
        expect(PARS.parOf(start, stage) === 0).toBe(goalMet(start, stage))
      }),
      { seed: SEED },
    )
    expect(STAGES.map((stage) => PARS.parOf(cubeAfter(''), stage))).toEqual([0, 0, 0, 0, 0, 0, 0])
  })

  test('[SE3] par is the same in every hold, and for what a symmetry that keeps the base below makes of a start', () => {
    fc.assert(
      fc.property(aStart, reHolds, fc.nat(N_UPRIGHT_SYMMETRIES - 1), ({ stage, start }, hold, symmetry) => {
        const par = PARS.parOf(start, stage)
        expect(PARS.parOf(afterTurns(start, hold), stage)).toBe(par)
        expect(PARS.parOf(conjugatePosition(start, symmetry), stage)).toBe(par)
      }),
      { seed: SEED, numRuns: 500 },
    )
  })

  test('[SE8] one face turn changes the par of stage 1 by 1 at most; from par above 0 some turn lowers it', () => {
    fc.assert(
      fc.property(someTurns, (scramble) => {
        const position = afterTurns(cubeAfter(''), scramble)
        const par = PARS.parOf(position, 1)
        const changes = FACE_TURNS.map((turn) => PARS.parOf(afterTurns(position, [turn]), 1) - par)
        expect(changes.every((change) => Math.abs(change) <= 1)).toBe(true)
        if (par > 0) expect(changes).toContain(-1)
      }),
      { seed: SEED },
    )
  })

  test('[SE7] asking for a start that misses an earlier goal is our own bug', () => {
    expect(() => PARS.parOf(cubeAfter('R'), 2)).toThrow('goals before')
    expect(() => PARS.parOf(cubeAfter("R U R'"), 4)).toThrow('goals before')
    expect(PARS.parOf(cubeAfter("R U R'"), 2)).toBe(3)
  })
})

describe('par beside a plain search', () => {
  // Higher pars would make the plain search slow; the rows of tests/published/pars.test.ts cover them as counts.
  test.each([
    [1, 8, 20],
    [2, 9, 12],
    [3, 9, 8],
    [4, 6, 3],
    [5, 9, 6],
    [6, 9, 4],
    [7, 9, 4],
  ] as const)('[SE7] stage %i: nothing is shorter than par, up to par %i, in %i starts', (stage, parMax, nStarts) => {
    const starts = fc
      .sample(anArrangementOf(stage), { seed: SEED, numRuns: 2_000 })
      .map((start) => ({ start, par: PARS.parOf(start, stage) }))
      .filter(({ par }) => 0 < par && par <= parMax)
      .slice(0, nStarts)
    expect(starts).toHaveLength(nStarts)
    for (const { start, par } of starts) {
      expect(fewestTurns(start, stage, par - 1)).toBeUndefined()
      if (par < 9) expect(fewestTurns(start, stage, par)).toBe(par)
    }
  })

  test('[SE7] nothing is shorter than a par of 10', () => {
    const start = fc
      .sample(anArrangementOf(2), { seed: SEED, numRuns: 50 })
      .find((candidate) => PARS.parOf(candidate, 2) === 10)
    if (start === undefined) throw new Error('No start of par 10 among 50')
    expect(fewestTurns(start, 2, 9)).toBeUndefined()
  })
})
