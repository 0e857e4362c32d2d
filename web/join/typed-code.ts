/** What is kept of a typed or pasted room code: letters, large, at most six; figures stay, for they may be look-alikes. */

import { ROOM_CODE_LENGTH } from '../../engine/contest/room-code.ts'

export function keepCodeLetters(typed: string): string {
  return typed
    .toUpperCase()
    .replace(/[^A-Z0-9]/g, '')
    .slice(0, ROOM_CODE_LENGTH)
}

/** The code of a pasted address such as `http://192.0.2.7:3000/RAMKET`, or the text as it is. */
export function codeInPastedText(text: string): string {
  const path = /^https?:\/\/[^/]+\/([^/?#]+)/i.exec(text.trim())
  return keepCodeLetters(path === null ? text : path[1])
}
