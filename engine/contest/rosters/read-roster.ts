/**
 * Reads a class from text: typed, pasted from a table, or a CSV file. One name a line, several between commas, or a table
 * with a column of names. Nothing is lost: whatever is not taken is named with its place, and often with a way out.
 */

import { NAME_LENGTH_MAX } from '../limits.ts'
import { nameKey, readStudentName } from '../student-name.ts'
import { ROSTER_PUPILS_MAX, ROSTER_TEXT_LENGTH_MAX } from './limits.ts'
import { type ColumnChoice, columnsOf, nHeadingRows, type RosterColumns } from './roster-columns.ts'
import { looksLikeFullName, shorterName } from './shorter-name.ts'
import { type Cell, splitTable } from './split-table.ts'

/** Where something stands: 1-based line, and 0-based characters of the text, `to` the first behind it. */
export type PlaceInText = { readonly line: number; readonly from: number; readonly to: number }

/** A name that was taken. */
export type ReadName = PlaceInText & {
  readonly name: string
  /** "Ana" or "Ana K." for a name that looks like a full one; null for the others. */
  readonly shorter: string | null
}

/** Why something was not taken. Data: its place, and as it was written. */
export type RosterFault = PlaceInText & { readonly written: string } & (
    | /** Looks rude. Do: choose another. Never says which part. */ { readonly code: 'roster/rude' }
    | /** Something other than letters, figures, spaces, dashes and apostrophes. Do: leave it out. */ {
        readonly code: 'roster/unusual-letters'
      }
    | /** Longer than a lane has room for. Do: take the offer, if there is one, or shorten it. */ {
        readonly code: 'roster/too-long'
        readonly max: number
        readonly offer: string | null
      }
    | /** The name stands in `firstLine` already, or is in the class (null). Do: take the offer, or leave it out. */ {
        readonly code: 'roster/twice'
        readonly firstLine: number | null
        readonly offer: string | null
      }
    | /** The class is full. Do: make another class of the rest. */ {
        readonly code: 'roster/too-many'
        readonly max: number
      }
    | /** A quotation mark is never closed. Do: close it or leave it out. */ { readonly code: 'roster/quote-open' }
    | /** More text than any class. Do: leave out what are no names. */ {
        readonly code: 'roster/too-much-text'
        readonly max: number
      }
  )

/** What was read. */
export type RosterReading = {
  /** In the order of the text. */
  readonly names: readonly ReadName[]
  /** In the order of the text. */
  readonly faults: readonly RosterFault[]
  /** For the teacher to choose from; null where there is nothing to choose. */
  readonly columns: RosterColumns | null
  /** The column that was read; null where there is none to choose. */
  readonly column: ColumnChoice | null
}

/** A cell to be read as a name, and the family name where it stands elsewhere. */
type NameCell = Cell & { readonly family: string }

/**
 * @param text as typed or read from a file
 * @param wish the column the teacher chose; null for the guess
 * @param inClass names that the class has already
 */
export function readRoster(text: string, wish: ColumnChoice | null, inClass: readonly string[]): RosterReading {
  if (text.length > ROSTER_TEXT_LENGTH_MAX) return tooMuch(text)
  const table = splitTable(text)
  const columns = columnsOf(table)
  const column = columns === null ? null : wish !== null && isIn(columns, wish) ? wish : columns.guess
  const rows = table.rows.slice(nHeadingRows(table))
  const cells = rows.flatMap((row) => cellsOf(row, columns, column)).filter((cell) => cell.text !== '')

  const names: ReadName[] = []
  const faults: RosterFault[] = []
  const lineOf = new Map<string, number | null>(inClass.map((name) => [nameKey(name), null]))
  const written = new Set(cells.map((cell) => nameKey(cell.text)))
  // An offer collides neither with what was taken nor with what stands further down.
  const isTaken = (name: string) => lineOf.has(nameKey(name)) || written.has(nameKey(name))
  for (const cell of cells) {
    const read = readCell(cell, lineOf, inClass.length + names.length, isTaken)
    if ('name' in read) {
      names.push(read)
      lineOf.set(nameKey(read.name), read.line)
    } else {
      faults.push(read)
    }
  }
  const { openQuoteLine } = table
  if (openQuoteLine !== null) {
    const inLine = faults.findIndex((fault) => fault.line === openQuoteLine && fault.code === 'roster/unusual-letters')
    if (inLine >= 0) faults[inLine] = { ...placeOf(faults[inLine]), code: 'roster/quote-open' }
  }
  return { names: withShorter(names, cells, lineOf), faults, columns, column }
}

