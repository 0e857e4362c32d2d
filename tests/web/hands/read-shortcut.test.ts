import { expect, test } from 'vitest'
import { turnName } from '../../../engine/cube/turns.ts'
import { type PressedKey, readShortcut } from '../../../web/parts/hands/read-shortcut.ts'

// Rows: what is pressed, whether 2 was pressed before, the turn.
test.each<[Partial<PressedKey> & { key: string }, boolean, string]>([
  [{ key: 'r' }, false, 'R'],
  [{ key: 'R' }, false, 'R'],
  [{ key: 'R', shiftKey: true }, false, "R'"],
  [{ key: 'b' }, true, 'B2'],
  [{ key: 'B', shiftKey: true }, true, 'B2'],
  [{ key: 'm' }, false, 'M'],
  [{ key: 'S', shiftKey: true }, false, "S'"],
  [{ key: 'x' }, false, 'x'],
  [{ key: 'Z', shiftKey: true }, false, "z'"],
  [{ key: 'y' }, true, 'y2'],
  // A Cyrillic layout: the key at the place of R.
  [{ key: 'к', code: 'KeyR' }, false, 'R'],
])('[BE4] %j after 2: %s is %s', (pressed, halfNext, name) => {
  const shortcut = readShortcut(aKey(pressed), halfNext)
  expect(shortcut?.kind === 'turn' && turnName(shortcut.turn)).toBe(name)
})

test.each<[Partial<PressedKey> & { key: string }, object]>([
  [{ key: '1' }, { kind: 'trigger', side: 'left' }],
  [{ key: '3' }, { kind: 'trigger', side: 'right' }],
  [{ key: '2' }, { kind: 'half-next' }],
  // Figures need Shift on some keyboards.
  [{ key: 'é', code: 'Digit2' }, { kind: 'half-next' }],
  [{ key: 'h' }, { kind: 'hint' }],
  [{ key: 'Backspace' }, { kind: 'take-back' }],
  [{ key: 'Escape' }, { kind: 'drop' }],
  [
    { key: 'ArrowLeft', repeat: true },
    { kind: 'look', pitch: 0, yaw: -1 },
  ],
  [{ key: '0' }, { kind: 'look-from-front' }],
])('[BE4] %j is %j', (pressed, shortcut) => {
  expect(readShortcut(aKey(pressed), false)).toEqual(shortcut)
})

test.each<[Partial<PressedKey> & { key: string }]>([
  [{ key: 'r', ctrlKey: true }],
  [{ key: 'r', altKey: true }],
  [{ key: 'r', metaKey: true }],
  [{ key: 'r', repeat: true }],
  [{ key: 'Backspace', repeat: true }],
  [{ key: 'a' }],
  [{ key: 'Tab', code: 'Tab' }],
  [{ key: 'Enter', code: 'Enter' }],
  [{ key: ' ', code: 'Space' }],
])('[BE4] %j means nothing', (pressed) => {
  expect(readShortcut(aKey(pressed), false)).toBeNull()
})

function aKey(pressed: Partial<PressedKey> & { key: string }): PressedKey {
  return { code: '', shiftKey: false, ctrlKey: false, altKey: false, metaKey: false, repeat: false, ...pressed }
}
