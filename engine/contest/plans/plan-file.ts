/**
 * A plan in a file of its own, to keep, to send to a colleague, or to bring along: our own JSON, readable and with a version.
 *
 *     { "fairturnPlan": 1, "plan": { "title": "...", "parts": [ ... ] } }
 */

import { z } from 'zod'
import { err, ok, type Result } from '../../result.ts'
import { type LessonPlan, lessonPlanSchema } from './lesson-plan.ts'
import { PLAN_FILE_LENGTH_MAX } from './limits.ts'

/** Goes up with every change that an earlier version cannot read. */
const PLAN_FILE_VERSION = 1

/** Why a file was not read. */
export type PlanFileFault =
  /** Longer than any plan. Data: characters allowed. Do: choose a plan's file. */
  | { readonly code: 'plan/file-too-large'; readonly max: number }
  /** No JSON, or cut off. Do: choose the file anew, or save it again where it came from. */
  | { readonly code: 'plan/file-not-json' }
  /** JSON of something else. Do: choose a plan's file. */
  | { readonly code: 'plan/file-not-a-plan' }
  /** Written by a later version of Fairturn. Data: the file's version and ours. Do: bring Fairturn up to date. */
  | { readonly code: 'plan/file-newer'; readonly version: number; readonly known: number }
  /** A field is wrong. Data: where, from the plan down, parts counted from 1. Do: correct it there, or save it again. */
  | { readonly code: 'plan/file-field'; readonly at: string }

const envelope = z.looseObject({ fairturnPlan: z.int().min(1), plan: z.unknown().optional() })

/** @returns the text of a file; inverse: `parsePlanFile` */
export function formatPlanFile(plan: LessonPlan): string {
  return `${JSON.stringify({ fairturnPlan: PLAN_FILE_VERSION, plan }, null, 2)}\n`
}

/** Reads a file; a byte order mark and line ends of any kind do not matter. */
export function parsePlanFile(text: string): Result<LessonPlan, PlanFileFault> {
  if (text.length > PLAN_FILE_LENGTH_MAX) return err({ code: 'plan/file-too-large', max: PLAN_FILE_LENGTH_MAX })
  const read = readJson(text.replace(/^\uFEFF/, ''))
  if (!read.ok) return read
  const opened = envelope.safeParse(read.value)
  if (!opened.success) return err({ code: 'plan/file-not-a-plan' })
  const { fairturnPlan: version, plan } = opened.data
  if (version > PLAN_FILE_VERSION) return err({ code: 'plan/file-newer', version, known: PLAN_FILE_VERSION })
  const checked = lessonPlanSchema.safeParse(plan)
  return checked.success ? ok(checked.data) : err({ code: 'plan/file-field', at: firstFault(checked.error) })
}

function readJson(text: string): Result<unknown, PlanFileFault> {
  try {
    return ok(JSON.parse(text) as unknown)
  } catch {
    return err({ code: 'plan/file-not-json' })
  }
}

/** "parts 3 settings to": the way to the first field that is wrong, the names of unknown ones included. */
function firstFault(error: z.ZodError): string {
  const [issue] = error.issues
  const path = issue.path.map((step) => (typeof step === 'number' ? step + 1 : String(step)))
  if (issue.code === 'unrecognized_keys') path.push(issue.keys[0])
  return path.join(' ').slice(0, FAULT_PLACE_LENGTH_MAX)
}

/** A name in a strange file may be long; the sentence that says it is not. */
const FAULT_PLACE_LENGTH_MAX = 80
