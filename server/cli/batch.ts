/**
 * Answers questions line by line: `stage<TAB>scramble[<TAB>solution]`, where stage is `K` or `K-M`. One line of JSON for each, in
 * order, as soon as it is known; a bad line, an empty one too, gets its error in its place.
 */

import { EXIT, type ExitCode } from './exit-codes.ts'
import { printValue } from './print-lines.ts'
import type { Answer, Answerer, WrittenQuestion } from './question.ts'
import { readLines } from './read-lines.ts'

/** Twice the longest turns that are read, with spaces, and to spare. */
const LINE_CHARACTERS_MAX = 200_000
/** So many questions are under way at once: enough to keep all threads at work. */
const N_OPEN_MAX = 8
const N_COLUMNS_MAX = 3

/** @param input text in UTF-8 @returns `no` when any answer was negative or an error */
export async function answerBatch(answerer: Answerer, input: AsyncIterable<string>): Promise<ExitCode> {
  let exit: ExitCode = EXIT.yes
  let last = Promise.resolve()
  const open: Promise<void>[] = []
  const printNext = async (before: Promise<void>, answer: Answer | Promise<Answer>) => {
    await before
    const known = await answer
    if (known.exit !== EXIT.yes) {
      exit = known.exit
      process.exitCode = exit
    }
    await printValue(known.output)
  }
  for await (const { text, isTooLong } of readLines(input, LINE_CHARACTERS_MAX)) {
    const answer = isTooLong
      ? negative(`the line has more than ${LINE_CHARACTERS_MAX} characters`)
      : answerLine(answerer, text)
    last = printNext(last, answer)
    open.push(last)
    if (open.length >= N_OPEN_MAX) await open.shift()
  }
  await Promise.all(open)
  return exit
}

function answerLine(answerer: Answerer, line: string): Answer | Promise<Answer> {
  const question = questionIn(line)
  if (typeof question === 'string') return negative(question)
  const answer = answerer.answer(question)
  return answer.ok ? answer.value : negative(answer.error)
}

function questionIn(line: string): WrittenQuestion | string {
  if (line.trim() === '') return 'the line is empty: give stage<TAB>scramble'
  const columns = line.split('\t')
  if (columns.length > N_COLUMNS_MAX)
    return `the line has ${columns.length} columns; there are ${N_COLUMNS_MAX} at most`
  const [span, scramble, solution] = columns
  const dash = span.indexOf('-')
  if (dash === -1) return { stage: span, scramble, solution }
  return { stage: span.slice(0, dash), to: span.slice(dash + 1), scramble, solution }
}

function negative(error: string): Answer {
  return { output: { error }, exit: EXIT.no }
}
