/** What a roster may hold, and its file. Rules RS: tests/RULES.md. */

import { expect, test } from 'vitest'
import { classRosterSchema } from '../../../../engine/contest/rosters/class-roster.ts'
import { formatRosterCsv } from '../../../../engine/contest/rosters/format-roster.ts'
import { ROSTER_PUPILS_MAX, ROSTER_TITLE_LENGTH_MAX } from '../../../../engine/contest/rosters/limits.ts'
import { readRoster } from '../../../../engine/contest/rosters/read-roster.ts'

const pupils = (...names: string[]) => names.map((name, index) => ({ pupilId: `p${index}`, name }))
const isRoster = (value: unknown) => classRosterSchema.safeParse(value).success

test.each<[string, boolean, unknown]>([
  ['a class', true, { title: '7b', pupils: pupils('Ana', 'Ben') }],
  ['an empty class without a title', true, { title: '', pupils: [] }],
  ['a name twice, but for case', false, { title: '', pupils: pupils('Ana', 'ANA') }],
  ['an id twice', false, { title: '', pupils: [...pupils('Ana'), ...pupils('Ben')] }],
  ['a name that is not cleaned', false, { title: '', pupils: pupils(' Ana') }],
  ['a rude name', false, { title: '', pupils: pupils('shithead') }],
  ['a field that nobody knows', false, { title: '', pupils: [{ pupilId: 'p', name: 'Ana', email: 'a@b.c' }] }],
  ['a long title', false, { title: 'x'.repeat(ROSTER_TITLE_LENGTH_MAX + 1), pupils: [] }],
  ['a title that turns the writing round', false, { title: '7b\u202e', pupils: [] }],
  [
    'a pupil too many',
    false,
    { title: '', pupils: pupils(...Array.from({ length: ROSTER_PUPILS_MAX + 1 }, (_, index) => `Ana ${index}`)) },
  ],
])('[RS7] %s: %s', (_what, isGood, value) => expect(isRoster(value)).toBe(isGood))

test('[RS8] a class written to a file reads back as the same names', () => {
  const names = ['Ana', 'Zoë', '-Ben', "D'Arcy", 'さくら', 'Ana K.']
  const file = formatRosterCsv({ pupils: pupils(...names) })
  expect(readRoster(file, null, []).names.map(({ name }) => name)).toEqual(names)
})

test('[RS8] nothing in the file is a formula, and a spreadsheet knows the encoding', () => {
  const file = formatRosterCsv({ pupils: pupils('-1', 'Ana') })
  expect(file).toBe("\uFEFFname\r\n'-1\r\nAna\r\n")
})
