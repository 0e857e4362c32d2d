/**
 * Asks the computer algebra system GAP. A check that needs it fails when it is missing: a check that is silently left out
 * would read as one that has passed.
 */

import { spawnSync } from 'node:child_process'
import { cycleNotation, stickerPermutation } from '../../engine/cube/generators.ts'
import { TURN_NAMES, turnOf } from '../../engine/cube/turns.ts'

const ANSWER_TIME_MS_MAX = 120_000

/** Our 54 turns as GAP knows them, taken from the engine: a record, since names such as R' are no identifiers there. */
const TURNS_FOR_GAP = TURN_NAMES.map(
  (name) => `turn.("${name}") := ${cycleNotation(stickerPermutation(turnOf(name)))};;`,
).join('\n')

/**
 * @param questions GAP expressions; `t("R")` is a turn of the engine, `preamble` may define more
 * @returns the answers as GAP prints them, one for each question
 */
export function askGap(preamble: string, questions: readonly string[]): string[] {
  const program = [
    'SizeScreen([4000, 1000]);;',
    'turn := rec();;',
    TURNS_FOR_GAP,
    't := name -> turn.(name);;',
    preamble,
    ...questions.map((question) => `Print("answer ", ${question}, "\\n");`),
    'QUIT;',
  ].join('\n')
  const { stdout, stderr, error } = spawnSync('gap', ['-q', '-A', '-r'], {
    input: program,
    encoding: 'utf8',
    timeout: ANSWER_TIME_MS_MAX,
  })
  if (error !== undefined) {
    throw new Error(`The algebra system GAP could not be asked. Install the package gap-core. (${error.message})`)
  }
  const answers = [...stdout.matchAll(/^answer (.*)$/gm)].map(([, answer]) => answer)
  if (answers.length !== questions.length) throw new Error(`GAP did not answer every question:\n${stdout}\n${stderr}`)
  return answers
}
