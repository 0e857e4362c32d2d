/**
 * The command line: one JSON value a line on standard output, messages on standard error, exit codes as in exit-codes.ts.
 * A command is loaded when it is asked for, so that none pays for the others.
 *
 *   npm run --silent cube -- check --stage 4 --scramble "F U R U' R' F'" --solution "F R U R' U' F'"
 */

import { fstatSync } from 'node:fs'
import type { Result } from '../../engine/result.ts'
import { EXIT, type ExitCode } from './exit-codes.ts'
import { endWhenNobodyReads, printText, printValue } from './print-lines.ts'
import type { Answerer } from './question.ts'
import type { InputFault } from './read-input.ts'
import { type GivenOptions, type OptionKinds, readOptions, shown } from './read-options.ts'
import { UnusableInput } from './unusable-input.ts'
import { COMMANDS, type CommandName, USAGE } from './usage.ts'

const QUESTION: OptionKinds = { stage: 'text', to: 'text', scramble: 'text', stickers: 'text', batch: 'flag' }
/** What a batch takes from its lines. */
const ASKED_BY_LINE = ['stage', 'to', 'scramble', 'stickers', 'solution'] as const

endWhenNobodyReads()
process.exitCode = await main(process.argv.slice(2)).catch((fault: unknown) => {
  if (fault instanceof UnusableInput) return complain(fault.message)
  throw fault
})

async function main(args: string[]): Promise<ExitCode> {
  if (args.includes('--help')) {
    await printText(USAGE)
    return EXIT.yes
  }
  const [word, ...rest] = args
  if (word === undefined) return complain('usage: cube COMMAND [options]; cube --help says more')
  const command = COMMANDS.find((each) => each === word)
  if (command === undefined) return complain(`${shown(word)} is no command; there are ${COMMANDS.join(', ')}`)
  return run(command, rest)
}

async function run(command: CommandName, args: string[]): Promise<ExitCode> {
  switch (command) {
    case 'par':
      return withOptions(command, args, { ...QUESTION, budget: 'text' }, async (given) => {
        const [{ openPar }, { openSearch }] = await Promise.all([import('./par.ts'), import('./open-search.ts')])
        return answerQuestions(
          given,
          await openPar(given.texts, 'batch' in given.texts ? () => openSearch('all') : openSearch),
        )
      })
    case 'check':
      return withOptions(command, args, { ...QUESTION, solution: 'text' }, async (given) =>
        answerQuestions(given, (await import('./check.ts')).openCheck()),
      )
    case 'way':
      return withOptions(command, args, { ...QUESTION, book: 'text' }, async (given) =>
        answerQuestions(given, (await import('./way.ts')).openWay(given.texts)),
      )
    case 'start': {
      const kinds = { stage: 'text', to: 'text', count: 'text', seed: 'text', 'least-par': 'text' } as const
      return withOptions(command, args, kinds, printStarts)
    }
    case 'book':
      return withOptions(command, args, { own: 'text' }, printBook, 1)
    case 'read':
      return withOptions(command, args, { ...QUESTION, solution: 'text' }, async (given) =>
        answerQuestions(given, await (await import('./read.ts')).openRead()),
      )
    case 'sheet':
      return complain(`${command} is not there yet; it comes with a later version`)
  }
}

async function withOptions(
  command: CommandName,
  args: string[],
  kinds: OptionKinds,
  go: (given: GivenOptions) => Promise<ExitCode>,
  nBareMax = 0,
): Promise<ExitCode> {
  const given = readOptions(command, args, kinds, nBareMax)
  return given.ok ? go(given.value) : complain(given.error)
}

async function answerQuestions({ texts }: GivenOptions, opened: Result<Answerer, InputFault>): Promise<ExitCode> {
  if (!opened.ok) return complain(opened.error)
  const answerer = opened.value
  try {
    if (texts.batch !== undefined) {
      const unwanted = ASKED_BY_LINE.find((name) => texts[name] !== undefined)
      if (unwanted !== undefined) return complain(`--${unwanted} cannot stand beside --batch: the lines say it`)
      const { answerBatch } = await import('./batch.ts')
      return await answerBatch(answerer, standardInput())
    }
    const answer = answerer.answer(texts)
    if (!answer.ok) return complain(answer.error)
    const { output, exit } = await answer.value
    await printValue(output)
    return exit
  } finally {
    await answerer.close()
  }
}

async function printStarts({ texts }: GivenOptions): Promise<ExitCode> {
  const [{ openStart }, { openSearch }] = await Promise.all([import('./start.ts'), import('./open-search.ts')])
  const lines = await openStart(texts, openSearch)
  if (!lines.ok) return complain(lines.error)
  let exit: ExitCode = EXIT.yes
  for await (const line of lines.value) {
    if ('error' in line) exit = EXIT.no
    await printValue(line)
  }
  return exit
}

async function printBook(given: GivenOptions): Promise<ExitCode> {
  const { answerBook } = await import('./book.ts')
  const answer = answerBook(given)
  if (!answer.ok) return complain(answer.error)
  if ('text' in answer.value) {
    await printText(answer.value.text)
    return EXIT.yes
  }
  await printValue(answer.value.output)
  return answer.value.exit
}

async function* standardInput(): AsyncGenerator<string> {
  try {
    // A folder would look like an empty batch.
    if (fstatSync(process.stdin.fd).isDirectory()) throw Object.assign(new Error(), { code: 'EISDIR' })
    yield* process.stdin.setEncoding('utf8')
  } catch (fault) {
    throw new UnusableInput(`standard input cannot be read (${(fault as NodeJS.ErrnoException).code})`)
  }
}

function complain(message: string): ExitCode {
  process.stderr.write(`${message}\n`)
  return EXIT.badInput
}
