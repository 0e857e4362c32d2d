/** Numbers of a showing count turns; a re-hold has none. Rules SW: tests/RULES.md. */

import type { TFunction } from 'i18next'
import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { afterEach, beforeAll, expect, test, vi } from 'vitest'
import { formatStickers } from '../../../engine/cube/stickers.ts'
import { type TurnName, turnOf } from '../../../engine/cube/turns.ts'
import type { ShownReview } from '../../../engine/wire/shown.ts'
import { CubeFace } from '../../../web/parts/showing/cube-face.tsx'
import { PlayKeys } from '../../../web/parts/showing/play-keys.tsx'
import { ReviewFace } from '../../../web/parts/showing/review-face.tsx'
import { lastDoneWords, nTurnsDone, reHoldJustDone, turnsDoneWords } from '../../../web/parts/showing/turns-done.ts'
import { cubeAfter } from '../../engine/cube/arbitraries.ts'
import { inEnglish } from '../english.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

afterEach(() => {
  vi.unstubAllGlobals()
})

const NAMES: readonly TurnName[] = ['y', 'F', 'R', "y'", 'x2', 'U2', 'M']
const TURNS = NAMES.map(turnOf)
/** A solved cube but for one turn, so that nothing is reached at the start. */
const START = formatStickers(cubeAfter('F'))

// Origin: counted by hand; a slice turn is two squares of the ribbon, and so it counts two here.
test.each([
  [0, 0, 'after 0 turns of 5', 'after 0 turns of 5'],
  [1, 0, 'after 0 turns of 5', 'after 0 turns of 5, re-hold: the front goes to the left'],
  [2, 1, 'after 1 turn of 5', 'after 1 turn of 5, front layer clockwise'],
  [3, 2, 'after 2 turns of 5', 'after 2 turns of 5, right layer up'],
  [5, 2, 'after 2 turns of 5', 'after 2 turns of 5, re-hold: the top goes to the bottom, the front to the back'],
  [6, 3, 'after 3 turns of 5', 'after 3 turns of 5, half turn of the top layer'],
  [7, 5, 'after 5 turns of 5', 'after 5 turns of 5, middle layer down'],
])('[SW10] with %i entries of the row done, %i turns are made', (at, nTurns, words, heard) => {
  expect(nTurnsDone(TURNS, at)).toBe(nTurns)
  expect(turnsDoneWords(t, TURNS, at)).toBe(words)
  expect(lastDoneWords(t, TURNS, at)).toBe(heard)
})

// Origin: whoever looks at a demonstration at their own pace stands at its end when the teacher takes turns back.
test('[SW10] behind the last entry of the row, the last one is said', () => {
  expect(lastDoneWords(t, TURNS.slice(0, 3), 5)).toBe('after 2 turns of 2, right layer up')
  expect(lastDoneWords(t, [], 2)).toBe('after 0 turns of 0')
  const shown = { kind: 'cube', title: '', baseColour: 'white', start: START, turns: NAMES.slice(0, 3) } as const
  const page = createElement(CubeFace, { shown, at: { at: 5, chosen: 0, pointer: null }, marks: 'plain' })
  expect(renderToStaticMarkup(page)).toContain('after 2 turns of 2, right layer up')
})

test('[SW10] a demonstration and its slider say the same number, and the slider still stops at every re-hold', () => {
  const shown = { kind: 'cube', title: '', baseColour: 'white', start: START, turns: [...NAMES] } as const
  const keys = createElement(PlayKeys, { at: 5, turns: NAMES, onGo: () => {} })
  const page = renderToStaticMarkup(
    createElement(CubeFace, { shown, at: { at: 5, chosen: 0, pointer: null }, marks: 'plain' }, keys),
  )
  expect(page.match(/after 2 turns of 5, re-hold/g)).toHaveLength(2)
  expect(page).toMatch(/max="7"[^>]*value="5"/)
})

test('[SW10] a review says it of the way that is chosen and of the others', () => {
  vi.stubGlobal('window', { innerHeight: 768 })
  const way = (turns: readonly TurnName[]) => ({
    owner: { kind: 'name', name: turns.length === 2 ? 'Ada' : 'Bo' } as const,
    turns: [...turns],
    reached: false,
    hintTurns: 0,
  })
  const shown: ShownReview = {
    kind: 'review',
    roundNumber: 1,
    baseColour: 'white',
    start: START,
    from: 1,
    to: 7,
    ways: [way(['y', 'R']), way(["y'", 'y', 'y2', 'D'])],
  }
  const page = renderToStaticMarkup(
    createElement(ReviewFace, { shown, at: { at: 1, chosen: 0, pointer: null }, marks: 'plain' }),
  )
  expect(page).toContain('after 0 turns of 1')
  expect(page).toContain('The cube of Ada after turn 0')
  expect(page).toMatch(/after turn 0</)
})

test('[SW10] a ghost belongs to a re-hold that was just done, and to no turn', () => {
  expect(reHoldJustDone(TURNS, 0)).toBeNull()
  expect(reHoldJustDone(TURNS, 1)).toBe(turnOf('y'))
  expect(reHoldJustDone(TURNS, 2)).toBeNull()
})
