/** `par`: the fewest turns. Rules CO: tests/RULES.md. */

import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import type { Stage } from '../../../engine/method/stages.ts'
import { openPar } from '../../../server/cli/par.ts'
import { cube, question } from './run-cube.ts'

function reaches(scramble: string, solution: string, to: Stage): boolean {
  const turns = parseTurns(`${scramble} ${solution}`)
  return turns.ok && goalMet(afterTurns(solvedCube(), turns.value), to)
}

test('[CO5] one stage is looked up: par is proven, and the solution has so many turns in the hold of the scramble', () => {
  // A trigger between F and F' flips two top edges; six turns are the fewest (published pars of stage 4: 6 at least).
  const scramble = "F U R U' R' F' x y'"
  const { exit, lines } = cube(question('par', '4', scramble))
  expect(exit).toBe(0)
  const answer = JSON.parse(lines[0])
  expect(Object.keys(answer)).toEqual(['stage', 'to', 'par', 'proven', 'lowerBound', 'solution'])
  expect(answer).toMatchObject({ stage: 4, to: 4, par: 6, proven: true, lowerBound: 6 })
  expect(answer.solution.split(' ')).toHaveLength(6)
  expect(reaches(scramble, answer.solution, 4)).toBe(true)
})

test('[CO5] several stages are searched for, with tables that are kept in the data folder', () => {
  const scramble = 'R U F L2 D B'
  const { exit, lines, complaint } = cube(question('par', '1', scramble, '--to', '2', '--budget', '60'))
  expect({ exit, lines }).toEqual({ exit: 0, lines: [expect.any(String)] })
  expect(complaint.replaceAll(/^\d+ % {2}search tables {2}\d+ s\n/gmu, '')).toBe('')
  const answer = JSON.parse(lines[0])
  expect(answer).toMatchObject({ stage: 1, to: 2, proven: true })
  expect(answer.par).toBeLessThanOrEqual(6)
  expect(answer.lowerBound).toBe(answer.par)
  expect(reaches(scramble, answer.solution, 2)).toBe(true)
})

test('[CO5] what is not proven in the budget is called so, with the length up to which it is', () => {
  // A random position, with which the search for stage 3 is busy for minutes.
  const scramble = "U' F L B R2 U D' R2 B' R D2 F' U' L2 U2 F2 R' L"
  const { exit, lines } = cube(question('par', '1', scramble, '--to', '3', '--budget', '0.2'))
  expect(exit).toBe(0)
  const { par, proven, lowerBound, solution } = JSON.parse(lines[0])
  expect(proven).toBe(false)
  expect(lowerBound).toBeLessThan(par)
  expect(solution.split(' ')).toHaveLength(par)
  expect(reaches(scramble, solution, 3)).toBe(true)
})

test('[CO4] a batch mixes one stage and several, good lines and bad ones, and keeps their order', () => {
  const lines = [
    '1-2\tR U F', // searched for, while the next ones are looked up
    '1\tR F\tignored',
    '',
    '4\tR',
    '2-1\tR',
    '1-\tR',
    '1-2-3\tR',
    '9\tR',
    '1',
    '1\tR U r',
    '1\tR\tU\tF',
    `1\t${'R '.repeat(10_001)}`,
    `1\t${' '.repeat(200_000)}R`,
    '1-2\tR\r',
  ]
  const run = cube(['par', '--batch'], lines.join('\n'))
  expect(run.exit).toBe(1)
  expect(run.lines.map((line) => JSON.parse(line)).map(({ error, par }) => error ?? par)).toEqual([
    3,
    2,
    'the line is empty: give stage<TAB>scramble',
    'the scramble does not start stage 4: the goal of stage 3 is not met',
    '--to: stage 1 comes before stage 2',
    '--to: "" is no stage; give a number from 1 to 7',
    '--to: "2-3" is no stage; give a number from 1 to 7',
    '--stage: "9" is no stage; give a number from 1 to 7',
    `--scramble is missing: give turns in standard notation, such as "R U R' U'"`,
    '--scramble: "r" at character 5 is no turn',
    'the line has 4 columns; there are 3 at most',
    '--scramble: more than 10000 turns',
    'the line has more than 200000 characters',
    1,
  ])
})

test.each([
  ['a question beside a batch', ['par', '--batch', '--stage', '1'], '--stage cannot stand beside --batch'],
  [
    'a budget of nothing',
    question('par', '1', 'R', '--budget', '0'),
    '--budget: "0" will not do; give a number from 0.1',
  ],
])('[CO3] par with %s ends with code 2 and says why in one line', (_what, args, complaint) => {
  const run = cube(args)
  expect({ exit: run.exit, lines: run.lines }).toEqual({ exit: 2, lines: [] })
  expect(run.complaint).toContain(complaint)
  expect(run.complaint.trimEnd().split('\n')).toHaveLength(1)
})

test.each(['0', '0.09', '3601', '-1', '1e3', 'NaN', ''])(
  '[CO3] a budget of "%s" seconds is refused',
  async (budget) => {
    const opened = await openPar({ budget }, () => {
      throw new Error('no search is opened')
    })
    expect(opened).toEqual({ ok: false, error: expect.stringContaining(`--budget: "${budget}" will not do`) })
  },
)

test('[CO2] a cube that is solved is a start like any other: nothing has to be done', () => {
  expect(cube(question('par', '7', '')).lines.map((line) => JSON.parse(line))).toEqual([
    { stage: 7, to: 7, par: 0, proven: true, lowerBound: 0, solution: '' },
  ])
})
