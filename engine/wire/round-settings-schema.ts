/** The settings of a round as they cross the wire. */

import { z } from 'zod'
import { HINT_COST_MAX, PAR_MAX, ROUND_TIME_MS_MAX, ROUND_TIME_MS_MIN } from '../contest/limits.ts'
import { BOARD_SEEN_BY, CUBES_IN_HAND, PACES, type RoundSettings } from '../contest/round-settings.ts'
import { COLOURS } from '../cube/colour-scheme.ts'
import { CASES_OF_STAGE, isCaseOf } from '../method/cases.ts'
import { STAGES } from '../method/stages.ts'
import { HINT_LEVELS } from '../method/way/hint-level.ts'

const stage = z.literal([...STAGES])
const par = z.int().min(1).max(PAR_MAX).nullable()
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
    hints: z.literal([0, ...HINT_LEVELS]),
    hintCost: z.int().min(0).max(HINT_COST_MAX),
    parFrom: par,
    parTo: par,
    cube: z.enum(CUBES_IN_HAND),
    pace: z.enum(PACES),
  })
  .refine(({ from, to }) => from <= to, { path: ['to'], message: 'comes before the first stage' })
  .refine(({ from, to, parFrom, parTo }) => from === to || (parFrom === null && parTo === null), {
    path: ['parFrom'],
    message: 'is for one stage alone',
  })
  .refine(({ parFrom, parTo }) => parFrom === null || parTo === null || parFrom <= parTo, {
    path: ['parTo'],
    message: 'is below the least par',
  })
  .refine(({ cases, from }) => cases === null || cases.every((id) => isCaseOf(id, from)), {
    path: ['cases'],
    message: 'names a case that this stage does not have',
  })
  .refine(({ cases }) => cases === null || new Set(cases).size === cases.length, {
    path: ['cases'],
    message: 'names a case twice',
  }) satisfies z.ZodType<RoundSettings>
