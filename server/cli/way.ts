/**
 * `way --stage K [--to M] --scramble "TURNS" [--book FILE]`: what the lesson would do, step by step, with the lesson's own
 * book or a teacher's.
 */

import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { formatTurns } from '../../engine/cube/format-turns.ts'
import { countOuterBlockTurns } from '../../engine/cube/outer-block-turns.ts'
import { checkStage } from '../../engine/method/book/check-book.ts'
import { LESSON_BOOK } from '../../engine/method/book/lesson-book.ts'
import type { SequenceBook } from '../../engine/method/sequence-book.ts'
import { STAGES, type Stage, type StageSpan } from '../../engine/method/stages.ts'
import { turnsOfStep } from '../../engine/method/way/lesson-step.ts'
import { lessonSteps, writeStep } from '../../engine/method/way/lesson-steps.ts'
import { ok, type Result } from '../../engine/result.ts'
import { EXIT } from './exit-codes.ts'
import type { Answer, Answerer } from './question.ts'
import { readBookFile } from './read-book-file.ts'
import { type InputFault, readSpan, whyNoStart } from './read-input.ts'
import { readPosition } from './read-position.ts'

/** @param book a file with a sequence book */
export function openWay({ book: file }: { readonly book?: string }): Result<Answerer, InputFault> {
  const book = file === undefined ? ok(LESSON_BOOK) : readBookFile(file)
  if (!book.ok) return book
  const canTeach = file === undefined ? () => true : rememberedCheck(book.value)
  return ok({
    answer: ({ stage, to, ...asked }) => {
      const span = readSpan(stage, to)
      if (!span.ok) return span
      const start = readPosition(asked)
      if (!start.ok) return start
      const error = whyNoStart(span.value.from, start.value)
      if (error !== undefined) return ok(no(error))
      const untaught = STAGES.find((each) => span.value.from <= each && each <= span.value.to && !canTeach(each))
      if (untaught !== undefined) return ok(no(`the book cannot be taught at stage ${untaught}: "book FILE" says why`))
      return ok(wayOf(start.value, span.value, book.value))
    },
    close: () => Promise.resolve(),
  })
}

function wayOf(start: CubePosition, span: StageSpan, book: SequenceBook): Answer {
  const steps = lessonSteps(start, span, book)
  const turns = steps.flatMap(turnsOfStep)
  const output = {
    turns: countOuterBlockTurns(turns),
    solution: formatTurns(turns),
    steps: steps.map((step) => ({
      ...writeStep(step, book),
      why: step.why.key,
      lookFor: step.lookFor.key,
      stage: step.stage,
    })),
  }
  return { output, exit: EXIT.yes }
}

function no(error: string): Answer {
  return { output: { error }, exit: EXIT.no }
}

/** The way of a book that leads nowhere would be our bug; so each stage that is asked for is proved first, once. */
function rememberedCheck(book: SequenceBook): (stage: Stage) => boolean {
  const isSound = new Map<Stage, boolean>()
  return (stage) => {
    const known = isSound.get(stage) ?? checkStage(book, stage).faults.length === 0
    isSound.set(stage, known)
    return known
  }
}
