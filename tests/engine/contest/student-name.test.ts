/** Names that students type. Rules IN: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { NAME_LENGTH_MAX } from '../../../engine/contest/limits.ts'
import { nameKey, readStudentName } from '../../../engine/contest/student-name.ts'

const codeOf = (typed: string) => {
  const read = readStudentName(typed)
  return read.ok ? null : read.error.code
}

describe('a name', () => {
  test.each([
    ['  Ada   Lou ', 'Ada Lou'],
    ['Zoë', 'Zoë'],
    ['Zoe\u0308', 'Zoë'],
    ["D'Arcy-7", "D'Arcy-7"],
    ['Ａｄａ', 'Ada'],
    ['Dickson', 'Dickson'],
    ['Student 175', 'Student 175'],
    // A letter of this script often carries two marks.
    ['กี้', 'กี้'],
    ['x'.repeat(NAME_LENGTH_MAX), 'x'.repeat(NAME_LENGTH_MAX)],
  ])('[IN5] %j is taken as %j', (typed, name) => {
    expect(readStudentName(typed)).toEqual({ ok: true, value: name })
  })

  test.each([
    ['nothing', '', 'name/empty'],
    ['white space alone', ' \t\u00a0', 'name/empty'],
    ['a letter too many', 'x'.repeat(NAME_LENGTH_MAX + 1), 'name/too-long'],
    ['a picture', 'Ada😀', 'name/unusual-letters'],
    ['punctuation alone', "-.'", 'name/unusual-letters'],
    ['a character that turns the writing round', 'Ada\u202e', 'name/unusual-letters'],
    ['a letter that is not seen', '\u3164', 'name/unusual-letters'],
    ['a letter that is not seen, behind one that is', 'Ada\u115f', 'name/unusual-letters'],
    ['a tower of marks', `A${'\u0301'.repeat(12)}`, 'name/unusual-letters'],
    ['a rude word', 'shithead', 'name/choose-another'],
    ['a rude word in figures', 'sh1thead', 'name/choose-another'],
    ['a rude word, drawn out', 'shiiithead', 'name/choose-another'],
    ['a rude word with accents', 'shíthead', 'name/choose-another'],
  ])('[IN5] %s is refused', (_what, typed, code) => {
    expect(codeOf(typed)).toBe(code)
  })

  test('[IN5] two names are the same but for case, accents and punctuation', () => {
    expect(new Set(['Zoë', 'zoe', 'ZOE.', "Zo'e"].map(nameKey)).size).toBe(1)
    expect(nameKey('Zoe 2')).not.toBe(nameKey('Zoe'))
  })
})
