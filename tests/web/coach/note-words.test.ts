/** Every note of the coach is one sentence that a child can read. */

import type { TFunction } from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import type { Note, NoteFacts, NoteKey } from '../../../engine/coach/note.ts'
import { readSolution } from '../../../engine/coach/read-solution.ts'
import { COLOURS } from '../../../engine/cube/colour-scheme.ts'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { inverseTurns, turnOf } from '../../../engine/cube/turns.ts'
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
/** Longer ones are not read to their end. */
const WORDS_MAX = 32
const CROSS = "F U R U' R' F'"
const DOT = cubeAfter(formatTurns(inverseTurns(turns(`${CROSS} y ${CROSS} ${CROSS}`))))

/** What a note says besides its key; each row changes what it is about. */
const FACTS: NoteFacts = {
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
  sequenceStage: null,
}
const CROSS_FACTS = { sequence: "F A F'", sequenceStage: 4, stage: 4 } as const

test('[CC10] every planted mistake is one readable sentence, and every key has been met', () => {
  const met = new Set<NoteKey>()
  for (const kind of KINDS) {
    for (let number = 0; number < 12; number++) {
      for (const [index, note] of readSolution(plant(kind, number)).notes.entries()) {
        met.add(note.key)
        const words = noteWords(t, note, COLOURS[(number + index) % COLOURS.length])
        expect(words).not.toMatch(LEAK)
        expect(words).toMatch(/^[A-Z][^.]*\.$/u)
        expect(words.replaceAll(' · ', ' ').split(' ').length).toBeLessThanOrEqual(WORDS_MAX)
      }
    }
  }
  expect([...met].sort()).toEqual(Object.keys(coach.note).sort())
})

test.each([
  [
    `${CROSS} y ${CROSS} y2 ${CROSS}`,
    'The hold did not fit, so the case became “dot”: next time, hold the cube with the arms of the corner shape to the back and to the left.',
  ],
  [`U U' ${CROSS}`, 'U went there and straight back, and these 2 turns changed nothing: next time, look first.'],
  [
    `R R R R ${CROSS}`,
    'One layer went round until it stood as before, and these 4 turns changed nothing: next time, look first.',
  ],
  [`${CROSS} y ${CROSS} F U R U'`, 'The right trigger is not finished yet: R’ still belongs to it.'],
  [`${CROSS} y ${CROSS} F U R`, 'The right trigger is not finished yet: U’ R’ still belong to it.'],
  [
    `${CROSS} y y' y ${CROSS}`,
    'These 2 re-holds ended where they began: they cost nothing, and next time they can be left out.',
  ],
  [
    `${CROSS} y F U R' U' R' F`,
    'In the sequence F · right trigger · F’ two turns were different, R’ for R and F for F’, so the white cross has to be mended now: next time, go slowly there.',
  ],
])('[CC10] %s is told so: %s', (solution, words) => {
  const { notes } = readSolution({ start: DOT, turns: turns(solution), span: { from: 4, to: 4 } })
  expect(notes.map((note) => noteWords(t, note, 'white'))).toEqual([words])
})

test('[CC10] a way of one’s own is compared with the lesson’s', () => {
  const note: Note = { ...FACTS, key: 'coach/long-way', nTurns: 14, nLessonTurns: 9 }
  expect(noteWords(t, note, 'white')).toBe(
    'This way worked and took 14 turns: next time, try the lesson’s way, which takes 9 turns.',
  )
  // Told with the cost that stands under the ribbon.
  expect(noteWords(t, { ...note, costTurns: 3 }, 'white')).toBe(
    'This way worked and took 14 turns: next time, try the lesson’s way, which saves 3 turns.',
  )
  // Other pieces may have gone further from home meanwhile.
  expect(noteWords(t, { ...note, nLessonTurns: -1, costTurns: 15 }, 'white')).toBe(
    'This way worked and took 14 turns: next time, try the lesson’s way, which saves 15 turns.',
  )
})

