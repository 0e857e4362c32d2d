/** Which name the button to go in says. Rules JO: tests/RULES.md. */

import { expect, test } from 'vitest'
import { nameOnButton } from '../../../web/join/name-on-button.ts'

// Rows: how names come, typed, picked, the refused field, the name that the button says.
test.each([
  ['typed', ' Ada ', null, null, 'Ada'],
  ['typed', '  ', null, null, null],
  ['typed', 'Ada', null, 'code', 'Ada'],
  ['typed', 'Ada', null, 'page', 'Ada'],
  ['typed', 'Ada', null, 'name', null],
  ['roster', 'Ada', 'Bo', null, 'Bo'],
  ['roster', 'Ada', null, null, null],
  ['roster', 'Ada', 'Bo', 'name', null],
  ['given', 'Ada', 'Bo', null, null],
] as const)('[JO4] %s, typed %j, picked %j, refused %s: %j', (way, typed, picked, refusedField, said) => {
  expect(nameOnButton({ way, typed, picked, refusedField })).toBe(said)
})
