/** Writes a sequence book as text, in one spelling. The pair of `parse-book.ts`, which reads it back as the same book. */

import { turnName } from '../../cube/turns.ts'
import type { SequenceBook, WrittenItem } from '../sequence-book.ts'
import { STAGES } from '../stages.ts'

/** @returns the text, each line ended by a line feed; stages without sequences are left out */
export function formatBook({ title, parts, stages }: SequenceBook): string {
  const lines = [
    `book ${title}`,
    ...parts.map(({ name, written }) => `part ${name} = ${formatWritten(written)}`),
    ...STAGES.filter((stage) => stages[stage].length > 0).flatMap((stage) => [
      `stage ${stage}`,
      ...stages[stage].map(({ written }) => `  ${formatWritten(written)}`),
    ]),
  ]
  return `${lines.join('\n')}\n`
}

/** @returns the book's own spelling of a sequence: `L' A^2 L`, `(R U R' U')^3` */
export function formatWritten(written: readonly WrittenItem[]): string {
  return written.map(formatItem).join(' ')
}

/** @returns a sequence done several times in a row, as a book would write it: `A^3`, `(A y B)^2` */
export function formatRepeated(written: readonly WrittenItem[], times: number): string {
  if (times === 1) return formatWritten(written)
  const [only] = written
  const isSingle = written.length === 1 && only.kind !== 'turn' && only.power === 1
  return formatItem(isSingle ? { ...only, power: times } : { kind: 'group', items: written, power: times })
}

function formatItem(item: WrittenItem): string {
  switch (item.kind) {
    case 'turn':
      return turnName(item.turn)
    case 'part':
      return withPower(item.name, item.power)
    case 'group':
      return withPower(`(${formatWritten(item.items)})`, item.power)
  }
}

function withPower(text: string, power: number): string {
  return power === 1 ? text : `${text}^${power}`
}
