/** What the desk says of a chosen student. Rules DE: tests/RULES.md. */

import type { TFunction } from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import type { SeatId } from '../../../../engine/contest/ids.ts'
import type { LaneNotes } from '../../../../engine/contest/rank-board.ts'
import type { SeatView, TryLook } from '../../../../engine/wire/views.ts'
import { panelWords } from '../../../../web/desk/wall/student-panel.tsx'
import { studentStates } from '../../../../web/desk/wall/wall-students.ts'
import { aLane } from '../../board/a-lane.ts'
import { inEnglish } from '../../english.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

const QUIET = { turns: 0, idleSeconds: null, nNudges: 0, delayMs: null }
const HINT = { level: 1, afterTurns: 0 } as const
const NOTHING: Pick<TryLook, 'turns' | 'hints'> = { turns: [], hints: [] }

// Rows: the count, what was turned, how many hints at what cost, what is said.
test.each<[number, TryLook['turns'], number, number, string]>([
  [0, [], 0, 2, 'No turn yet.'],
  [2, [], 1, 2, 'Nothing turned yet. 1 hint in this try, counted as 2 turns.'],
  [5, ['R'], 2, 2, '2 hints in this try, counted as 4 turns.'],
  [1, ['R'], 2, 0, '2 hints in this try.'],
  [1, ['R'], 0, 2, ''],
])('[DE22] of a count of %i with the turns %j and %i hints at %i: %s', (turns, made, nHints, cost, words) => {
  const look = { turns: made, hints: Array.from({ length: nHints }, () => HINT) }
  expect(panelWords(t, { ...QUIET, turns }, look, cost).join(' ')).toBe(words)
})

test('[DE22] as long as the desk does not know what was turned it does not say that nothing was', () => {
  expect(panelWords(t, { ...QUIET, turns: 2 }, null, 2)).toEqual([])
  expect(panelWords(t, QUIET, null, 2)).toEqual(['No turn yet.'])
})

test('[DE22] nudges are counted as they are sent, whatever the student turns meanwhile', () => {
  expect(panelWords(t, { ...QUIET, nNudges: 3 }, NOTHING, 2)).toContain('3 nudges in this round.')
  const seat = { seatId: 'Ada' as SeatId, name: 'Ada', here: true, asksForHelp: false } as SeatView
  const lanes = [aLane('Ada', { notes: { nNudges: 3 } as LaneNotes })]
  expect(studentStates({ seats: [seat], lanes, cells: [], round: null }, 0)[0]).toMatchObject({ nNudges: 3 })
})