function readCell(
  cell: NameCell,
  lineOf: ReadonlyMap<string, number | null>,
  nSoFar: number,
  isTaken: (name: string) => boolean,
): ReadName | RosterFault {
  const place = placeOf({ ...cell, written: cell.text })
  const offer = () => shorterName(cell.text, cell.family, isTaken)
  const read = readStudentName(cell.text)
  if (!read.ok) {
    switch (read.error.code) {
      case 'name/too-long':
        return { ...place, code: 'roster/too-long', max: NAME_LENGTH_MAX, offer: offer() }
      case 'name/choose-another':
        return { ...place, code: 'roster/rude' }
      case 'name/unusual-letters':
      case 'name/empty':
      case 'name/taken':
        return { ...place, code: 'roster/unusual-letters' }
    }
  }
  const firstLine = lineOf.get(nameKey(read.value))
  if (firstLine !== undefined) return { ...place, code: 'roster/twice', firstLine, offer: offer() }
  if (nSoFar >= ROSTER_PUPILS_MAX) return { ...place, code: 'roster/too-many', max: ROSTER_PUPILS_MAX }
  const { line, from, to } = place
  return { line, from, to, name: read.value, shorter: null }
}

/** The cells of a row that are names. One that says "Koch, Ana" in quotes gives its second half. */
function cellsOf(row: readonly Cell[], columns: RosterColumns | null, column: ColumnChoice | null): NameCell[] {
  const family = columns?.family ?? null
  const chosen = column === null || column === 'all' ? row : row[column] === undefined ? [] : [row[column]]
  return chosen.map((cell) => {
    const [last, given, ...more] = cell.text.split(',')
    if (given !== undefined && given.trim() !== '' && more.length === 0) {
      return { ...cell, text: given.trim(), family: last.trim() }
    }
    return { ...cell, family: family === null || family === column ? '' : (row[family]?.text ?? '') }
  })
}

/** Two who share a given name both take a letter of the family name. */
function withShorter(
  names: readonly ReadName[],
  cells: readonly NameCell[],
  lineOf: ReadonlyMap<string, number | null>,
): ReadName[] {
  const keys = new Set(lineOf.keys())
  const firstKeys = names.map(({ name }) => nameKey(name.split(' ')[0]))
  return names.map((read, index) => {
    if (!looksLikeFullName(read.name)) return read
    const isShared = firstKeys.filter((key) => key === firstKeys[index]).length > 1
    const cell = cells.find(({ from }) => from === read.from)
    const isTaken = (offer: string) =>
      (isShared && nameKey(offer) === firstKeys[index]) || (keys.has(nameKey(offer)) && offer !== read.name)
    const shorter = shorterName(read.name, cell?.family ?? '', isTaken)
    if (shorter !== null) keys.add(nameKey(shorter))
    return { ...read, shorter }
  })
}

function isIn({ samples }: RosterColumns, wish: ColumnChoice): boolean {
  return wish === 'all' || wish < samples.length
}

function placeOf({ line, from, to, written }: PlaceInText & { written: string }) {
  return { line, from, to, written }
}

function tooMuch(text: string): RosterReading {
  const place = { line: 1, from: 0, to: text.length, written: '' }
  const fault = { ...place, code: 'roster/too-much-text', max: ROSTER_TEXT_LENGTH_MAX } as const
  return { names: [], faults: [fault], columns: null, column: null }
}
