/** Setups for a real cube. Rules SU: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../../engine/cube/cube-position.ts'
import { asHeldHome, holdOf, turnsToHold } from '../../../../engine/cube/hold.ts'
import { inverseTurns, type Turn } from '../../../../engine/cube/turns.ts'
import { drawArrangement } from '../../../../engine/method/draw-start.ts'
import { stepsBeforeGoal } from '../../../../engine/method/goal-reached.ts'
import { goalMet } from '../../../../engine/method/goals.ts'
import { lessonWay } from '../../../../engine/method/lesson-way.ts'
import { STAGES, type Stage } from '../../../../engine/method/stages.ts'
import { findSetup } from '../../../../engine/search/setup/find-setup.ts'
import { plainFaceTurns } from '../../../../engine/search/setup/plain-face-turns.ts'
import { aPosition, cubeAfter, SEED, turns } from '../../cube/arbitraries.ts'
import { sourceNumbered } from '../../method/starts.ts'
import { afterNodes, filledTables } from '../two-phase/two-phase-tables.ts'

const tables = filledTables()

/** Fewer than a slow machine looks at in 200 ms. */
const NODES = 300_000

/** Largest par of each stage. Origin: an exhaustive count in another language. */
const PAR_MAX: Readonly<Record<Stage, number>> = { 1: 8, 2: 12, 3: 13, 4: 11, 5: 11, 6: 13, 7: 12 }

test('[SU1] a setup brings the solved cube, held home, to the start; the hold is told apart', () => {
  fc.assert(
    fc.property(aPosition, (start) => {
      const found = findSetup({ tables, start, turnsEnough: 22, isOver: afterNodes(NODES) })
      if (!found.ok) throw new Error('there is a setup')
      const { turns: setup, hold } = found.value
      expect(afterTurns(solvedCube(), setup)).toEqual(asHeldHome(start))
      expect(hold).toBe(holdOf(start))
      expect(afterTurns(solvedCube(), [...setup, ...turnsToHold(hold)])).toEqual(start)
    }),
    { seed: SEED, numRuns: 40 },
  )
})

test('[SU1] the solved cube needs no setup', () => {
  const found = findSetup({ tables, start: solvedCube(), isOver: afterNodes(NODES) })
  expect(found).toMatchObject({ ok: true, value: { turns: [], hold: 0 } })
})

describe.each(STAGES)('stage %i', (to) => {
  const starts = Array.from({ length: 60 }, (_, number) => drawArrangement(to, sourceNumbered(100 * to + number)))
    .filter((start) => !goalMet(start, to))
    .slice(0, 12)

  // The true par of a start lies between: the rule is held against the least and the greatest there can be.
  test.each([1, PAR_MAX[to]])(
    '[SU2] undoing a setup meets the goal six turns over a par of %i, or later',
    (parTurns) => {
      for (const start of starts) {
        const wayShown = to < 4 ? [] : lessonWay(start, { from: to, to })
        const secrets = { to, parTurns, lessonWay: wayShown }
        const found = findSetup({ tables, start, secrets, isOver: afterNodes(NODES) })
        if (!found.ok) throw new Error('there is a setup')
        const undoing = inverseTurns(found.value.turns)
        expect(afterTurns(start, undoing)).toEqual(solvedCube())
        expect(stepsBeforeGoal(start, undoing, to)).toBeGreaterThanOrEqual(parTurns + 6)
        const plainWay = plainFaceTurns(wayShown, 0)
        if (plainWay.length > 0) expect(plainFaceTurns(undoing, 0).slice(0, plainWay.length)).not.toEqual(plainWay)
      }
    },
  )
})

test('[SU2] the lesson way is taken in the hold of the start', () => {
  const setup = turns("F R U R' U' F' U F R2 D R D'")
  const start = afterTurns(solvedCube(), [...setup, ...turns('x y')])
  const search = (lessonWay: Turn[]) => {
    const wish = { tables, start, secrets: { to: 7 as const, parTurns: 1, lessonWay }, isOver: afterNodes(NODES) }
    const found = findSetup(wish)
    if (!found.ok) throw new Error('there is a setup')
    return found.value.turns
  }
  const shown = search([])
  const undoing = [...inverseTurns(turns('x y')), ...inverseTurns(shown)]
  expect(search(inverseTurns(shown))).toEqual(shown)
  expect(search(undoing)).not.toEqual(shown)
})

test.each(['U', 'U2', "U'", 'R', 'D2'])(
  '[SU2] the start %s, one turn from solved, gets a setup even against the greatest par of all',
  (word) => {
    const start = cubeAfter(word)
    for (const to of [6, 7] as const) {
      const secrets = { to, parTurns: 13, lessonWay: [] }
      const found = findSetup({ tables, start, secrets, isOver: afterNodes(NODES) })
      if (!found.ok) throw new Error('there is a setup')
      expect(afterTurns(solvedCube(), found.value.turns)).toEqual(start)
      expect(stepsBeforeGoal(start, inverseTurns(found.value.turns), to)).toBeGreaterThanOrEqual(19)
    }
  },
)

test('[SU3] when the time is up before the first setup, the search goes on for a while; then it says how far it went', () => {
  const start = drawArrangement(1, sourceNumbered(7))
  expect(findSetup({ tables, start, isOver: () => true }).ok).toBe(true)
  // No setup has 31 turns: the search comes to its end.
  const secrets = { to: 7, parTurns: 25, lessonWay: [] } as const
  const found = findSetup({ tables, start, secrets, isOver: () => true })
  expect(found).toMatchObject({ ok: false, error: { code: 'setup/none-in-time' } })
})
