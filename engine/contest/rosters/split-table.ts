/**
 * Takes apart a table that was typed, pasted or exported: cells between commas, semicolons or tabs, in quotes where they
 * hold one of these. Each cell knows where it stands, so that a page can point at it and change it in place.
 * Source: Y. Shafranovich, RFC 4180, with any line ends; spaces around a quoted cell are forgiven.
 */

/** What parts the cells of a row; the first of these that stands outside quotes is meant. */
const SEPARATORS = ['\t', ';', ','] as const
/** A tab, a semicolon or a comma. */
export type Separator = (typeof SEPARATORS)[number]

/** A cell and its place. */
export type Cell = {
  /** Without quotes, spaces at its ends and a leading apostrophe that keeps a spreadsheet from reckoning. */
  readonly text: string
  /** 1-based line of the text. */
  readonly line: number
  /** 0-based characters (UTF-16 code units) of the text, quotes included; `to` is the first behind it. */
  readonly from: number
  readonly to: number
}

/** A text as rows of cells; rows without a letter or figure are left out. */
export type Table = {
  readonly rows: readonly (readonly Cell[])[]
  /** Null where no row has more than one cell. */
  readonly separator: Separator | null
  /** Line on which a quote opens that never closes; the rest of that line is then one cell as it stands. */
  readonly openQuoteLine: number | null
}

/** @param text of any length; a byte order mark at its beginning does not matter */
export function splitTable(text: string): Table {
  const separator = separatorOf(text)
  const rows: Cell[][] = [[]]
  let openQuoteLine: number | null = null
  let line = 1
  let at = text.startsWith('\uFEFF') ? 1 : 0
  while (at <= text.length) {
    const from = at
    const { inside, end, isOpen } = readCell(text, at, separator)
    if (isOpen) openQuoteLine ??= line
    const written = text.slice(from, end)
    const indent = written.length - written.trimStart().length
    rows[rows.length - 1].push({
      text: inside.trim().replace(/^'(?=[-=+@])/, ''),
      line,
      from: from + indent,
      to: Math.max(from + indent, from + written.trimEnd().length),
    })
    line += written.match(/\r\n|\r|\n/g)?.length ?? 0
    at = end
    if (text[at] === separator) {
      at += 1
      continue
    }
    if (at >= text.length) break
    at += text.startsWith('\r\n', at) ? 2 : 1
    line += 1
    rows.push([])
  }
  return { rows: rows.filter((row) => row.some((cell) => /[\p{L}\p{N}]/u.test(cell.text))), separator, openQuoteLine }
}

/** @returns the cell that begins here, without its quotes, and where it ends: at a separator, a line end, or the end */
function readCell(text: string, from: number, separator: Separator | null) {
  const quoted = /^[ \t]*"((?:[^"]|"")*)"[ \t]*/.exec(text.slice(from))
  if (quoted !== null && isEnd(text, from + quoted[0].length, separator)) {
    return { inside: quoted[1].replaceAll('""', '"'), end: from + quoted[0].length, isOpen: false }
  }
  let end = from
  while (!isEnd(text, end, separator)) end += 1
  const inside = text.slice(from, end)
  return { inside, end, isOpen: quoted === null && inside.trimStart().startsWith('"') }
}

function isEnd(text: string, at: number, separator: Separator | null): boolean {
  return at >= text.length || text[at] === '\n' || text[at] === '\r' || text[at] === separator
}

function separatorOf(text: string): Separator | null {
  const unquoted = text.replace(/"(?:[^"]|"")*"/g, '')
  return SEPARATORS.find((separator) => unquoted.includes(separator)) ?? null
}
