/** Nicknames are short enough, and each passes the check of names. */

import { expect, test } from 'vitest'
import { readStudentName } from '../../../engine/contest/student-name.ts'
import { joinWords } from '../../../web/join/nickname.ts'
import { join } from '../../../web/locales/en/join.ts'

const firsts = join.nickname.first.split(',')
const seconds = join.nickname.second.split(',')
const both = (first: string, second: string) => `${first} ${second}`

test('[JO2] every pair that can be drawn is a name', () => {
  for (let first = 0; first < firsts.length; first++) {
    const drawn = new Set<string>()
    for (let second = 0; second < seconds.length; second++) {
      const picks = [first, second]
      drawn.add(joinWords(firsts, seconds, (n) => Math.min(picks.shift() ?? 0, n - 1), both))
    }
    for (const name of drawn) expect(readStudentName(name), name).toEqual({ ok: true, value: name })
  }
})

test('[JO2] words that do not fit together leave the first one alone', () => {
  expect(joinWords(['Unforgettable'], ['Hippopotamus'], () => 0, both)).toBe('Unforgettable')
})
