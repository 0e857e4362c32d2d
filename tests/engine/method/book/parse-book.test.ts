import fc from 'fast-check'
import { expect, test } from 'vitest'
import { formatTurns } from '../../../../engine/cube/format-turns.ts'
import { BOOK_TEXT_CODES, type BookTextCode } from '../../../../engine/method/book/book-text-fault.ts'
import { CLASSIC_BOOK } from '../../../../engine/method/book/classic-book.ts'
import { formatBook, formatRepeated, formatWritten } from '../../../../engine/method/book/format-book.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import * as limits from '../../../../engine/method/book/limits.ts'
import { parseBook } from '../../../../engine/method/book/parse-book.ts'
import { SEED } from '../../cube/arbitraries.ts'
import { aBookText, aNearlyBookText, bookOf } from './books.ts'

test('[BK1] a book that was written is read as the same book, and written again as the same text', () => {
  for (const book of [LESSON_BOOK, CLASSIC_BOOK]) expect(parseBook(formatBook(book))).toEqual({ ok: true, value: book })
  fc.assert(
    fc.property(aBookText, (text) => {
      const book = bookOf(text)
      const written = formatBook(book)
      expect(parseBook(written)).toEqual({ ok: true, value: book })
      expect(formatBook(bookOf(written))).toBe(written)
    }),
    { seed: SEED, numRuns: 400 },
  )
})

test('[BK1] layout, comments and spelling of turns are free, and stages may come in any order', () => {
  const book = bookOf(
    "\n# ours\n  book  My  book # title\r\npart A=U R U' R'\n\nstage 5 # five\rA^2 y(R’U2)^2 A\nstage 4\n\tFRF'",
  )
  expect(book.title).toBe('My  book')
  expect(formatBook(book)).toBe("book My  book\npart A = U R U' R'\nstage 4\n  F R F'\nstage 5\n  A^2 y (R' U2)^2 A\n")
})

test.each([
  ['A', "U R U' R'"],
  ['A^2', "U R U' R' U R U' R'"],
  ["F A F'", "F U R U' R' F'"],
  ['(A y)^2', "U R U' R' y U R U' R' y"],
  ['((R)^2 U)^2', 'R R U R R U'],
  ['(R U)', 'R U'],
  ['Two^2', 'U2 U2'],
  ['2Rw M Rw2', 'Rw M Rw2'],
  ['(R U)Rw', 'R U Rw'],
  ['(R U)(R)A', "R U R U R U' R'"],
  ['(R U) 2Rw', 'R U Rw'],
])('[BK1] %s stands for %s', (written, turns) => {
  const [sequence] = bookOf(`book T\npart A = U R U' R'\npart Two = U2\nstage 4\n${written}`).stages[4]
  expect(formatTurns(sequence.turns)).toBe(turns)
})

test.each([
  ['A', 3, 'A^3'],
  ['A', 1, 'A'],
  ['A^2', 2, '(A^2)^2'],
  ["F A F'", 2, "(F A F')^2"],
  ['(F A)', 2, '(F A)^2'],
  ['R', 2, '(R)^2'],
])('[BK1] %s done %i times is spelt %s', (written, nTimes, spelt) => {
  const text = `book T\npart A = U R\nstage 4\n`
  const sequence = bookOf(text + written).stages[4][0]
  expect(formatRepeated(sequence.written, nTimes)).toBe(spelt)
  const again = bookOf(text + spelt).stages[4][0]
  expect(again.turns).toEqual(Array.from({ length: nTimes }, () => sequence.turns).flat())
  expect(formatWritten(again.written)).toBe(spelt)
})

const HEAD = "book T\npart A = U R U' R'\n"
const LONG_PART = `part L = ${'R '.repeat(limits.SEQUENCE_TURNS_MAX)}\n`
const manyLines = (line: (index: number) => string, count: number) =>
  Array.from({ length: count }, (_, i) => line(i)).join('\n')

