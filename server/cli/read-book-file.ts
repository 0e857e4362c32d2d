/** Reads a file with a sequence book. */

import { isUtf8 } from 'node:buffer'
import { readFileSync, statSync } from 'node:fs'
import type { BookTextCode, BookTextFault } from '../../engine/method/book/book-text-fault.ts'
import { BOOK_TEXT_MAX } from '../../engine/method/book/limits.ts'
import { parseBook } from '../../engine/method/book/parse-book.ts'
import type { SequenceBook } from '../../engine/method/sequence-book.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { InputFault } from './read-input.ts'
import { shown } from './read-options.ts'

/** A character has four bytes at most. */
const BOOK_BYTES_MAX = 4 * BOOK_TEXT_MAX
const BYTE_ORDER_MARK = '\uFEFF'
const UNREADABLE = '\uFFFD'

/** @returns the book, or one line that names the file, the place and what is there */
export function readBookFile(file: string): Result<SequenceBook, InputFault> {
  const text = readText(file)
  if (!text.ok) return err(`${shown(file)}: ${text.error}`)
  const book = parseBook(text.value)
  return book.ok ? book : err(`${shown(file)}, ${sentenceOf(book.error)}`)
}

function readText(file: string): Result<string, string> {
  try {
    const facts = statSync(file)
    if (facts.isDirectory()) return err('this is a folder, not a file')
    if (facts.size > BOOK_BYTES_MAX) return err(tooLong())
    const bytes = readFileSync(file)
    if (bytes.length > BOOK_BYTES_MAX) return err(tooLong())
    const text = bytes.toString('utf8')
    if (!isUtf8(bytes)) {
      const before = text.slice(0, text.indexOf(UNREADABLE)).split('\n')
      return err(`the file is not text in UTF-8 (line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1})`)
    }
    return ok(text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text)
  } catch (fault) {
    const { code = '' } = fault as NodeJS.ErrnoException
    return err(SYSTEM_FAULTS[code] ?? `the file cannot be read (${code})`)
  }
}

const SYSTEM_FAULTS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'the file may not be read',
}

function tooLong(): string {
  return `the file is longer than a book may be (${BOOK_TEXT_MAX} characters)`
}

function sentenceOf({ code, line, column, token, max }: BookTextFault): string {
  return `line ${line}, column ${column}: ${shown(token)}: ${SENTENCES[code].replace('MAX', String(max))}`
}

const SENTENCES: Readonly<Record<BookTextCode, string>> = {
  'book/text-too-long': 'the text is longer than MAX characters',
  'book/too-many-lines': 'the text has more than MAX lines',
  'book/no-title': 'a book begins with "book" and a title',
  'book/title-too-long': 'the title has more than MAX characters',
  'book/title-unseen': 'here the title has a character that is not seen',
  'book/title-twice': 'a book has one title',
  'book/bad-name': 'a part is named with letters, digits and hyphens, and not with a word of the grammar',
  'book/name-not-latin': 'a part is named in Latin letters, as turns are',
  'book/name-is-turns': 'this name could be read as turns',
  'book/name-like-turn': 'this name looks like a turn',
  'book/name-taken': 'a part of this name is there already',
  'book/too-many-parts': 'a book has MAX parts at most',
  'book/part-after-stage': 'parts stand before the first stage',
  'book/part-without-turns': 'a part is written "part NAME = turns"',
  'book/part-not-yet': 'this part is written further down',
  'book/hidden-turn': 'this turn looks like a part of the book',
  'book/unknown-stage': 'stages have the numbers 1 to 7',
  'book/stage-twice': 'this stage was there before',
  'book/too-many-sequences': 'a stage has MAX sequences at most',
  'book/outside-stage': 'a sequence stands under its stage',
  'book/unknown-word': 'this is neither a turn nor a part',
  'book/lonely-bracket': 'this bracket lacks its other half',
  'book/empty-brackets': 'there is nothing between these brackets',
  'book/too-deep': 'brackets stand in each other MAX deep at most',
  'book/bad-power': 'behind ^ stands a whole number from 1 to MAX',
  'book/power-of-turns': 'a power stands behind brackets or a part',
  'book/too-many-turns': 'written out these are more than MAX turns',
}
