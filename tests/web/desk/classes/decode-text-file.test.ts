/** A class's list from a file, whatever wrote it. Rules RS: tests/RULES.md. */

import { expect, test } from 'vitest'
import { readRoster } from '../../../../engine/contest/rosters/read-roster.ts'
import { decodeTextFile } from '../../../../web/desk/classes/decode-text-file.ts'

const bytes = (...values: number[]) => new Uint8Array(values).buffer

test.each([
  ['UTF-8', new TextEncoder().encode('name\nZoë').buffer],
  ['UTF-8 behind its mark', new TextEncoder().encode('\uFEFFname\nZoë').buffer],
  ['UTF-16 of a spreadsheet', new Uint16Array([...'\uFEFFname\nZoë'].map((letter) => letter.charCodeAt(0))).buffer],
  ['the old encoding of Windows', bytes(...[...'name\nZo'].map((letter) => letter.charCodeAt(0)), 0xeb)],
])('[RS8] %s', (_what, file) => {
  expect(readRoster(decodeTextFile(file), null, []).names.map(({ name }) => name)).toEqual(['Zoë'])
})
