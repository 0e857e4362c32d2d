/** What `par`, `check` and `way` have in common: a question about a scramble, asked once or line by line. */

import type { Result } from '../../engine/result.ts'
import type { ExitCode } from './exit-codes.ts'
import type { InputFault } from './read-input.ts'

/** A question as it was written; what is missing is a fault of the input. */
export type WrittenQuestion = {
  readonly stage?: string | undefined
  readonly to?: string | undefined
  readonly scramble?: string | undefined
  /** In place of a scramble. */
  readonly stickers?: string | undefined
  readonly solution?: string | undefined
}

/** What is printed, as one line of JSON, and how the command ends when this was all. */
export type Answer = { readonly output: object; readonly exit: ExitCode }

/** A command that has read its options and answers questions. */
export type Answerer = {
  /** @returns the answer, perhaps later; or what is wrong with the question */
  answer(question: WrittenQuestion): Result<Answer | Promise<Answer>, InputFault>
  /** Lets go of whatever was opened to answer. */
  close(): Promise<void>
}
