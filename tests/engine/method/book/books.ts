/** Sequence books for tests: texts read at once, and what fast-check draws. */

import fc from 'fast-check'
import { TURN_NAMES } from '../../../../engine/cube/turns.ts'
import { POWER_MAX } from '../../../../engine/method/book/limits.ts'
import { parseBook } from '../../../../engine/method/book/parse-book.ts'
import type { SequenceBook } from '../../../../engine/method/sequence-book.ts'

/** @returns the book of a text; throws where the row of a test is misspelt */
export function bookOf(text: string): SequenceBook {
  const book = parseBook(text)
  if (!book.ok) throw new Error(`${text} is misspelt: ${JSON.stringify(book.error)}`)
  return book.value
}

/** Names that are no turns, and no word of the grammar. */
const PART_NAMES = ['Ä', 'three-3', 'rechts', 'A', 'out', 'K9'] as const

const aTurnWord = fc.constantFrom(...TURN_NAMES)
const aPower = fc.integer({ min: 1, max: 4 }).map((power) => (power === 1 ? '' : `^${power}`))

/** Written sequences that use the first `nParts` names. */
function aSequence(nParts: number): fc.Arbitrary<string> {
  const aWord =
    nParts === 0
      ? aTurnWord
      : fc.oneof(
          aTurnWord,
          fc.tuple(fc.constantFrom(...PART_NAMES.slice(0, nParts)), aPower).map((both) => both.join('')),
        )
  const words = fc.array(aWord, { minLength: 1, maxLength: 4 }).map((list) => list.join(' '))
  const group = fc.tuple(words, words, aPower).map(([first, second, power]) => `${first} ( ${second} )${power}`)
  const clinging = fc.tuple(words, words, words).map(([first, second, third]) => `${first}(${second})${third}`)
  return fc.oneof(words, group, clinging)
}

/** Texts of well-formed books, in no particular layout. */
export const aBookText: fc.Arbitrary<string> = fc
  .tuple(
    fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9 .!]{0,20}[a-z]$/u),
    fc.tuple(...[0, 1, 2].map(aSequence)),
    fc.shuffledSubarray([1, 2, 3, 4, 5, 6, 7]),
    fc.array(fc.array(aSequence(3), { maxLength: 3 }), { minLength: 7, maxLength: 7 }),
    fc.constantFrom('\n', '\r\n', '\r', '  # said\n\n \t'),
  )
  .map(([title, parts, stages, sequences, lineEnd]) =>
    [
      `book ${title}`,
      ...parts.map((part, index) => `part ${PART_NAMES[index]} = ${part}`),
      ...stages.flatMap((stage) => [`stage ${stage}`, ...sequences[stage - 1].map((sequence) => `\t${sequence}`)]),
    ].join(lineEnd),
  )
  .filter((text) => parseBook(text).ok || !JSON.stringify(parseBook(text)).includes('too-many-turns'))

/** Lines that look like those of a book, right or wrong. */
export const aNearlyBookText: fc.Arbitrary<string> = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        'book T',
        'part A = U R',
        'part B = A^2',
        'stage 4',
        'stage 9',
        'A^',
        '(',
        ')^3',
        '(R (U',
        'B',
        '# x',
      ),
      fc
        .array(
          fc.constantFrom(
            'A',
            'B',
            '(',
            ')',
            '^',
            '2',
            "R'",
            'Rw',
            'x',
            ' ',
            '=',
            'stage',
            'part',
            `^${POWER_MAX + 1}`,
          ),
          {
            maxLength: 8,
          },
        )
        .map((words) => words.join('')),
      fc.string({ unit: 'binary', maxLength: 12 }),
    ),
    { maxLength: 8 },
  )
  .map((lines) => lines.join('\n'))

/** A third book for stage 4: more than one sequence for each shape, so that much depends on the hold that is taken. */
export const FIVE_FOR_THE_CROSS = bookOf(`book Five for the cross
stage 4
F R U R' U' F'
F U R U' R' F'
R U B U' B' R'
B U L U' L' B'
L U F U' F' L'
`)

/** A teacher who knows only how to get an edge down that faces up: the others go round. */
export const ROUNDABOUT = bookOf("book Roundabout\nstage 1\nF2\nR U R'")
