/** The rules and the tests name each other. Rules HO: tests/RULES.md. */

import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))

function testFiles(place: string): string[] {
  return readdirSync(join(ROOT, place)).flatMap((name) => {
    const path = join(place, name)
    if (statSync(join(ROOT, path)).isDirectory()) return testFiles(path)
    return /\.(test|story)\.tsx?$/.test(name) ? [path] : []
  })
}

const titles = ['tests', 'e2e'].flatMap(testFiles).flatMap((file) => {
  const text = readFileSync(join(ROOT, file), 'utf8')
  return [...text.matchAll(/\[([A-Z]{2}\d+)\]/g)].map((match) => match[1])
})
const rules = [...readFileSync(join(ROOT, 'tests', 'RULES.md'), 'utf8').matchAll(/\*\*([A-Z]{2}\d+)\*\*/g)].map(
  (match) => match[1],
)

test('[HO4] every rule is there once and has a test', () => {
  expect(rules.length).toBeGreaterThan(100)
  expect(new Set(rules).size).toBe(rules.length)
  expect(rules.filter((rule) => !titles.includes(rule))).toEqual([])
})

test('[HO4] every rule that a test title names is there', () => {
  expect([...new Set(titles)].filter((rule) => !rules.includes(rule))).toEqual([])
})
