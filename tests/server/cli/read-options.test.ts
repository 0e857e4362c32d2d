/** Options of a command. Rules CO: tests/RULES.md. */

import { expect, test } from 'vitest'
import { readOptions } from '../../../server/cli/read-options.ts'

const KINDS = { stage: 'text', scramble: 'text', batch: 'flag' } as const

test.each([
  [['--stage', '4', '--scramble', "F R' U2"], { texts: { stage: '4', scramble: "F R' U2" }, bare: [] }],
  [['--stage=4', '--batch'], { texts: { stage: '4', batch: '' }, bare: [] }],
  [['--scramble', ''], { texts: { scramble: '' }, bare: [] }],
  [['a.book', '--', '--stage'], { texts: {}, bare: ['a.book', '--stage'] }],
])('[CO3] %j is read', (args, expected) => {
  expect(readOptions('par', args, KINDS, 2)).toEqual({ ok: true, value: expected })
})

// The command itself is argument 1.
test.each([
  [['--stge', '4'], '"--stge" (argument 2) is no option of par'],
  [['--stage', '4', '-x'], '"-x" (argument 4) is no option of par'],
  [['--__proto__', '4'], '"--__proto__" (argument 2) is no option of par'],
  [['--stage'], '--stage (argument 2) has no value behind it'],
  [['--stage', '--scramble', 'R'], '--stage (argument 2) has no value behind it'],
  [['--stage', '4', '--stage', '5'], '--stage (argument 4) is given twice'],
  [['--batch=yes'], '--batch (argument 2) takes no value'],
  [['--stage', '4', 'R', 'U'], '"R" (argument 4) belongs to no option of par'],
  [[`a\n${'b'.repeat(100)}`], `"a\\n${'b'.repeat(38)}"… (argument 2) belongs to no option of par`],
])('[CO3] %j is refused in one line that names the argument and its place', (args, complaint) => {
  expect(readOptions('par', args, KINDS)).toEqual({ ok: false, error: complaint })
})
