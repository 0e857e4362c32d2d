/** `start`: starts for rounds, as setups. Rules CO: tests/RULES.md. */

import { beforeAll, expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import { inverseTurns } from '../../../engine/cube/turns.ts'
import { stepsBeforeGoal } from '../../../engine/method/goal-reached.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import { openParTables } from '../../../engine/search/par/open-par-tables.ts'
import { openStart } from '../../../server/cli/start.ts'
import { cube } from './run-cube.ts'

/** Making the tables of setups takes some seconds at the first run. */
const MAKING_MS_MAX = 120_000

const start = (seed: string) => cube(['start', '--stage', '5', '--count', '3', '--seed', seed, '--least-par', '8'])
let tuesday: ReturnType<typeof start>
beforeAll(() => {
  tuesday = start('Tuesday')
}, MAKING_MS_MAX)

test('[CO7] setups lead to starts of the stage, with their pars, and undoing one takes six turns more than par', async () => {
  const { exit, lines } = tuesday
  expect(exit).toBe(0)
  expect(lines).toHaveLength(3)
  const pars = await openParTables()
  for (const line of lines) {
    const { stage, setup, par } = JSON.parse(line)
    const turns = parseTurns(setup)
    if (!turns.ok || !pars.ok) throw new Error(setup)
    const position = afterTurns(solvedCube(), turns.value)
    expect([stage, goalMet(position, 4), goalMet(position, 5)]).toEqual([5, true, false])
    expect(par).toBe(pars.value.parOf(position, 5))
    expect(par).toBeGreaterThanOrEqual(8)
    expect(stepsBeforeGoal(position, inverseTurns(turns.value), 5)).toBeGreaterThanOrEqual(par + 6)
  }
})

test('[CO7] the same options give the same lines, and another seed others', () => {
  expect(start('Tuesday').lines).toEqual(tuesday.lines)
  expect(start('Wednesday').lines).not.toEqual(tuesday.lines)
})

test('[CO7] over several stages it is said whether par is proven', () => {
  const { exit, lines } = cube(['start', '--stage', '1', '--to', '2', '--count', '1', '--seed', 'Tuesday'])
  expect(exit).toBe(0)
  const { par, setup, ...others } = JSON.parse(lines[0])
  expect(others).toEqual({ stage: 1, to: 2, proven: true, lowerBound: par })
  expect(setup.split(' ').length).toBeGreaterThanOrEqual(par + 6)
})

test.each([
  ['no count', { seed: 'x' }, '--count is missing'],
  ['none at all', { count: '0', seed: 'x' }, '--count: "0" will not do; give a whole number from 1 to 10000'],
  ['half a start', { count: '1.5', seed: 'x' }, '--count: "1.5" will not do'],
  ['no seed', { count: '1' }, '--seed is missing'],
  ['an endless seed', { count: '1', seed: 'x'.repeat(1_001) }, 'has more than 1000 characters'],
  // The greatest par of the cross is 8, as is published.
  ['a par that no start has', { count: '1', seed: 'x', 'least-par': '9' }, 'give a whole number from 1 to 8'],
  [
    'a least par for several stages',
    { to: '2', count: '1', seed: 'x', 'least-par': '2' },
    '--least-par is for one stage',
  ],
])('[CO3] start with %s is refused before anything is searched for', async (_what, options, complaint) => {
  const opened = await openStart({ stage: '1', ...options }, () => {
    throw new Error('no search is opened')
  })
  expect(opened).toEqual({ ok: false, error: expect.stringContaining(complaint) })
})
