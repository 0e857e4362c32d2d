/** A refusal stands beside the field that it is about. */

import { expect, test } from 'vitest'
import { refusedField } from '../../../web/join/refused-field.ts'

test.each([
  ['room/unknown-code', 'code'],
  ['room/locked', 'code'],
  ['room/full', 'code'],
  ['name/taken', 'name'],
  ['name/choose-another', 'name'],
  ['server/going-away', 'page'],
  ['wire/too-fast', 'page'],
] as const)('[JO3] %s is about the %s', (code, field) => expect(refusedField(code)).toBe(field))
