/** `way`: what the lesson would do. Rules CO: tests/RULES.md. */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import { cube, question } from './run-cube.ts'

const folder = mkdtempSync(join(tmpdir(), 'books-'))
afterAll(() => rmSync(folder, { recursive: true }))

test('[CO6] the steps of the way, one after the other, are its solution, which leads to the goal', () => {
  const scramble = "R U' F2 L D' B R2 x"
  const { exit, lines } = cube(question('way', '1', scramble, '--to', '7'))
  expect(exit).toBe(0)
  const { turns, solution, steps } = JSON.parse(lines[0])
  expect(Object.keys(steps[0])).toEqual(['hold', 'do', 'why', 'lookFor', 'stage'])
  expect(steps.at(-1).why).toBe('why/stage-done')
  const way = parseTurns(`${scramble} ${solution}`)
  expect(way.ok && goalMet(afterTurns(solvedCube(), way.value), 7)).toBe(true)
  // Outer block turns: re-holds do not count.
  expect(solution.split(' ').filter((turn: string) => !/[xyz]/u.test(turn))).toHaveLength(turns)
})

test('[CO6] a book of the teacher is followed as far as it can be taught', () => {
  const file = join(folder, 'own.book')
  writeFileSync(file, "\uFEFFbook Mine\nstage 4\n  F R U R' U' F'\n  R U' R'\n")
  const lines = ["4\tF R U R' U' F'", "5\tR U R' U R U2 R'"].join('\n')
  const run = cube(['way', '--batch', '--book', file], lines)
  expect(run.lines.map((line) => JSON.parse(line))).toEqual([
    { error: 'the book cannot be taught at stage 4: "book FILE" says why' },
    { error: 'the book cannot be taught at stage 5: "book FILE" says why' },
  ])
  writeFileSync(file, "book Mine\nstage 4\n  F R U R' U' F'\n")
  const answer = JSON.parse(cube(question('way', '4', "F U R U' R' F'", '--book', file)).lines[0])
  expect(answer.steps.map((step: { do: string }) => step.do)).toContain("F R U R' U' F'")
})