const FAULTS: Array<[BookTextCode, string, line: number, column: number, token: string, max?: number]> = [
  ['book/text-too-long', ' '.repeat(limits.BOOK_TEXT_MAX + 1), 1, 1, '', limits.BOOK_TEXT_MAX],
  ['book/too-many-lines', '\n'.repeat(limits.BOOK_LINES_MAX), limits.BOOK_LINES_MAX + 1, 1, '', limits.BOOK_LINES_MAX],
  ['book/no-title', '', 1, 1, ''],
  ['book/no-title', '# only this', 1, 1, ''],
  ['book/no-title', '\n  book # T', 2, 3, 'book'],
  ['book/no-title', '\n stage 4', 2, 2, 'stage'],
  ['book/title-too-long', `book ${'T'.repeat(limits.BOOK_TITLE_MAX + 1)}`, 1, 6, 'T'.repeat(32), limits.BOOK_TITLE_MAX],
  ['book/title-unseen', 'book T\tU', 1, 7, ''],
  // Whatever follows would be shown from right to left.
  ['book/title-unseen', 'book Two \u202Etriggers', 1, 10, ''],
  ['book/title-unseen', 'book \u2067T\u2069', 1, 6, ''],
  ['book/title-unseen', 'book T\u2028U', 1, 7, ''],
  ['book/title-unseen', 'book T\u0000', 1, 7, ''],
  ['book/title-twice', 'book T\n  book U', 2, 3, 'book'],
  ['book/bad-name', 'book T\npart', 2, 5, '', limits.PART_NAME_MAX],
  ['book/bad-name', 'book T\npart = R', 2, 6, '', limits.PART_NAME_MAX],
  ['book/bad-name', 'book T\npart 3A = R', 2, 6, '3A', limits.PART_NAME_MAX],
  ['book/bad-name', 'book T\npart A^2 = R', 2, 6, 'A^2', limits.PART_NAME_MAX],
  ['book/bad-name', 'book T\npart stage = R', 2, 6, 'stage', limits.PART_NAME_MAX],
  [
    'book/bad-name',
    `book T\npart ${'a'.repeat(limits.PART_NAME_MAX + 1)} = R`,
    2,
    6,
    'a'.repeat(25),
    limits.PART_NAME_MAX,
  ],
  // A mark that is not seen: it would be another name that looks the same.
  ['book/bad-name', 'book T\npart A\uFE0F = R', 2, 6, 'A\uFE0F', limits.PART_NAME_MAX],
  // Cyrillic and Greek letters that look like A, B, M and U; letters of two scripts; a full-width U.
  ['book/name-not-latin', `${HEAD}part \u0410 = R`, 3, 6, '\u0410'],
  ['book/name-not-latin', 'book T\npart \u0392 = R', 2, 6, '\u0392'],
  ['book/name-not-latin', 'book T\npart \u041C2 = R', 2, 6, '\u041C2'],
  ['book/name-not-latin', 'book T\npart \u0410B = R', 2, 6, '\u0410B'],
  ['book/name-not-latin', 'book T\npart \uFF35 = R', 2, 6, '\uFF35'],
  ['book/name-is-turns', 'book T\npart Rw = U', 2, 6, 'Rw'],
  ['book/name-is-turns', 'book T\npart x = U', 2, 6, 'x'],
  ['book/name-is-turns', 'book T\npart BULL = U', 2, 6, 'BULL'],
  ['book/name-like-turn', 'book T\npart u = R', 2, 6, 'u'],
  ['book/name-like-turn', 'book T\npart X = R', 2, 6, 'X'],
  ['book/name-like-turn', 'book T\npart m = R', 2, 6, 'm'],
  ['book/name-like-turn', 'book T\npart r2 = U', 2, 6, 'r2'],
  ['book/name-like-turn', 'book T\npart rw = U', 2, 6, 'rw'],
  // U with the mark that looks like a prime, typed as one character and as two.
  ['book/name-like-turn', 'book T\npart \u00DA = R', 2, 6, '\u00DA'],
  ['book/name-like-turn', 'book T\npart U\u0301 = R', 2, 6, 'U\u0301'],
  ['book/name-taken', `${HEAD}part A = R`, 3, 6, 'A'],
  ['book/name-taken', 'book T\npart \u00C4 = R\npart A\u0308 = U', 3, 6, 'A\u0308'],
  [
    'book/too-many-parts',
    `book T\n${manyLines((i) => `part p${i} = R`, limits.BOOK_PARTS_MAX + 1)}`,
    42,
    6,
    'p40',
    limits.BOOK_PARTS_MAX,
  ],
  ['book/part-after-stage', 'book T\nstage 4\n part A = R', 3, 2, 'part'],
  ['book/part-without-turns', 'book T\npart A', 2, 6, 'A'],
  ['book/part-without-turns', 'book T\npart A R U', 2, 6, 'A'],
  ['book/part-without-turns', 'book T\npart A = # later', 2, 6, 'A'],
  ['book/part-not-yet', 'book T\npart A = R A', 2, 12, 'A'],
  ['book/part-not-yet', 'book T\npart A = R C^2\npart C = U', 2, 12, 'C'],
  ['book/part-not-yet', "book T\npart A = R B R'\npart B = U", 2, 12, 'B'],
  ['book/hidden-turn', "book T\npart B = U' L' U L\nstage 4\n  R B2 R'", 4, 5, 'B2'],
  ['book/hidden-turn', "book T\npart B = U' L' U L\nstage 4\n  RBw", 4, 3, 'RBw'],
  ['book/unknown-stage', 'book T\nstage 8', 2, 7, '8'],
  ['book/unknown-stage', 'book T\nstage', 2, 6, ''],
  ['book/unknown-stage', 'book T\nstage 4 F', 2, 7, '4 F'],
  ['book/stage-twice', 'book T\nstage 4\nstage 5\n stage  4', 4, 9, '4'],
  [
    'book/too-many-sequences',
    `book T\nstage 4\n${manyLines(() => ' R', limits.STAGE_SEQUENCES_MAX + 1)}`,
    63,
    2,
    'R',
    limits.STAGE_SEQUENCES_MAX,
  ],
  ['book/outside-stage', `${HEAD} F A`, 3, 2, 'F'],
  ['book/unknown-word', `${HEAD}stage 4\n  F  C A`, 4, 6, 'C'],
  ['book/unknown-word', `${HEAD}stage 4\n  FRQR`, 4, 4, 'RQ'],
  ['book/unknown-word', `${HEAD}stage 4\n  r`, 4, 3, 'r'],
  ['book/unknown-word', `${HEAD}stage 4\n  R R3 U`, 4, 5, 'R3'],
  ['book/unknown-word', `${HEAD}stage 4\n  A2`, 4, 3, 'A2'],
  ['book/unknown-word', `${HEAD}stage 4\n  ^2`, 4, 3, '^2'],
  // It might mean "R U twice, then Rw".
  ['book/unknown-word', `${HEAD}stage 4\n  (R U)2Rw`, 4, 8, '2Rw'],
  ['book/unknown-word', `${HEAD}stage 4\n  F (R U)2`, 4, 10, '2'],
  ['book/unknown-word', `${HEAD}stage 4\n  (R (U))2Rw2 F`, 4, 10, '2Rw2'],
  ['book/lonely-bracket', `${HEAD}stage 4\n  R (U (F) R`, 4, 5, '('],
  ['book/lonely-bracket', `${HEAD}stage 4\n  R U)^2`, 4, 6, ')^2'],
  ['book/empty-brackets', `${HEAD}stage 4\n  R ( )^2`, 4, 5, '('],
  ['book/too-deep', `${HEAD}stage 4\n  (((((R)))))`, 4, 7, '(', limits.BRACKET_DEPTH_MAX],
  ['book/bad-power', `${HEAD}stage 4\n  A^0`, 4, 4, '^0', limits.POWER_MAX],
  ['book/bad-power', `${HEAD}stage 4\n  A^`, 4, 4, '^', limits.POWER_MAX],
  ['book/bad-power', `${HEAD}stage 4\n  A^-1`, 4, 4, '^-1', limits.POWER_MAX],
  ['book/bad-power', `${HEAD}stage 4\n  (R U)^${limits.POWER_MAX + 1}`, 4, 8, '^21', limits.POWER_MAX],
  ['book/power-of-turns', `${HEAD}stage 4\n  U R^2`, 4, 5, 'R^2'],
  [
    'book/too-many-turns',
    `book T\npart L = ${'R '.repeat(limits.SEQUENCE_TURNS_MAX + 1)}`,
    2,
    410,
    'R',
    limits.SEQUENCE_TURNS_MAX,
  ],
  ['book/too-many-turns', `book T\n${LONG_PART}stage 4\n L U`, 4, 4, 'U', limits.SEQUENCE_TURNS_MAX],
  ['book/too-many-turns', `book T\n${LONG_PART}stage 4\n L^2`, 4, 2, 'L^2', limits.SEQUENCE_TURNS_MAX],
  ['book/too-many-turns', `book T\npart A = ${'RU'.repeat(150)}`, 2, 10, 'RU'.repeat(16), limits.SEQUENCE_TURNS_MAX],
]

