/** The footnotes of the ranking in words. Rules RA: tests/RULES.md. */

import i18next from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import type { LaneNotes } from '../../../engine/contest/rank-board.ts'
import { laneNoteWords } from '../../../web/parts/lanes/foot-notes.tsx'
import { inEnglish } from '../english.ts'

beforeAll(inEnglish)

const NOTHING: LaneNotes = {
  nHints: 0,
  hintLevel: 0,
  nHintsBefore: 0,
  nTriesHelped: 0,
  nNudges: 0,
  kept: false,
  written: false,
  turnsAfterEnd: null,
}

// Rows: what the lane carries, what the footnote says.
test.each<[Partial<LaneNotes>, string]>([
  [{}, ''],
  [{ nHintsBefore: 1, nTriesHelped: 1 }, '1 hint in an earlier try'],
  [{ nHintsBefore: 2, nTriesHelped: 1 }, '2 hints in an earlier try'],
  [{ nHintsBefore: 3, nTriesHelped: 2 }, '3 hints in earlier tries'],
  [
    { nHints: 1, hintLevel: 1, nHintsBefore: 3, nTriesHelped: 1, nNudges: 2 },
    '1 hint up to level 1, 3 hints in an earlier try, 2 nudges',
  ],
])('[RA7] %j: %s', (notes, words) => {
  expect(laneNoteWords(i18next.t, { notes: { ...NOTHING, ...notes } })).toBe(words)
})
