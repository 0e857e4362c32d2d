/**
 * Reads a key of the keyboard. Pure: what the key means, never what it does.
 * Letters are the turns' own: U R F D L B, M E S, x y z; with Shift the other way round. `2` before a letter makes it
 * a half turn.
 */

import { type Turn, type TurnName, turnOf } from '../../../engine/cube/turns.ts'

export type Shortcut =
  | { readonly kind: 'turn'; readonly turn: Turn }
  | { readonly kind: 'trigger'; readonly side: 'left' | 'right' }
  | { readonly kind: 'half-next' }
  | { readonly kind: 'drop' }
  | { readonly kind: 'take-back' }
  | { readonly kind: 'look'; readonly pitch: -1 | 0 | 1; readonly yaw: -1 | 0 | 1 }
  | { readonly kind: 'look-from-front' }
  | { readonly kind: 'hint' }

export type PressedKey = {
  readonly key: string
  /** The place on the keyboard, for alphabets other than the Latin one. */
  readonly code: string
  readonly shiftKey: boolean
  readonly ctrlKey: boolean
  readonly altKey: boolean
  readonly metaKey: boolean
  /** Held down. A held key looks on around the cube, but never turns twice. */
  readonly repeat: boolean
}

const CAPITAL_TURNS = ['U', 'R', 'F', 'D', 'L', 'B', 'M', 'E', 'S'] as const
const SMALL_TURNS = ['X', 'Y', 'Z'] as const

const OTHERS: Readonly<Record<string, Shortcut>> = {
  '1': { kind: 'trigger', side: 'left' },
  '2': { kind: 'half-next' },
  '3': { kind: 'trigger', side: 'right' },
  '0': { kind: 'look-from-front' },
  H: { kind: 'hint' },
  BACKSPACE: { kind: 'take-back' },
  ESCAPE: { kind: 'drop' },
  ARROWLEFT: { kind: 'look', pitch: 0, yaw: -1 },
  ARROWRIGHT: { kind: 'look', pitch: 0, yaw: 1 },
  ARROWUP: { kind: 'look', pitch: 1, yaw: 0 },
  ARROWDOWN: { kind: 'look', pitch: -1, yaw: 0 },
}

/** @returns what the key means on the bench, or null when it means nothing there */
export function readShortcut(pressed: PressedKey, halfNext: boolean): Shortcut | null {
  if (pressed.ctrlKey || pressed.altKey || pressed.metaKey) return null
  const name = keyName(pressed)
  const other = OTHERS[name]
  if (other !== undefined) return pressed.repeat && other.kind !== 'look' ? null : other
  if (pressed.repeat) return null
  const letters = CAPITAL_TURNS.find((letter) => letter === name) ?? SMALL_TURNS.find((letter) => letter === name)
  if (letters === undefined) return null
  const plain = (SMALL_TURNS as readonly string[]).includes(letters) ? letters.toLowerCase() : letters
  const amount = halfNext ? '2' : pressed.shiftKey ? "'" : ''
  return { kind: 'turn', turn: turnOf(`${plain}${amount}` as TurnName) }
}

/** The key in capitals; where the alphabet has no such letter or the figures need Shift, the key at that place. */
function keyName({ key, code }: PressedKey): string {
  const name = key.toUpperCase()
  if (/^([A-Z0-9]|[A-Z]{3,})$/.test(name)) return name
  return /^(Key|Digit|Numpad)([A-Z0-9])$/.exec(code)?.[2] ?? name
}
