import { expect, test } from 'vitest'
import { isCaseOf } from '../../../engine/method/cases.ts'
import { isPieceStage, PIECE_CASES_OF_STAGE, PIECE_STAGES } from '../../../engine/method/piece-cases.ts'
import { STAGES } from '../../../engine/method/stages.ts'

test('[CA6] the cases of a piece belong to one stage of 1 to 3, and are none of the last layer', () => {
  const all = PIECE_STAGES.flatMap((stage) => PIECE_CASES_OF_STAGE[stage])
  expect(new Set(all).size).toBe(all.length)
  for (const id of all) expect(STAGES.some((stage) => isCaseOf(id, stage))).toBe(false)
  expect(STAGES.filter(isPieceStage)).toEqual([...PIECE_STAGES])
})