test.each(FAULTS)(
  '[BK2] %1$s is said of line %3$i, column %4$i, token %5$j',
  (code, text, line, column, token, max) => {
    const error = { code, line, column, token, ...(max === undefined ? {} : { max }) }
    expect(parseBook(text)).toEqual({ ok: false, error })
  },
)

test('[BK2] every code has a text that shows it', () => {
  expect(new Set(FAULTS.map(([code]) => code))).toEqual(new Set(BOOK_TEXT_CODES))
})

test('[BK2] what is just within the limits is read', () => {
  expect(parseBook(`book ${'T'.repeat(limits.BOOK_TITLE_MAX)}`).ok).toBe(true)
  expect(parseBook(`book T\n${LONG_PART}stage 4\n L`).ok).toBe(true)
  expect(parseBook(`${HEAD}stage 4\n ((((R))))^${limits.POWER_MAX}`).ok).toBe(true)
  expect(parseBook(`book T\nstage 4\n${manyLines(() => ' R', limits.STAGE_SEQUENCES_MAX)}`).ok).toBe(true)
})

test('[BK10] a name is the same however its letters are typed, and a title may be in any script', () => {
  const text =
    'book \u0414\u0432\u0430 \u05D0\u05D1 \uD83C\uDDE8\uD83C\uDDED\npart a\u0308\u0331 = U R\nstage 4\n \u00E4\u0331^2 F a\u0331\u0308'
  const book = bookOf(text)
  expect(formatTurns(book.stages[4][0].turns)).toBe('U R U R F U R')
  expect(book.parts[0].name).toBe('a\u0331\u0308'.normalize('NFC'))
  expect(parseBook(formatBook(book))).toEqual({ ok: true, value: book })
})

