/** What the teacher shows, put away. Rules BE: tests/RULES.md. */

import { expect, test } from 'vitest'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { formatStickers } from '../../../engine/cube/stickers.ts'
import type { ShownCube, ShownReview } from '../../../engine/wire/shown.ts'
import { whatIsShown } from '../../../web/bench/showing-put-away.ts'

const start = formatStickers(solvedCube())
const CUBE: ShownCube = { kind: 'cube', title: '', start, baseColour: 'white', turns: [] }
const REVIEW: ShownReview = {
  kind: 'review',
  roundNumber: 1,
  from: 4,
  to: 4,
  start,
  baseColour: 'white',
  ways: [{ owner: { kind: 'lesson' }, turns: ['R'], reached: true, hintTurns: 0 }],
}

test('[BE17] the teacher turning on makes no other showing; another title, start or round does', () => {
  const of = (shown: ShownCube | ShownReview) => whatIsShown({ shown })
  expect(of({ ...CUBE, turns: ['R', 'U'] })).toBe(of(CUBE))
  expect(of({ ...REVIEW, ways: [{ ...REVIEW.ways[0], reached: false }] })).toBe(of(REVIEW))
  const all = [CUBE, { ...CUBE, title: 'The lesson way' }, REVIEW, { ...REVIEW, roundNumber: 2 }].map(of)
  expect(new Set(all).size).toBe(all.length)
})
