/** The rules and the tests name each other. Rules HO: tests/RULES.md. */

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { filesBelow, ROOT } from './files-below.ts'

/** What stands in quotes right behind the name `test`, or behind the rows of a table of tests; tables of groups are none. */
function titlesIn(text: string): string[] {
  let isOfGroups = false
  const titles: string[] = []
  for (const [, table, opening, , title] of text.matchAll(
    /\b(test|describe)\.each\b|(\btest|\))\(\s*(['"`])((?:(?!\3).)*)/g,
  )) {
    if (table !== undefined) isOfGroups = table === 'describe'
    else if (opening === 'test' || !isOfGroups) titles.push(title)
  }
  return titles
}

function rulesIn(title: string): string[] {
  return [...title.matchAll(/\[([A-Z]{2}\d+)\]/g)].map((match) => match[1])
}

const titles = ['tests', 'e2e']
  .flatMap(filesBelow)
  .filter((file) => /\.(test|story)\.tsx?$/.test(file))
  .flatMap((file) => titlesIn(readFileSync(join(ROOT, file), 'utf8')).map((title) => ({ file, title })))
const rules = [...readFileSync(join(ROOT, 'tests', 'RULES.md'), 'utf8').matchAll(/\*\*([A-Z]{2}\d+)\*\*/g)].map(
  (match) => match[1],
)

test('[HO4] every rule is there once and has a test', () => {
  const tested = new Set(titles.flatMap(({ title }) => rulesIn(title)))
  expect(rules.length).toBeGreaterThan(100)
  expect(new Set(rules).size).toBe(rules.length)
  expect(rules.filter((rule) => !tested.has(rule))).toEqual([])
})

test('[HO4] every test title opens with a rule that is there', () => {
  expect(titles.length).toBeGreaterThan(300)
  const astray = titles.filter(({ title }) => {
    const [opening] = rulesIn(title.slice(0, title.indexOf(']') + 1))
    return !title.startsWith('[') || !rules.includes(opening)
  })
  expect(astray).toEqual([])
})

test('[HO4] the check itself sees titles of single tests and of tables', () => {
  // Put together, so that the check of this very file does not take them for titles.
  const [one, rows, groups] = ['test', 'test.each([])', 'describe.each([])'].map((call) => `${call}(`)
  const text = `${one}'[AB1] one', f)\n${rows}\n  \`[AB2] %s\`,\n)\n${groups}'of %s', f)\n${rows}"[AB3] it's", f)`
  expect(titlesIn(text)).toEqual(['[AB1] one', '[AB2] %s', "[AB3] it's"])
  expect(rulesIn('[AB1] and not [ab2]')).toEqual(['AB1'])
})
