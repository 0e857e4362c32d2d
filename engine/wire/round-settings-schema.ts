/** The settings of a round as they cross the wire. */

import { z } from 'zod'
import { ROUND_TIME_MS_MAX, ROUND_TIME_MS_MIN } from '../contest/limits.ts'
import { BOARD_SEEN_BY, type RoundSettings } from '../contest/round-settings.ts'
import { COLOURS } from '../cube/colour-scheme.ts'
import { CASES_OF_STAGE, isCaseOf } from '../method/cases.ts'
import { STAGES } from '../method/stages.ts'

const stage = z.literal([...STAGES])
const caseId = z.enum(Object.values(CASES_OF_STAGE).flat())
const N_CASES_MAX = Math.max(...Object.values(CASES_OF_STAGE).map((cases) => cases.length))

/**
 * Settings that say something: stages in order, and cases of the first one, each once. Whether they leave a start to deal
 * is not asked here: that refusal has words of its own for the teacher (`room/no-such-start`).
 */
export const roundSettingsSchema = z
  .strictObject({
    from: stage,
    to: stage,
    cases: z.array(caseId).min(1).max(N_CASES_MAX).readonly().nullable(),
    baseColour: z.enum(COLOURS),
    timeLimitMs: z.int().min(ROUND_TIME_MS_MIN).max(ROUND_TIME_MS_MAX).nullable(),
    tries: z.enum(['one', 'many']),
    takeBack: z.boolean(),
    boardSeenBy: z.enum(BOARD_SEEN_BY),
  })
  .refine(({ from, to }) => from <= to, { path: ['to'], message: 'comes before the first stage' })
  .refine(({ cases, from }) => cases === null || cases.every((id) => isCaseOf(id, from)), {
    path: ['cases'],
    message: 'names a case that this stage does not have',
  })
  .refine(({ cases }) => cases === null || new Set(cases).size === cases.length, {
    path: ['cases'],
    message: 'names a case twice',
  }) satisfies z.ZodType<RoundSettings>
