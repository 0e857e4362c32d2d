/** What hints cost is told beside a solution's squares. Rules RV: tests/RULES.md. */

import { expect, test } from 'vitest'
import type { ReviewView } from '../../../../engine/wire/views.ts'
import { waysToShow } from '../../../../web/desk/show/review-ways.ts'

const solution = (seatId: string, turns: number | null) => ({
  seatId,
  name: seatId,
  turns: ['F', 'y', 'M', "U'"],
  reached: turns === null ? null : { turns, momentMs: 0 },
})

// Four squares: a slice turn takes two, a re-hold none.
test.each([
  ['no hints', 4, 0],
  ['three hints of two turns', 10, 6],
  ['not reached', null, 0],
])('[RV7] %s', (_, turns, hintTurns) => {
  const review = { ways: null, par: null, solutions: [solution('ada', turns)] } as unknown as ReviewView
  const choice = { shortest: false, lesson: false, seats: ['ada' as never] }
  expect(waysToShow(review, choice, false)).toMatchObject([{ reached: turns !== null, hintTurns }])
})
