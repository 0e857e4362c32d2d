/** Names that are given to those who type none. Rules NA: tests/RULES.md. */

import { expect, test } from 'vitest'
import { chachaSource, SEED_BYTES } from '../../../engine/chance/chacha-source.ts'
import { friendlyName } from '../../../engine/contest/friendly-names.ts'
import { NAME_LENGTH_MAX, ROOM_SEATS_MAX } from '../../../engine/contest/limits.ts'
import { nameKey, readStudentName } from '../../../engine/contest/student-name.ts'

const source = (seed: number) => chachaSource(new Uint8Array(SEED_BYTES).fill(seed))

function drawAll(n: number): string[] {
  const random = source(7)
  const taken = new Set<string>()
  while (taken.size < n) taken.add(friendlyName(random, (name) => taken.has(name)))
  return [...taken]
}
const MANY = drawAll(2_700)

/** Letters that have to be changed, put in or left out to make one word of the other (Levenshtein 1966). */
function distance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, index) => index)
  for (let i = 1; i <= one.length; i++) {
    const next = [i]
    for (let j = 1; j <= other.length; j++) {
      next.push(Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + (one[i - 1] === other[j - 1] ? 0 : 1)))
    }
    row = next
  }
  return row[other.length]
}

test('[NA5] a friendly name is a good name as it stands, and short enough for a lane', () => {
  for (const name of MANY) {
    expect(readStudentName(name)).toEqual({ ok: true, value: name })
    expect(name.length).toBeLessThanOrEqual(NAME_LENGTH_MAX)
  }
})

test('[NA5] a full room has a friendly name for everybody, each once', () => {
  expect(MANY.length).toBeGreaterThan(ROOM_SEATS_MAX)
  expect(new Set(MANY.map(nameKey)).size).toBe(MANY.length)
})

test('[NA5] a taken name is not given, even where a single one is free', () => {
  for (const free of MANY.slice(0, 20)) expect(friendlyName(source(7), (name) => name !== free)).toBe(free)
})

test('[NA5] the same source gives the same names, another one others', () => {
  expect(friendlyName(source(1), () => false)).toBe(friendlyName(source(1), () => false))
  expect(new Set([1, 2, 3, 4, 5].map((seed) => friendlyName(source(seed), () => false))).size).toBeGreaterThan(3)
})

test('[NA5] no two words are so much alike that a class would mix them up', () => {
  for (const place of [0, 1]) {
    const words = [...new Set(MANY.map((name) => name.split(' ')[place]))]
    expect(words.length).toBeGreaterThan(40)
    const alike = words.flatMap((one, index) =>
      words.slice(index + 1).flatMap((other) => (distance(one, other) < 2 ? [`${one} ${other}`] : [])),
    )
    expect(alike).toEqual([])
  }
})
