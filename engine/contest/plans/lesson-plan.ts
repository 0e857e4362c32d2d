/** A lesson plan: what a class does one after the other. The teacher's own text, in the teacher's language. */

import { z } from 'zod'
import { CASES_OF_STAGE, isCaseOf } from '../../method/cases.ts'
import { STAGES } from '../../method/stages.ts'
import { roundSettingsSchema } from '../../wire/round-settings-schema.ts'
import {
  PART_MINUTES_MAX,
  PLAN_NOTE_LENGTH_MAX,
  PLAN_PARTS_MAX,
  PLAN_TEXT_LENGTH_MAX,
  PLAN_TITLE_LENGTH_MAX,
} from './limits.ts'

/** Text of one line; a note may have several. No control characters, none that turns the writing round, no half of one. */
const TITLE = /^[^\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069]*$/u
const NOTE = /^(?:\n|[^\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069])*$/u

const title = z.string().max(PLAN_TITLE_LENGTH_MAX).regex(TITLE)
const note = z.string().max(PLAN_NOTE_LENGTH_MAX).regex(NOTE)
const minutes = z.int().min(1).max(PART_MINUTES_MAX)

/** A worked example: the teacher demonstrates a stage, or one case of stages 4 to 7. */
const example = z
  .strictObject({
    kind: z.literal('example'),
    stage: z.literal([...STAGES]),
    caseId: z.enum(Object.values(CASES_OF_STAGE).flat()).nullable(),
    minutes,
    note,
  })
  .refine(({ caseId, stage }) => caseId === null || isCaseOf(caseId, stage), {
    path: ['caseId'],
    message: 'is no case of this stage',
  })

/** A round, with its settings; its minutes are those of its clock. */
const round = z.strictObject({ kind: z.literal('round'), title, note, settings: roundSettingsSchema })

/** Looking back at what was played. */
const review = z.strictObject({ kind: z.literal('review'), minutes, note })

const lessonPartSchema = z.discriminatedUnion('kind', [example, round, review])

/** A plan as it is stored, sent and written to a file: unknown keys are refused, and everything has a maximum. */
export const lessonPlanSchema = z
  .strictObject({ title, parts: z.array(lessonPartSchema).max(PLAN_PARTS_MAX).readonly() })
  .refine((plan) => textLength(plan) <= PLAN_TEXT_LENGTH_MAX, { path: ['parts'], message: 'have too much text in all' })
  .readonly()

/** A plan: its title, which may be empty, and its parts in order. */
export type LessonPlan = z.infer<typeof lessonPlanSchema>
/** A part: a worked example, a round or a review. */
export type LessonPart = z.infer<typeof lessonPartSchema>

/** @returns characters (UTF-16 code units) of all titles and notes of a plan */
function textLength(plan: { readonly title: string; readonly parts: readonly LessonPart[] }): number {
  return plan.parts.reduce(
    (sum, part) => sum + part.note.length + (part.kind === 'round' ? part.title.length : 0),
    plan.title.length,
  )
}
