/**
 * Reads the text of a sequence book, line by line. The pair of `format-book.ts`.
 *
 *     book Two triggers        # the first line: a title; from `#` on a line is a comment
 *     part A = U R U' R'       # a part uses turns and the parts above it
 *     part B = U' L' U L
 *     stage 4                  # then the stages, in any order, each once
 *       F A F'                 # one sequence a line; how far it is indented says nothing
 *     stage 5
 *       A^3 y B^3
 *
 * What a part may be called: `part-name.ts`. Where a single face letter is a name, no turn of that face may stand anywhere
 * in the book, so that nothing can be misread.
 */

import type { Turn } from '../../cube/turns.ts'
import { ok, type Result } from '../../result.ts'
import type { BookPart, BookSequence, SequenceBook } from '../sequence-book.ts'
import { STAGES, type Stage } from '../stages.ts'
import { type BookTextFault, bookTextFault } from './book-text-fault.ts'
import {
  BOOK_LINES_MAX,
  BOOK_PARTS_MAX,
  BOOK_TEXT_MAX,
  BOOK_TITLE_MAX,
  PART_NAME_MAX,
  STAGE_SEQUENCES_MAX,
} from './limits.ts'
import { parseSequence } from './parse-sequence.ts'
import { partName, partNameFault } from './part-name.ts'

/** A line that says something: its first word, what follows, and where both begin. */
type Line = {
  readonly line: number
  readonly column: number
  readonly word: string
  readonly rest: string
  readonly restColumn: number
}

/** What was read so far. */
type Draft = {
  title: string | undefined
  readonly parts: BookPart[]
  readonly turnsOf: Map<string, readonly Turn[]>
  readonly allNames: ReadonlySet<string>
  readonly stages: Record<Stage, BookSequence[]>
  readonly stagesSeen: Set<Stage>
  stage: Stage | undefined
}

type Refusal = Result<never, BookTextFault> | undefined

/** Control characters, ends of line within a line, and what turns the direction of writing round, unseen. */
const UNSEEN_IN_TITLE = /[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/u

/**
 * @param text lines ended in any of the three usual ways
 * @returns the book as written, not yet checked for what its sequences do (`check-book.ts`), or the first fault
 */
export function parseBook(text: string): Result<SequenceBook, BookTextFault> {
  const nowhere = { line: 1, column: 1, token: '' }
  if (text.length > BOOK_TEXT_MAX) return bookTextFault('book/text-too-long', nowhere, BOOK_TEXT_MAX)
  const rows = text.split(/\r\n|\r|\n/u)
  if (rows.length > BOOK_LINES_MAX) {
    return bookTextFault('book/too-many-lines', { ...nowhere, line: BOOK_LINES_MAX + 1 }, BOOK_LINES_MAX)
  }
  const lines = rows.flatMap(readLine)
  const draft = emptyDraft(lines)
  for (const line of lines) {
    const fault = takeLine(draft, line)
    if (fault !== undefined) return fault
  }
  const { title, parts, stages } = draft
  return title === undefined ? bookTextFault('book/no-title', nowhere) : ok({ title, parts, stages })
}

function readLine(row: string, index: number): Line[] {
  const [said] = row.split('#', 1)
  const found = /^(\s*)(\S+)(\s*)(.*)$/su.exec(said.trimEnd())
  if (found === null) return []
  const [, indent, word, gap, rest] = found
  const column = indent.length + 1
  return [{ line: index + 1, column, word, rest, restColumn: column + word.length + gap.length }]
}

function emptyDraft(lines: readonly Line[]): Draft {
  return {
    title: undefined,
    parts: [],
    turnsOf: new Map(),
    allNames: new Set(lines.flatMap(({ word, rest }) => (word === 'part' ? [partName(wordIn(rest))] : []))),
    stages: { 1: [], 2: [], 3: [], 4: [], 5: [], 6: [], 7: [] },
    stagesSeen: new Set(),
    stage: undefined,
  }
}

function takeLine(draft: Draft, line: Line): Refusal {
  if (draft.title === undefined) return takeTitle(draft, line)
  if (line.word === 'book') return bookTextFault('book/title-twice', placeOf(line))
  if (line.word === 'part') return takePart(draft, line)
  if (line.word === 'stage') return takeStage(draft, line)
  return takeSequence(draft, line)
}

function takeTitle(draft: Draft, line: Line): Refusal {
  if (line.word !== 'book' || line.rest === '') return bookTextFault('book/no-title', placeOf(line))
  if (line.rest.length > BOOK_TITLE_MAX) return bookTextFault('book/title-too-long', restOf(line), BOOK_TITLE_MAX)
  const unseenAt = line.rest.search(UNSEEN_IN_TITLE)
  if (unseenAt >= 0)
    return bookTextFault('book/title-unseen', { ...restOf(line), column: line.restColumn + unseenAt, token: '' })
  draft.title = line.rest
  return undefined
}

function takePart(draft: Draft, line: Line): Refusal {
  const word = wordIn(line.rest)
  const name = partName(word)
  const place = { ...restOf(line), token: word }
  if (draft.stage !== undefined) return bookTextFault('book/part-after-stage', placeOf(line))
  const code = partNameFault(name)
  if (code !== undefined) return bookTextFault(code, place, code === 'book/bad-name' ? PART_NAME_MAX : undefined)
  if (draft.turnsOf.has(name)) return bookTextFault('book/name-taken', place)
  if (draft.parts.length === BOOK_PARTS_MAX) return bookTextFault('book/too-many-parts', place, BOOK_PARTS_MAX)
  const found = /^(\s*=\s*)(\S.*)$/su.exec(line.rest.slice(word.length))
  if (found === null) return bookTextFault('book/part-without-turns', place)
  const at = { line: line.line, column: line.restColumn + word.length + found[1].length }
  const read = parseSequence(found[2], at, draft)
  if (!read.ok) return read
  draft.parts.push({ name, ...read.value })
  draft.turnsOf.set(name, read.value.turns)
  return undefined
}

function takeStage(draft: Draft, line: Line): Refusal {
  const stage = STAGES.find((each) => String(each) === line.rest)
  if (stage === undefined) return bookTextFault('book/unknown-stage', restOf(line))
  if (draft.stagesSeen.has(stage)) return bookTextFault('book/stage-twice', restOf(line))
  draft.stagesSeen.add(stage)
  draft.stage = stage
  return undefined
}

function takeSequence(draft: Draft, line: Line): Refusal {
  if (draft.stage === undefined) return bookTextFault('book/outside-stage', placeOf(line))
  const sequences = draft.stages[draft.stage]
  if (sequences.length === STAGE_SEQUENCES_MAX) {
    return bookTextFault('book/too-many-sequences', placeOf(line), STAGE_SEQUENCES_MAX)
  }
  const text = line.word.padEnd(line.restColumn - line.column) + line.rest
  const read = parseSequence(text, line, draft)
  if (!read.ok) return read
  sequences.push(read.value)
  return undefined
}

function wordIn(rest: string): string {
  return rest.split(/[\s=]/u, 1)[0]
}

function placeOf({ line, column, word }: Line) {
  return { line, column, token: word }
}

function restOf({ line, restColumn, rest }: Line) {
  return { line, column: restColumn, token: rest }
}
