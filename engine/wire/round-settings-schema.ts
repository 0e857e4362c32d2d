/** The settings of a round as they cross the wire. */

import { z } from 'zod'
import { ROUND_TIME_MS_MAX, ROUND_TIME_MS_MIN } from '../contest/limits.ts'
import { BOARD_SEEN_BY, type RoundSettings } from '../contest/round-settings.ts'
import { COLOURS } from '../cube/colour-scheme.ts'
import { type CaseId, isCaseOf } from '../method/cases.ts'
import { STAGES, type Stage } from '../method/stages.ts'

const stage = z.literal(STAGES as unknown as [Stage, ...Stage[]])

export const roundSettingsSchema = z
  .strictObject({
    from: stage,
    to: stage,
    cases: z.array(z.string().max(40)).min(1).max(12).nullable(),
    baseColour: z.enum(COLOURS),
    timeLimitMs: z.int().min(ROUND_TIME_MS_MIN).max(ROUND_TIME_MS_MAX).nullable(),
    tries: z.enum(['one', 'many']),
    takeBack: z.boolean(),
    boardSeenBy: z.enum(BOARD_SEEN_BY),
  })
  .refine((settings) => settings.from <= settings.to, { path: ['to'], message: 'comes before the first stage' })
  .refine((settings) => settings.cases === null || settings.cases.every((id) => isCaseOf(id, settings.from)), {
    path: ['cases'],
    message: 'names a case that this stage does not have',
  })
  .transform((settings): RoundSettings => ({ ...settings, cases: settings.cases as readonly CaseId[] | null }))
