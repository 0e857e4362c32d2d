/** Every note of the coach is one sentence that a child can read. */

import type { TFunction } from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import type { Note, NoteKey } from '../../../engine/coach/note.ts'
import { readSolution } from '../../../engine/coach/read-solution.ts'
import { COLOURS } from '../../../engine/cube/colour-scheme.ts'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { inverseTurns } from '../../../engine/cube/turns.ts'
import { coach } from '../../../web/locales/en/coach.ts'
import { noteWords } from '../../../web/parts/coach/note-words.ts'
import { plant } from '../../engine/coach/plant.ts'
import { KINDS } from '../../engine/coach/plant-kinds.ts'
import { cubeAfter, turns } from '../../engine/cube/arbitraries.ts'
import { inEnglish } from '../english.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

const LEAK = /\{\{|\}\}|undefined|null|NaN|\[object|coach[:/]|(lesson|common|desk):|\bmoves?\b|wrong/i
const WORDS_MAX = 30
const CROSS = "F U R U' R' F'"
const DOT = cubeAfter(formatTurns(inverseTurns(turns(`${CROSS} y ${CROSS} ${CROSS}`))))

test('[CC10] every planted mistake is one readable sentence, and every key has been met', () => {
  const met = new Set<NoteKey>()
  for (const kind of KINDS) {
    for (let number = 0; number < 12; number++) {
      for (const [index, note] of readSolution(plant(kind, number)).notes.entries()) {
        met.add(note.key)
        const words = noteWords(t, note, COLOURS[(number + index) % COLOURS.length])
        expect(words).not.toMatch(LEAK)
        expect(words).toMatch(/^[A-Z][^.]*\.$/u)
        expect(words.split(' ').length).toBeLessThanOrEqual(WORDS_MAX)
      }
    }
  }
  // No mistake of one turn or sequence is a way of one's own; it has a row below.
  expect([...met, 'coach/long-way'].sort()).toEqual(Object.keys(coach.note).sort())
})

test.each([
  [
    `${CROSS} y ${CROSS} y2 ${CROSS}`,
    'The cube was held with the arms of the corner shape to the front and to the right, so the case became “dot”.',
  ],
  [`U U' ${CROSS}`, 'U was turned and turned back at once, which took 2 turns.'],
  [`${CROSS} y ${CROSS} F U R U'`, 'The right trigger lacked its last turn, so the white cross is still open.'],
  [`${CROSS} y y' y ${CROSS}`, 'These 2 re-holds led back to the same hold, and they cost nothing.'],
])('[CC10] %s is told so: %s', (solution, words) => {
  const { notes } = readSolution({ start: DOT, turns: turns(solution), span: { from: 4, to: 4 } })
  expect(notes.map((note) => noteWords(t, note, 'white'))).toEqual([words])
})

test('[CC10] a way of one’s own is compared with the lesson’s', () => {
  const note: Note = {
    key: 'coach/long-way',
    stage: 2,
    fromTurn: 0,
    toTurn: 14,
    costTurns: 5,
    isOpen: false,
    caseId: null,
    piece: null,
    becomes: null,
    broken: null,
    sequence: null,
    nTurns: 14,
    nLessonTurns: 9,
  }
  expect(noteWords(t, note, 'white')).toBe('This way took 14 turns, and the lesson’s way takes 9 turns here.')
})
