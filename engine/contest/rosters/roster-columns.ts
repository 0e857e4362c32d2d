/** Which column of a table has the names that a class goes by. A guess that the teacher can change. */

import { nameKey } from '../student-name.ts'
import type { Cell, Table } from './split-table.ts'

/** 0-based column, or every cell: a row may be a list of names. */
export type ColumnChoice = number | 'all'

/** A table's columns, for the teacher to choose from. */
export type RosterColumns = {
  /** By column: what its first line says, where that is a heading, */
  readonly titles: readonly string[] | null
  /** and what stands in the first rows below. */
  readonly samples: readonly (readonly string[])[]
  readonly guess: ColumnChoice
  /** The column of family names, where a heading or the form "Family, Given" says so. */
  readonly family: number | null
}

const N_SAMPLES = 3

/** Headings of school tables, as `nameKey` writes them. Source: common practice of school software, no single source. */
const HEADINGS = {
  nickname: 'nickname nick spitzname rufname apodo mote surnom pseudo pseudonym pseudonyme',
  given:
    'firstname givenname given forename first vorname vornamen nombre nombres nombredepila prenom prenoms prenomdusage',
  whole:
    'name names fullname student students pupil pupils schuler schuelerin schulerin schueler alumno alumna alumnos estudiante eleve eleves nomcomplet nombrecompleto',
  family:
    'lastname surname familyname family last nachname familienname zuname apellido apellidos primerapellido nom nomdefamille',
  other:
    'class klasse clase classe grade group gruppe grupo groupe nr no number nummer numero id email mail correo gender geschlecht sexo sexe birthday dateofbirth geburtsdatum fechadenacimiento datedenaissance',
} as const
type Heading = keyof typeof HEADINGS
const HEADING_OF = new Map<string, Heading>(
  (Object.keys(HEADINGS) as Heading[]).flatMap((heading) =>
    HEADINGS[heading].split(' ').map((word) => [word, heading] as const),
  ),
)
/** What is called a name, the one that children go by first. */
const NAMES_FIRST: readonly Heading[] = ['nickname', 'given', 'whole', 'family']

/** @returns how many rows at the top are headings: 0 or 1 */
export function nHeadingRows({ rows }: Table): 0 | 1 {
  const [first] = rows
  if (first === undefined) return 0
  const nKnown = first.filter((cell) => headingOf(cell) !== undefined).length
  return nKnown > 0 && nKnown * 2 >= first.length ? 1 : 0
}

/** @returns the columns of a table; null for a list of names, one a line or several, where there is nothing to choose */
export function columnsOf(table: Table): RosterColumns | null {
  const nHeadings = nHeadingRows(table)
  const body = table.rows.slice(nHeadings)
  const widths = new Set(body.map((row) => row.length))
  const width = Math.max(...table.rows.map((row) => row.length), 0)
  if (width < 2 || (nHeadings === 0 && (widths.size > 1 || body.length < 2))) return null
  const headings = nHeadings === 0 ? null : Array.from({ length: width }, (_, index) => headingOf(table.rows[0][index]))
  const familyHeading = headings?.indexOf('family') ?? -1
  const isFamilyGiven = headings === null && width === 2 && table.separator === ','
  return {
    titles: nHeadings === 0 ? null : Array.from({ length: width }, (_, index) => table.rows[0][index]?.text ?? ''),
    samples: Array.from({ length: width }, (_, index) =>
      body.slice(0, N_SAMPLES).flatMap((row) => (row[index] === undefined ? [] : [row[index].text])),
    ),
    guess: headings === null ? (isFamilyGiven ? 1 : firstWithLetters(body, width)) : namesIn(headings),
    family: familyHeading >= 0 ? familyHeading : isFamilyGiven ? 0 : null,
  }
}

function headingOf(cell: Cell | undefined): Heading | undefined {
  return cell === undefined ? undefined : HEADING_OF.get(nameKey(cell.text))
}

function namesIn(headings: readonly (Heading | undefined)[]): ColumnChoice {
  for (const heading of NAMES_FIRST) {
    const column = headings.indexOf(heading)
    if (column >= 0) return column
  }
  return 0
}

/** Where every column has letters only, the rows are lists of names; else the first such column has them. */
function firstWithLetters(body: readonly (readonly Cell[])[], width: number): ColumnChoice {
  const hasLetters = (column: number) => body.every((row) => !/\d/.test(row[column].text))
  const columns = Array.from({ length: width }, (_, index) => index).filter(hasLetters)
  return columns.length === width && width > 2 ? 'all' : (columns[0] ?? 0)
}