// Origin: every variant that the data of a note can ask for, written out.
test.each<[Note, string]>([
  [
    { ...FACTS, key: 'coach/unfinished', side: 'right', nth: 3, missing: turns("U' R'"), broken: 1, stage: 5 },
    'The third right trigger stopped before its last 2 turns, so the white cross came apart: next time, finish it with U’ R’.',
  ],
  [
    { ...FACTS, key: 'coach/unfinished', side: null, nth: 1, missing: turns("F'"), ...CROSS_FACTS },
    'The sequence F · right trigger · F’ stopped before its last turn, so it took 5 turns more: next time, finish it with F’.',
  ],
  [
    { ...FACTS, key: 'coach/wrong-top-turn', advised: turnOf("U'") },
    'The top layer was not in its place yet, so it took 5 turns more: next time, first turn it a quarter to the right.',
  ],
  [
    { ...FACTS, key: 'coach/wrong-top-turn', advised: null },
    'The top layer had been in its place already, so it took 5 turns more: next time, leave it as it is.',
  ],
  [
    { ...FACTS, key: 'coach/wrong-hold', held: { key: 'hold/any' }, advised: { key: 'hold/any' } },
    'The cube was held another way than this case needs, so it took 5 turns more: next time, look at the case before the first turn.',
  ],
  [
    {
      ...FACTS,
      key: 'coach/wrong-hold',
      held: { key: 'hold/any' },
      advised: {
        key: 'hold/corners',
        corners: [
          { place: 'UFL', facing: 'L' },
          { place: 'URF', facing: 'F' },
        ],
      },
    },
    'The hold did not fit, so it took 5 turns more: next time, hold the cube so that the top front left corner shows yellow to the left and the top front right corner to the front.',
  ],
  [
    {
      ...FACTS,
      key: 'coach/wrong-sequence',
      ofStage: 6,
      sequence: "L' A^2 L A^3 L' A L",
      sequenceStage: 6,
      advised: 'A^3',
    },
    'The sequence for “Corners home” does not fit here, so it took 5 turns more: next time, try the right trigger 3 times.',
  ],
  [
    {
      ...FACTS,
      key: 'coach/wrong-sequence',
      ofStage: 7,
      sequence: 'A^5 B^5 A B',
      sequenceStage: 7,
      stage: 7,
      advised: 'A^5 B^5 A B',
    },
    'The sequence for “All home” does not fit here, so it took 5 turns more: next time, look at the case before the first turn.',
  ],
  [
    { ...FACTS, key: 'coach/layer-broken', turn: turnOf('D'), broken: 1 },
    'D took the white cross apart, and mending it took 5 turns: next time, see first what a turn takes along.',
  ],
  [
    { ...FACTS, key: 'coach/layer-broken', turn: turnOf('D'), broken: 2 },
    'D took a piece out of its home, and that took 5 turns: next time, see first what a turn takes along.',
  ],
  // Of a try that was short all the same: what was lost was won back.
  [
    { ...FACTS, key: 'coach/layer-broken', turn: turnOf('D'), broken: 1, costTurns: 0 },
    'D took the white cross apart, and other turns made up for it: next time, see first what a turn takes along.',
  ],
  [
    { ...FACTS, key: 'coach/layer-broken', turn: turnOf('D'), broken: 2, costTurns: 0 },
    'D took a piece out of its home, and other turns made up for it: next time, see first what a turn takes along.',
  ],
  [
    { ...FACTS, key: 'coach/wrong-amount', turn: turnOf('R2'), shouldBe: turnOf('R'), costTurns: 0 },
    'R2 went too far, and other turns made up for it: next time, R is enough there.',
  ],
  [
    { ...FACTS, key: 'coach/layer-left-broken', turn: turnOf('D'), broken: 2, isOpen: true },
    'D took a piece out of its home, and it is not back yet: that comes first now.',
  ],
  [
    { ...FACTS, key: 'coach/layer-broken', turn: turnOf('D'), ...CROSS_FACTS },
    'D slipped into the sequence F · right trigger · F’, so it took 5 turns more: next time, say each turn as it is done.',
  ],
  [
    { ...FACTS, key: 'coach/wrong-amount', turn: turnOf('R2'), shouldBe: turnOf('R') },
    'R2 went too far, so it took 5 turns more: next time, R is enough there.',
  ],
  [
    { ...FACTS, key: 'coach/wrong-amount', turn: turnOf('F'), shouldBe: turnOf('F2') },
    'F did not go far enough, so it took 5 turns more: next time, try F2 there.',
  ],
  [
    { ...FACTS, key: 'coach/wrong-amount', turn: turnOf('R'), shouldBe: turnOf('R') },
    'R came twice, so it took 5 turns more: next time, R is enough there.',
  ],
  [
    { ...FACTS, key: 'coach/wrong-layer', turn: turnOf('B'), shouldBe: turnOf('F2') },
    'B turned a different layer, so it took 5 turns more: next time, try F2 there.',
  ],
  // Origin: drawn tries with turns put in at random; a re-hold or a wide turn before it, and the same letter is another layer.
  [
    { ...FACTS, key: 'coach/wrong-layer', turn: turnOf('U'), shouldBe: turnOf('U') },
    'The hold had changed and U turned a different layer, so it took 5 turns more: next time, keep the hold there.',
  ],
  [
    {
      ...FACTS,
      ...CROSS_FACTS,
      key: 'coach/two-slips',
      slips: [
        { kind: 'leftOut', turn: null, shouldBe: turnOf("R'"), atTurn: 4 },
        { kind: 'instead', turn: turnOf("F'"), shouldBe: turnOf("F'"), atTurn: 5 },
      ],
    },
    'In the sequence F · right trigger · F’ two turns were different, R’ left out and F’ in another hold, so it took 5 turns more: next time, go slowly there.',
  ],
  [
    { ...FACTS, key: 'coach/too-often', side: 'right', nDone: 3, nAdvised: 2 },
    'The right trigger came 3 times where 2 times was enough, so it took 5 turns more: next time, count along.',
  ],
  [
    { ...FACTS, key: 'coach/too-often', side: null, nDone: 2, nAdvised: 1, sequence: "R U R'", sequenceStage: 2 },
    'The sequence R U R’ came 2 times where once was enough, so it took 5 turns more: next time, count along.',
  ],
])('[CC10] a note of %o', (note, words) => {
  expect(noteWords(t, note, 'white')).toBe(words)
})