test('[BK10] no name that is accepted passes for a turn, whatever its case, marks and script', () => {
  const letters = fc.constantFrom(
    ...'URFDLBMESXYZurfdlbmesxyzwAK2',
    '\u0410',
    '\u0392',
    '\u0301',
    '\u0308',
    '\u00DA',
    '\uFF35',
    '\u216C',
  )
  fc.assert(
    fc.property(fc.array(letters, { minLength: 1, maxLength: 3 }), (name) => {
      const word = name.join('')
      if (!parseBook(`book T\npart ${word} = R`).ok) return
      const plain = word.normalize('NFKD').replace(/\p{M}/gu, '')
      expect(plain).toMatch(/^[A-Za-z][A-Za-z0-9]*$/u)
      const turn = /^([URFDLB]w?|[MESXYZxyz])2?$/u
      if (word.length > 1 || !/^[URFDLB]$/u.test(word)) expect(plain.toUpperCase().replace('W', 'w')).not.toMatch(turn)
    }),
    { seed: SEED, numRuns: 3000 },
  )
})

test('[BK3] no text makes the reader throw, what it reads can be written and read again, and a fault is where it says', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        aNearlyBookText,
        aNearlyBookText.map((text) => `book T\n${text}`),
        fc.string(),
      ),
      (text) => {
        const book = parseBook(text)
        if (book.ok) {
          expect(parseBook(formatBook(book.value))).toEqual(book)
          return
        }
        const { line, column, code, token } = book.error
        expect(BOOK_TEXT_CODES).toContain(code)
        const row = text.split(/\r\n|\r|\n/u)[line - 1] ?? ''
        expect(column).toBeLessThanOrEqual(row.length + 1)
        expect(row.slice(column - 1).startsWith(token)).toBe(true)
      },
    ),
    { seed: SEED, numRuns: 3000 },
  )
})
