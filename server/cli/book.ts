/**
 * `book FILE`: can this sequence book be taught, and how long are its ways? `book --own NAME` prints one of our own books, for
 * a teacher who wants to begin with it.
 */

import { checkBook } from '../../engine/method/book/check-book.ts'
import { CLASSIC_BOOK } from '../../engine/method/book/classic-book.ts'
import { formatBook } from '../../engine/method/book/format-book.ts'
import { LESSON_BOOK } from '../../engine/method/book/lesson-book.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import { EXIT } from './exit-codes.ts'
import type { Answer } from './question.ts'
import { readBookFile } from './read-book-file.ts'
import type { InputFault } from './read-input.ts'
import { type GivenOptions, shown } from './read-options.ts'

const OWN_BOOKS = { lesson: LESSON_BOOK, classic: CLASSIC_BOOK } as const

/** @returns the report on a file, or the text of a book of ours */
export function answerBook({ texts, bare }: GivenOptions): Result<Answer | { readonly text: string }, InputFault> {
  const [file] = bare
  const { own } = texts
  if ((file === undefined) === (own === undefined)) {
    return err(`book wants a file, or --own with one of: ${Object.keys(OWN_BOOKS).join(', ')}`)
  }
  if (own !== undefined) {
    const name = Object.hasOwn(OWN_BOOKS, own) ? (own as keyof typeof OWN_BOOKS) : undefined
    if (name === undefined) return err(`--own: ${shown(own)} is none of ${Object.keys(OWN_BOOKS).join(', ')}`)
    return ok({ text: formatBook(OWN_BOOKS[name]) })
  }
  const book = readBookFile(file)
  if (!book.ok) return book
  const report = checkBook(book.value)
  return ok({ output: report, exit: report.isSound ? EXIT.yes : EXIT.no })
}
