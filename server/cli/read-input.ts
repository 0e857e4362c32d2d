/** Reads what commands are given: stages and turns, with faults that name the token and its place. */

import { parseTurns } from '../../engine/cube/parse-turns.ts'
import type { Turn } from '../../engine/cube/turns.ts'
import { STAGES, type Stage } from '../../engine/method/stages.ts'
import { err, ok, type Result } from '../../engine/result.ts'

/** A one-line reason why the input cannot be used. */
export type InputFault = string

function readStage(option: string, text: string | undefined): Result<Stage, InputFault> {
  if (text === undefined) return err(`${option} is missing: give a stage from 1 to 7`)
  const stage = STAGES.find((each) => String(each) === text.trim())
  return stage === undefined ? err(`${option}: "${text}" is no stage; give a number from 1 to 7`) : ok(stage)
}

export function readSpan(
  stage: string | undefined,
  to: string | undefined,
): Result<{ from: Stage; to: Stage }, InputFault> {
  const from = readStage('--stage', stage)
  if (!from.ok) return from
  if (to === undefined) return ok({ from: from.value, to: from.value })
  const last = readStage('--to', to)
  if (!last.ok) return last
  if (last.value < from.value) return err(`--to: stage ${last.value} comes before stage ${from.value}`)
  return ok({ from: from.value, to: last.value })
}

export function readTurns(option: string, text: string | undefined): Result<Turn[], InputFault> {
  if (text === undefined) return err(`${option} is missing: give turns in standard notation, such as "R U R' U'"`)
  const turns = parseTurns(text)
  if (turns.ok) return turns
  const fault = turns.error
  if (fault.code === 'cube/too-many-turns') return err(`${option}: more than ${fault.max} turns`)
  return err(`${option}: "${fault.token}" at character ${fault.at + 1} is no turn`)
}
