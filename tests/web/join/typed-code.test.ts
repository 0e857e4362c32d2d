/** What is kept of a typed or pasted room code. */

import { expect, test } from 'vitest'
import { codeInPastedText, keepCodeLetters } from '../../../web/join/typed-code.ts'

test.each([
  ['ramket', 'RAMKET'],
  ['ram-ket', 'RAMKET'],
  [' R A M K E T ', 'RAMKET'],
  ['ramketx', 'RAMKET'],
  ['b0lvad', 'B0LVAD'],
  ['', ''],
  ['12', '12'],
])('[JO1] %j is kept as %j', (typed, kept) => expect(keepCodeLetters(typed)).toBe(kept))

test.each([
  ['http://192.0.2.7:3000/RAMKET', 'RAMKET'],
  ['https://school.example/ramket?x=1', 'RAMKET'],
  ['RAM KET', 'RAMKET'],
])('[JO1] pasted %j gives %j', (text, code) => expect(codeInPastedText(text)).toBe(code))
