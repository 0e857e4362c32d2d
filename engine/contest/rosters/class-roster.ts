/**
 * A class's roster: the names that children pick from when they come in, so that nobody has to type or invent one, and
 * so that what a child has learned is found again next week.
 */

import { z } from 'zod'
import { ID_LENGTH_MAX } from '../../wire/limits.ts'
import { nameKey, readStudentName } from '../student-name.ts'
import { ROSTER_PUPILS_MAX, ROSTER_TITLE_LENGTH_MAX } from './limits.ts'

/** A name as `readStudentName` gives it: cleaned, short, plain and kind. */
const pupilName = z.string().refine((name) => {
  const read = readStudentName(name)
  return read.ok && read.value === name
}, 'is no clean name')

/** A pupil keeps the id when the name is written another way; what was learned belongs to the id. */
const pupilSchema = z.strictObject({ pupilId: z.string().min(1).max(ID_LENGTH_MAX), name: pupilName }).readonly()

/** A roster as it is stored and sent. Nobody is in it twice, by id or by name as children would call it. */
export const classRosterSchema = z
  .strictObject({
    title: z
      .string()
      .max(ROSTER_TITLE_LENGTH_MAX)
      .regex(/^[^\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069]*$/u),
    pupils: z.array(pupilSchema).max(ROSTER_PUPILS_MAX).readonly(),
  })
  .refine(({ pupils }) => areAllDifferent(pupils.map(({ pupilId }) => pupilId)), {
    path: ['pupils'],
    message: 'have an id twice',
  })
  .refine(({ pupils }) => areAllDifferent(pupils.map(({ name }) => nameKey(name))), {
    path: ['pupils'],
    message: 'have a name twice',
  })
  .readonly()

/** One of a class. */
export type Pupil = z.infer<typeof pupilSchema>
/** A class: its title, which may be empty, and its pupils in the teacher's order. */
export type ClassRoster = z.infer<typeof classRosterSchema>

function areAllDifferent(values: readonly string[]): boolean {
  return new Set(values).size === values.length
}
