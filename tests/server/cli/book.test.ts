/** `book`: can a sequence book be taught? Rules CO: tests/RULES.md. */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { readBookFile } from '../../../server/cli/read-book-file.ts'
import { cube } from './run-cube.ts'

const folder = mkdtempSync(join(tmpdir(), 'books-'))
afterAll(() => rmSync(folder, { recursive: true }))

function bookFile(content: string | Uint8Array): string {
  const file = join(folder, 'a.book')
  writeFileSync(file, content)
  return file
}

test('[CO8] one of our own books is printed, reads back, and can be taught', () => {
  const printed = cube(['book', '--own', 'classic'])
  expect(printed.lines[0]).toBe('book Classic sequences')
  const { exit, lines } = cube(['book', bookFile(printed.lines.join('\n'))])
  expect({ exit, nLines: lines.length }).toEqual({ exit: 0, nLines: 1 })
  expect(JSON.parse(lines[0])).toMatchObject({ title: 'Classic sequences', isSound: true, stages: { length: 7 } })
})

test('[CO8] a book with faults is a negative answer that names them', () => {
  const { exit, lines } = cube(['book', bookFile('book Short\nstage 4\n  F R F\n')])
  expect(exit).toBe(1)
  const { isSound, stages } = JSON.parse(lines[0])
  expect(isSound).toBe(false)
  expect(stages[3].faults[0].code).toBe('method/breaks-earlier-stage')
})

test.each([
  ['no such file', join(folder, 'nowhere'), 'there is no such file'],
  ['a folder', folder, 'this is a folder'],
])('[CO3] %s ends with code 2', (_what, file, complaint) => {
  const run = cube(['book', file])
  expect({ exit: run.exit, lines: run.lines }).toEqual({ exit: 2, lines: [] })
  expect(run.complaint).toContain(complaint)
})

test.each([
  ['a word that is none', 'book Mine\nstage 1\n  F2 Q R\n', 'line 3, column 6: "Q": this is neither a turn nor a part'],
  ['no title', 'stage 1\n F\n', 'line 1, column 1: "stage": a book begins with "book" and a title'],
  ['a part that is too long', `book x\npart A = ${'R '.repeat(201)}\n`, 'written out these are more than 200 turns'],
  [
    'text that is not UTF-8',
    Buffer.from('book x\nstage 1\n  F\xff\n', 'latin1'),
    'not text in UTF-8 (line 3, column 4)',
  ],
  ['too much text', 'x'.repeat(80_001), 'longer than a book may be (20000 characters)'],
  ['nothing', '', 'a book begins with'],
])('[CO8] %s is refused with line, column and token', (_what, content, complaint) => {
  const book = readBookFile(bookFile(content))
  expect(book).toEqual({ ok: false, error: expect.stringContaining(complaint) })
  expect(!book.ok && book.error).not.toContain('\n')
})

test.each([
  ['neither a file nor a name', ['book'], 'book wants a file, or --own with one of: lesson, classic'],
  ['both', ['book', 'x', '--own', 'lesson'], 'book wants a file, or --own'],
  ['a name that is none', ['book', '--own', 'toString'], '--own: "toString" is none of lesson, classic'],
])('[CO3] book with %s ends with code 2', (_what, args, complaint) => {
  const run = cube(args)
  expect(run.exit).toBe(2)
  expect(run.complaint).toContain(complaint)
})
