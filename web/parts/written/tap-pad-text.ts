/** What a key of the tap pad does to the text. The pad and the keyboard write one text, the pad at its end. Pure. */

import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { LEFT_TRIGGER, RIGHT_TRIGGER } from '../../../engine/method/sequence-book.ts'

/** Letters begin a turn. */
export const PAD_LETTERS = ['U', 'R', 'F', 'D', 'L', 'B', 'M', 'E', 'S', 'x', 'y', 'z'] as const
/** Endings change the turn that was written last. */
export const PAD_ENDINGS = ["'", '2', 'w'] as const
export type PadKey = (typeof PAD_LETTERS)[number] | (typeof PAD_ENDINGS)[number] | 'left' | 'right' | 'erase'

const TRIGGER_TEXTS = { left: formatTurns(LEFT_TRIGGER), right: formatTurns(RIGHT_TRIGGER) } as const

/** The last turn as it is written: letter, w, ending. */
const LAST_TURN = /([URFDLBMESxyz])(w?)(2?['’]?)\s*$/

export function withPadKey(text: string, key: PadKey): string {
  switch (key) {
    case 'erase':
      return withoutLast(text)
    case 'left':
    case 'right':
      return `${begun(text)}${TRIGGER_TEXTS[key]}`
    case "'":
    case '2':
    case 'w':
      return withEnding(text, key)
    default:
      return `${begun(text)}${key}`
  }
}

/** An ending is put on, or taken off when it is there already; a quarter turn back and a half turn exclude each other. */
function withEnding(text: string, key: "'" | '2' | 'w'): string {
  const last = LAST_TURN.exec(text)
  if (last === null) return text
  const [all, letter, wide, amount] = last
  const before = text.slice(0, text.length - all.length)
  if (key !== 'w') return `${before}${letter}${wide}${amount.replace('’', "'") === key ? '' : key}`
  // Only an outer layer can be turned together with the one beside it.
  if (!/[URFDLB]/.test(letter)) return text
  return `${before}${letter}${wide === '' ? 'w' : ''}${amount}`
}

function withoutLast(text: string): string {
  const last = LAST_TURN.exec(text)
  // What is no turn goes letter by letter, or a slip would take a whole line along.
  return last === null ? text.trimEnd().slice(0, -1) : text.slice(0, text.length - last[0].length).trimEnd()
}

function begun(text: string): string {
  return text === '' || /[\s(]$/.test(text) ? text : `${text} `
}
