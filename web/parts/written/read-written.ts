/** Reads what a child has written so far: the turns up to the first token that is none, and what is the matter with that. Pure. */

import { TRY_STEPS_MAX } from '../../../engine/contest/limits.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import type { Turn } from '../../../engine/cube/turns.ts'

/** What is the matter with a token, as far as it can be told. */
export type WrittenFaultKind =
  /** It would be a turn with its letter in the other case: `correct` is how. */
  | 'letter-case'
  /** A number other than 2. */
  | 'number'
  /** A round bracket without its other half, or a number behind one. */
  | 'bracket'
  /** It can be read in two ways, such as R2Rw. */
  | 'two-ways'
  | 'too-many'
  | 'unknown'

export type WrittenFault = {
  readonly kind: WrittenFaultKind
  /** The characters of the text that are to blame: the first, and the one behind the last. */
  readonly from: number
  readonly to: number
  readonly token: string
  /** How it may have been meant; null where nobody can tell. */
  readonly correct: string | null
}

export type WrittenText = {
  /** All turns, or those before the fault. */
  readonly turns: readonly Turn[]
  readonly fault: WrittenFault | null
}

/** @param text turns in the notation of the competition regulations, leniently spelled */
export function readWritten(text: string): WrittenText {
  const read = parseTurns(text, TRY_STEPS_MAX)
  if (read.ok) return { turns: read.value, fault: null }
  if (read.error.code === 'cube/too-many-turns') {
    const fault = { kind: 'too-many', from: 0, to: text.length, token: String(read.error.max), correct: null } as const
    return { turns: [], fault }
  }
  const { token, at } = read.error
  return { turns: turnsBefore(text, at), fault: { ...whatIsWrong(token), from: at, to: at + token.length, token } }
}

/** Brackets only group, and one that is still open must not hide the turns behind it. */
function turnsBefore(text: string, at: number): Turn[] {
  const read = parseTurns(text.slice(0, at).replaceAll(/[()]/g, ' '), TRY_STEPS_MAX)
  return read.ok ? read.value : []
}

function whatIsWrong(token: string): Pick<WrittenFault, 'kind' | 'correct'> {
  if (/[()]/.test(token)) return { kind: 'bracket', correct: null }
  const correct = inOtherCase(token)
  if (correct !== null) return { kind: 'letter-case', correct }
  if (/^2?[URFDLBMESxyz]w?2[URFDLB]w/.test(token)) return { kind: 'two-ways', correct: null }
  if (/[013-9]|2.*2/.test(token)) return { kind: 'number', correct: null }
  return { kind: 'unknown', correct: null }
}

/** `r` may be meant as R, `X` as x, `UW` as Uw. */
function inOtherCase(token: string): string | null {
  const spelled = /[xyz]/i.test(token) ? token.toLowerCase() : token.toUpperCase().replace('W', 'w')
  return spelled !== token && parseTurns(spelled).ok ? spelled : null
}
