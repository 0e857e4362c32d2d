/**
 * The command line: one JSON value a line on standard output, messages on standard error, exit codes as in exit-codes.ts.
 *
 *   npm run --silent cube -- check --stage 4 --scramble "F U R U' R' F'" --solution "F R U R' U' F'"
 */

import { createInterface } from 'node:readline'
import { parseArgs } from 'node:util'
import { err, type Result } from '../../engine/result.ts'
import { type CheckInput, check } from './check.ts'
import { EXIT, type ExitCode } from './exit-codes.ts'
import { type InputFault, readSpan, readTurns } from './read-input.ts'

const USAGE = `usage: cube check --stage K [--to M] --scramble "TURNS" --solution "TURNS"
       cube check --batch   (lines "stage<TAB>scramble<TAB>solution" on standard input)`

process.exitCode = await main(process.argv.slice(2))

async function main(args: string[]): Promise<ExitCode> {
  const [command, ...rest] = args
  if (command !== 'check') return complain(command === undefined ? USAGE : `"${command}" is no command\n${USAGE}`)
  const options = readOptions(rest)
  if (!options.ok) return complain(options.error)
  if (options.value.batch) return checkBatch()
  const input = readCheck(options.value.stage, options.value.to, options.value.scramble, options.value.solution)
  if (!input.ok) return complain(input.error)
  const { output, exit } = check(input.value)
  print(output)
  return exit
}

type Options = { stage?: string; to?: string; scramble?: string; solution?: string; batch?: boolean }

function readOptions(args: string[]): Result<Options, InputFault> {
  const text = { type: 'string' } as const
  try {
    const { values } = parseArgs({
      args,
      options: { stage: text, to: text, scramble: text, solution: text, batch: { type: 'boolean' } },
    })
    return { ok: true, value: values }
  } catch (fault) {
    return err(`${(fault as Error).message}\n${USAGE}`)
  }
}

function readCheck(stage?: string, to?: string, scramble?: string, solution?: string): Result<CheckInput, InputFault> {
  const span = readSpan(stage, to)
  if (!span.ok) return span
  const start = readTurns('--scramble', scramble)
  if (!start.ok) return start
  const turns = readTurns('--solution', solution)
  if (!turns.ok) return turns
  return { ok: true, value: { ...span.value, scramble: start.value, solution: turns.value } }
}

/** One answer a line, in order; a bad line gets its error in its place and the run goes on. */
async function checkBatch(): Promise<ExitCode> {
  let exit: ExitCode = EXIT.yes
  for await (const line of createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
    if (line.trim() === '') continue
    const [stage, scramble, solution] = line.split('\t')
    const [from, to] = (stage ?? '').split('-')
    const input = readCheck(from, to, scramble, solution)
    const answer = input.ok ? check(input.value) : { output: { error: input.error }, exit: EXIT.no }
    if (answer.exit !== EXIT.yes) exit = EXIT.no
    print(answer.output)
  }
  return exit
}

function print(value: object): void {
  process.stdout.write(`${JSON.stringify(value)}\n`)
}

function complain(message: string): ExitCode {
  process.stderr.write(`${message}\n`)
  return EXIT.badInput
}
