/** The marks beneath a ribbon. Rules SW: tests/RULES.md. */

import { expect, test } from 'vitest'
import type { Note } from '../../../engine/coach/note.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import { bracketsOf } from '../../../web/parts/showing/brackets.ts'

const SQUARE = 30
const LABEL = 100

function note(fromTurn: number, toTurn: number, costTurns: number): Note {
  return {
    key: 'coach/undone',
    turn: turnOf('U'),
    nTurns: 2,
    stage: 4,
    fromTurn,
    toTurn,
    costTurns,
    isOpen: false,
    caseId: null,
    piece: null,
    becomes: null,
    broken: null,
    sequence: null,
    sequenceStage: null,
  }
}

test.each([
  ['two apart', [note(0, 2, 8), note(10, 12, 4)], [0, 10]],
  ['the dearer of two whose words would meet', [note(4, 6, 8), note(2, 4, 4)], [4]],
  ['the dearer of two about the same turns', [note(0, 2, 8), note(0, 2, 2)], [0]],
  ['the next that is free', [note(0, 2, 8), note(1, 3, 4), note(12, 14, 2)], [0, 12]],
  ['two at most', [note(0, 2, 8), note(10, 12, 4), note(20, 22, 2)], [0, 10]],
  ['none that costs nothing', [note(0, 2, 0)], []],
])('[SW15] %s', (_, notes, fromTurns) => {
  const brackets = bracketsOf(notes, (turn) => turn * SQUARE, SQUARE, LABEL)
  expect(brackets.map((each) => each.note.fromTurn)).toEqual(fromTurns)
})
