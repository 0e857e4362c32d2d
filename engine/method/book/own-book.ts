/** Our own books are text like a teacher's: read when the program loads. A misspelt one is our bug. */

import { assert } from '../../result.ts'
import type { SequenceBook } from '../sequence-book.ts'
import { parseBook } from './parse-book.ts'

/** @returns the book of a text of ours; asserts that it can be read */
export function ownBook(text: string): SequenceBook {
  const book = parseBook(text)
  assert(book.ok, `a book of ours can be read: ${book.ok ? '' : JSON.stringify(book.error)}`)
  return book.value
}
