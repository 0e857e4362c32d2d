/** Reads what commands are given: stages, turns and numbers, with faults that name the token and its place. */

import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { parseTurns } from '../../engine/cube/parse-turns.ts'
import type { Turn } from '../../engine/cube/turns.ts'
import { goalsBeforeMet } from '../../engine/method/goals.ts'
import { STAGES, type Stage, type StageSpan } from '../../engine/method/stages.ts'
import { err, ok, type Result } from '../../engine/result.ts'

/** A one-line reason why the input cannot be used. */
export type InputFault = string

function readStage(option: string, text: string | undefined): Result<Stage, InputFault> {
  if (text === undefined) return err(`${option} is missing: give a stage from 1 to 7`)
  const stage = STAGES.find((each) => String(each) === text.trim())
  return stage === undefined ? err(`${option}: "${cut(text)}" is no stage; give a number from 1 to 7`) : ok(stage)
}

export function readSpan(stage: string | undefined, to: string | undefined): Result<StageSpan, InputFault> {
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

/** @param range smallest and largest value allowed @param whole may it be a whole number only? */
export function readNumber(
  option: string,
  text: string | undefined,
  { least, most, whole }: { least: number; most: number; whole: boolean },
): Result<number, InputFault> {
  const wanted = `give a ${whole ? 'whole ' : ''}number from ${least} to ${most}`
  if (text === undefined) return err(`${option} is missing: ${wanted}`)
  const isNumber = (whole ? /^\d+$/u : /^\d+(?:\.\d+)?$/u).test(text.trim())
  const value = Number(text)
  return isNumber && least <= value && value <= most
    ? ok(value)
    : err(`${option}: "${cut(text)}" will not do; ${wanted}`)
}

/** @returns nothing, or that the position is no start of the stage */
export function whyNoStart(from: Stage, position: CubePosition): string | undefined {
  if (goalsBeforeMet(position, from)) return undefined
  return `the scramble does not start stage ${from}: the goal of stage ${from - 1} is not met`
}

/** Longest piece of text that a fault repeats, in characters. */
const SHOWN_MAX = 32

function cut(text: string): string {
  return [...text.slice(0, 2 * SHOWN_MAX)].slice(0, SHOWN_MAX).join('').replaceAll(/\s+/gu, ' ')
}
