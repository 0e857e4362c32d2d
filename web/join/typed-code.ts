/** What is kept of a typed or pasted room code: its letters, large, at most six. A nought is read as the letter O. */

import { ROOM_CODE_LENGTH } from '../../engine/contest/room-code.ts'

export function keepCodeLetters(typed: string): string {
  return typed
    .toUpperCase()
    .replaceAll('0', 'O')
    .replace(/[^A-Z]/g, '')
    .slice(0, ROOM_CODE_LENGTH)
}

/** The code of a pasted address such as `http://192.0.2.7:3000/RAMKET`, or the text as it is. */
export function codeInPastedText(text: string): string {
  const path = /^https?:\/\/[^/]+\/([^/?#]+)/i.exec(text.trim())
  return keepCodeLetters(path === null ? text : path[1])
}
