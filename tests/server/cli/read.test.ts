/** `read`: what a solution did, and why. Rules CM: tests/RULES.md. */

import { expect, test } from 'vitest'
import { cube, question } from './run-cube.ts'

const read = (stage: string, scramble: string, solution: string) =>
  question('read', stage, scramble, '--solution', solution)

test('[CM1] a solution is read step by step; what cost turns is noted, with its turns and its price', () => {
  const { exit, lines } = cube(read('4', "F R U R' U' F'", "U U' F U R U' R' F'"))
  expect(exit).toBe(0)
  const { reached, turns, overPar, episodes, notes } = JSON.parse(lines[0])
  expect({ reached, turns, overPar }).toEqual({ reached: true, turns: 8, overPar: 2 })
  expect(episodes).toHaveLength(1)
  expect(episodes[0]).toMatchObject({
    from: 0,
    to: 8,
    stage: 4,
    case: 'corner-shape',
    parBefore: 6,
    parAfter: 0,
    wasted: 2,
  })
  expect(notes).toEqual([expect.objectContaining({ key: 'coach/undone', from: 0, to: 2, cost: 2 })])
})

test('[CM2] a solution that does not reach the goal is a negative answer that says where it went astray', () => {
  const { exit, lines } = cube(read('4', "F R U R' U' F'", "F U R U' R F'"))
  expect(exit).toBe(1)
  expect(JSON.parse(lines[0])).toMatchObject({
    reached: false,
    astray: { after: 0, why: 'coach/wrong-way', mend: { at: 4, from: 'R', to: "R'" } },
  })
})

test('[CM3] a scramble that does not start the stage is a negative answer; bad input ends with code 2', () => {
  const wrong = cube(read('4', 'R', "R'"))
  expect(wrong.exit).toBe(1)
  expect(JSON.parse(wrong.lines[0]).error).toContain('does not start stage 4')
  const bad = cube(read('4', 'R U', 'R q'))
  expect({ exit: bad.exit, lines: bad.lines }).toEqual({ exit: 2, lines: [] })
  expect(bad.complaint).toContain('--solution: "q" at character 3 is no turn')
})

test('[CM4] a batch is read line by line', () => {
  const { exit, lines } = cube(['read', '--batch'], "4\tF R U R' U' F'\tF U R U' R' F'\n1-7\tR U\tU' R'\n")
  expect(exit).toBe(0)
  expect(lines.map((line) => JSON.parse(line).notes)).toEqual([[], []])
})
