/** Limits of lesson plans. Each has its unit in its name and its reason beside it. */

import { assert } from '../../result.ts'
import { MESSAGE_BYTES_MAX } from '../../wire/limits.ts'

/** Parts of a plan: a school day of ten lessons with three rounds each. */
export const PLAN_PARTS_MAX = 30

/** Characters of a title, of a plan or a round. */
export const PLAN_TITLE_LENGTH_MAX = 60

/** Characters of the note of a part: a few sentences for the teacher. */
export const PLAN_NOTE_LENGTH_MAX = 400

/** Characters of all titles and notes of a plan together, so that it fits a message in any script. */
export const PLAN_TEXT_LENGTH_MAX = 6_000

/** Minutes of a part that has no clock of its own. */
export const PART_MINUTES_MAX = 180

/** Characters of a file: a plan of the largest size, written over many lines, takes about half of it. */
export const PLAN_FILE_LENGTH_MAX = 100_000

/** No character takes more in UTF-8 for each of its UTF-16 code units. */
const BYTES_PER_CHARACTER_MAX = 3
/** The names and values of a round's settings with all eight cases take about 450. */
const BYTES_PER_PART_MAX = 450

assert(
  PLAN_TEXT_LENGTH_MAX * BYTES_PER_CHARACTER_MAX + PLAN_PARTS_MAX * BYTES_PER_PART_MAX < MESSAGE_BYTES_MAX,
  'the largest plan fits one message',
)
