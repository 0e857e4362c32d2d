/** Setups for a real cube. Rules SU: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { composePositions } from '../../../../engine/cube/compose-positions.ts'
import { type CubePosition, solvedCube } from '../../../../engine/cube/cube-position.ts'
import { asHeldHome, holdOf, turnsToHold } from '../../../../engine/cube/hold.ts'
import { formatStickers } from '../../../../engine/cube/stickers.ts'
import { FACE_TURNS, inverseTurns, type Turn } from '../../../../engine/cube/turns.ts'
import { drawArrangement } from '../../../../engine/method/draw-start.ts'
import { stepsBeforeGoal } from '../../../../engine/method/goal-reached.ts'
import { goalMet } from '../../../../engine/method/goals.ts'
import { arrangementsOf } from '../../../../engine/method/last-layer-arrangements.ts'
import { lessonWay } from '../../../../engine/method/lesson-way.ts'
import { STAGES, type Stage } from '../../../../engine/method/stages.ts'
import { openParTables } from '../../../../engine/search/par/open-par-tables.ts'
import { findSetup } from '../../../../engine/search/setup/find-setup.ts'
import { plainFaceTurns } from '../../../../engine/search/setup/plain-face-turns.ts'
import { PHASE_1_BYTES } from '../../../../engine/search/two-phase/phase-1-distances.ts'
import { aPosition, cubeAfter, SEED, turns } from '../../cube/arbitraries.ts'
import { sourceNumbered } from '../../method/starts.ts'
import { afterNodes, filledTables } from '../two-phase/two-phase-tables.ts'

const tables = filledTables()

/** Fewer than a slow machine looks at in 200 ms. */
const NODES = 300_000

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

/** Every start of stages 6 and 7, 288 and 12; some of the others. */
function startsOf(stage: Stage): CubePosition[] {
  const starts =
    stage === 6
      ? arrangementsOf(6).flatMap((corners) => arrangementsOf(7).map((edges) => composePositions(edges, corners)))
      : stage === 7
        ? arrangementsOf(7)
        : Array.from({ length: 40 }, (_, number) => drawArrangement(stage, sourceNumbered(100 * stage + number)))
  return starts.filter((start) => !goalMet(start, stage))
}

test.each(STAGES)(
  '[SU2] undoing a setup of stage %i meets the goal six turns over par or later, passes by no earlier solution, and is not the lesson way',
  async (to) => {
    const pars = await openParTables()
    if (!pars.ok) throw new Error('the shipped pars open')
    for (const start of startsOf(to)) {
      const parTurns = pars.value.parOf(start, to)
      const wayShown = lessonWay(start, { from: to, to })
      const secrets = { to, parTurns, lessonWay: wayShown }
      const found = findSetup({ tables, start, secrets, turnsEnough: 21, isOver: afterNodes(NODES) })
      if (!found.ok) throw new Error(`there is a setup for ${formatStickers(start)}`)
      const undoing = inverseTurns(found.value.turns)
      expect(afterTurns(start, undoing)).toEqual(solvedCube())
      expect(stepsBeforeGoal(start, undoing, to)).toBeGreaterThanOrEqual(parTurns + 6)
      for (let nUndone = 1; nUndone + 1 < parTurns + 6; nUndone++) {
        const position = afterTurns(start, undoing.slice(0, nUndone))
        expect(FACE_TURNS.some((turn) => goalMet(afterTurns(position, [turn]), to))).toBe(false)
      }
      const plainWay = plainFaceTurns(wayShown, 0)
      expect(plainFaceTurns(undoing, 0).slice(0, plainWay.length)).not.toEqual(plainWay)
    }
  },
  60_000,
)

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
  // With a table that calls everything far away no way is found, however long it is looked for.
  const blind = { ...tables, phase1Distances: new Uint8Array(PHASE_1_BYTES).fill(0xff) }
  const found = findSetup({ tables: blind, start, isOver: () => true })
  expect(found).toEqual({ ok: false, error: { code: 'setup/none-in-time', nNodes: expect.any(Number) } })
  const nNodes = !found.ok && found.error.code === 'setup/none-in-time' ? found.error.nNodes : 0
  expect(nNodes).toBeGreaterThan(0)
  expect(nNodes).toBeLessThan(6_100_000)
})

test('[SU7] where no time can help, that is said at once', () => {
  const start = drawArrangement(1, sourceNumbered(7))
  const isOver = () => {
    throw new Error('not a node is looked at')
  }
  const tooLong = { to: 7, parTurns: 25, lessonWay: [] } as const
  expect(findSetup({ tables, start, secrets: tooLong, isOver })).toEqual({
    ok: false,
    error: { code: 'setup/par-too-long', parTurnsMax: 24 },
  })
  const atGoal = { to: 3, parTurns: 0, lessonWay: [] } as const
  expect(findSetup({ tables, start: solvedCube(), secrets: atGoal, isOver })).toEqual({
    ok: false,
    error: { code: 'setup/at-goal' },
  })
})
