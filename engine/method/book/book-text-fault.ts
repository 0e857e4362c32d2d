/** Why the text of a sequence book could not be read, and where. */

import { err, type Result } from '../../result.ts'

/** The codes, each with what to do. */
export const BOOK_TEXT_CODES = [
  /** The text is longer than `max`. Do: shorten it. */
  'book/text-too-long',
  /** The text has more than `max` lines. Do: leave some out. */
  'book/too-many-lines',
  /** The first line that says anything is not `book` with a title. Do: begin with `book` and a title. */
  'book/no-title',
  /** The title has more than `max` characters. Do: shorten it. */
  'book/title-too-long',
  /** The title has a character that is not seen, such as one that turns the direction of writing. Do: remove it. */
  'book/title-unseen',
  /** A second line `book`. Do: leave it out. */
  'book/title-twice',
  /** A part has no name of letters, digits and hyphens, or the name is a word of the grammar or too long. Do: rename it. */
  'book/bad-name',
  /** The name has other letters than the Latin ones, some of which look like turns. Do: write it in Latin letters. */
  'book/name-not-latin',
  /** The name could be read as turns. Do: rename the part. */
  'book/name-is-turns',
  /** The name looks like a turn but for its case or its marks: `u`, `X`, `r2`. Do: rename the part. */
  'book/name-like-turn',
  /** A part of this name is there already. Do: rename one. */
  'book/name-taken',
  /** More than `max` parts. Do: leave some out. */
  'book/too-many-parts',
  /** A part stands behind the first stage. Do: move it up. */
  'book/part-after-stage',
  /** A part lacks its `=` or the turns behind it. Do: write `part NAME = turns`. */
  'book/part-without-turns',
  /** A part that is written further down, or the part itself. Do: move that part up. */
  'book/part-not-yet',
  /** The turn has the letter of a part of this book and could be mistaken for it. Do: rename the part. */
  'book/hidden-turn',
  /** No stage with this number. Do: write a number from 1 to 7. */
  'book/unknown-stage',
  /** A stage that was there before. Do: put its sequences together. */
  'book/stage-twice',
  /** More than `max` sequences in one stage. Do: leave some out. */
  'book/too-many-sequences',
  /** A sequence before the first stage. Do: write `stage` and its number above it. */
  'book/outside-stage',
  /** Neither a turn nor a part. Do: correct it. */
  'book/unknown-word',
  /** A bracket without its other half. Do: add or remove one. */
  'book/lonely-bracket',
  /** Nothing between two brackets. Do: remove them. */
  'book/empty-brackets',
  /** Brackets nested more than `max` deep. Do: name a part instead. */
  'book/too-deep',
  /** No whole number from 1 to `max` behind `^`. Do: correct it. */
  'book/bad-power',
  /** A power of plain turns. Do: put brackets around them, or write R2. */
  'book/power-of-turns',
  /** More than `max` turns once written out. Do: shorten the sequence. */
  'book/too-many-turns',
] as const

/** One of the codes. */
export type BookTextCode = (typeof BOOK_TEXT_CODES)[number]

/** The first fault of a text. Lines and columns count from 1, columns in UTF-16 units. The
 * token is the text that begins there, or the first part of it, or empty. */
export type BookTextFault = {
  readonly code: BookTextCode
  readonly line: number
  readonly column: number
  readonly token: string
  /** The limit, where the fault is one of size. */
  readonly max?: number
}

/** Longest piece of text that a fault repeats, in characters. */
const TOKEN_SHOWN_MAX = 32

/** Where a fault is: everything but what it is. */
export type TextPlace = { readonly line: number; readonly column: number; readonly token: string }

/** @returns the fault as an answer, its token cut to a length that fits on a screen */
export function bookTextFault(code: BookTextCode, place: TextPlace, max?: number): Result<never, BookTextFault> {
  const { line, column } = place
  const token = [...place.token.slice(0, 2 * TOKEN_SHOWN_MAX)].slice(0, TOKEN_SHOWN_MAX).join('')
  return err({ code, line, column, token, ...(max === undefined ? {} : { max }) })
}
