/**
 * A class as a CSV file that spreadsheets open and `readRoster` reads.
 * Source: RFC 4180; a byte order mark, because spreadsheets take the file for another encoding without it.
 */

import type { ClassRoster } from './class-roster.ts'

const BYTE_ORDER_MARK = '\uFEFF'

/** A spreadsheet takes what begins so for a formula; an apostrophe before it makes it text. */
const FORMULA = /^[-=+@]/

/** @returns one column with the heading "name"; lines end as the RFC has it */
export function formatRosterCsv({ pupils }: Pick<ClassRoster, 'pupils'>): string {
  const lines = ['name', ...pupils.map(({ name }) => cell(name))]
  return `${BYTE_ORDER_MARK}${lines.join('\r\n')}\r\n`
}

function cell(text: string): string {
  const guarded = FORMULA.test(text) ? `'${text}` : text
  return /[",;\t\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded
}
