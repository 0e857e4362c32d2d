/** The command line as a script meets it: processes, lines, exit codes. Rules CO: tests/RULES.md. */

import { expect, test } from 'vitest'
import { cube, question } from './run-cube.ts'

const check = (stage: string, scramble: string, solution: string) =>
  question('check', stage, scramble, '--solution', solution)

test('[CO1] a solution that undoes the scramble reaches the goal; every metric is told', () => {
  const { exit, lines } = cube(check('4', "F U R U' R' F'", "F R U R' U' F'"))
  expect(exit).toBe(0)
  expect(lines.map((line) => JSON.parse(line))).toEqual([
    { reached: true, reachedAt: 6, turns: 6, metrics: { outerBlock: 6, execution: 6, half: 6, quarter: 6, slice: 6 } },
  ])
})

test('[CO1] the count ends where the goal is first reached, in any hold', () => {
  // A slice turn and its undoing leave the cube solved; the turns behind it are not counted.
  const { exit, lines } = cube([...check('1', 'M y', "y' M' R2 U2"), '--to', '7'])
  expect(exit).toBe(0)
  expect(JSON.parse(lines[0])).toMatchObject({
    reached: true,
    reachedAt: 2,
    turns: 2,
    metrics: { execution: 3, quarter: 2, slice: 1 },
  })
})

test('[CO1] a solution that does not reach the goal is a negative answer with its whole count', () => {
  const { exit, lines } = cube(check('1', 'R F', "F' U2"))
  expect(exit).toBe(1)
  expect(JSON.parse(lines[0])).toMatchObject({ reached: false, reachedAt: null, turns: 2, metrics: { quarter: 3 } })
})

test('[CO2] a scramble that does not start the stage is a negative answer', () => {
  const { exit, lines } = cube(check('4', 'R', "R'"))
  expect(exit).toBe(1)
  expect(JSON.parse(lines[0])).toEqual({ error: 'the scramble does not start stage 4: the goal of stage 3 is not met' })
})

test.each([
  ['an unknown token', check('4', 'R U Q F', 'R'), '--scramble: "Q" at character 5 is no turn'],
  ['an ambiguous token', check('4', 'R U', 'R u'), '--solution: "u" at character 3 is no turn'],
  ['no stage', ['check', '--scramble', 'R', '--solution', 'R'], '--stage is missing'],
  ['a stage that is none', check('8', 'R', 'R'), '"8" is no stage'],
  [
    'a span the wrong way round',
    ['check', '--stage', '5', '--to', '4', '--scramble', '', '--solution', ''],
    'stage 4 comes before stage 5',
  ],
  ['an option that is none', ['check', '--stge', '4'], 'stge'],
  ['a command that is none', ['solve'], '"solve" is no command'],
  ['nothing', [], 'usage'],
])('[CO3] %s ends with code 2 and says why', (_what, args, complaint) => {
  const run = cube(args)
  expect(run.exit).toBe(2)
  expect(run.lines).toEqual([])
  expect(run.complaint).toContain(complaint)
})

test('[CO4] a batch answers line by line, in order, bad lines too', () => {
  const input = ["4\tF U R U' R' F'\tF R U R' U' F'", '4\tF Q\tF', '1\tR\tR', "1-7\tR U\tU' R'", ''].join('\n')
  const { exit, lines } = cube(['check', '--batch'], input)
  expect(exit).toBe(1)
  const answers = lines.map((line) => JSON.parse(line))
  expect(answers.map((answer) => answer.reached ?? answer.error)).toEqual([
    true,
    '--scramble: "Q" at character 3 is no turn',
    false,
    true,
  ])
})
