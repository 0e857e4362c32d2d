/** Measures the lesson: whole ways a second, how long a book takes to be checked, and what both of our books ask of a student. */

import { performance } from 'node:perf_hooks'
import { chachaSource } from '../../engine/chance/chacha-source.ts'
import { checkBook } from '../../engine/method/book/check-book.ts'
import { CLASSIC_BOOK } from '../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../engine/method/book/lesson-book.ts'
import { drawArrangement } from '../../engine/method/draw-start.ts'
import { lessonWay } from '../../engine/method/lesson-way.ts'
import { assert } from '../../engine/result.ts'
import type { Figure } from './engine-bench.ts'

const N_WAYS = 20_000

/** @returns the figures in the order in which they are printed */
export async function benchBooks(): Promise<Figure[]> {
  return [...wholeWays(), ...[LESSON_BOOK, CLASSIC_BOOK].flatMap(reportOf)]
}

function wholeWays(): Figure[] {
  const random = chachaSource(new Uint8Array(32).fill(5))
  const starts = Array.from({ length: N_WAYS }, () => drawArrangement(1, random))
  const startMs = performance.now()
  let nSteps = 0
  for (const start of starts) nSteps += lessonWay(start, { from: 1, to: 7 }).length
  const perSecond = (1_000 * N_WAYS) / (performance.now() - startMs)
  return [
    { name: 'lesson ways, any position to solved', value: perSecond, unit: '1/s', note: 'the graphs made on the way' },
    { name: 'such a way', value: nSteps / N_WAYS, unit: 'steps', note: 're-holds counted' },
  ]
}

function reportOf(book: typeof LESSON_BOOK): Figure[] {
  const startMs = performance.now()
  const report = checkBook(book)
  const ms = performance.now() - startMs
  assert(report.isSound, 'our own books are sound')
  return [
    { name: `book "${book.title}" checked in`, value: ms, unit: 'ms', note: 'every case of every stage' },
    ...[...report.stages, report].flatMap((part) => {
      const name = `  ${'stage' in part ? `stage ${part.stage}` : 'the whole cube'}`
      if (part.figures === null) return []
      const { sequences, turns } = part.figures
      const note = `sequences: longest ${sequences.longest}, mean ${sequences.mean.toFixed(4)}; turns at most ${turns.longest}`
      return [{ name, value: turns.mean, unit: 'turns', note }]
    }),
  ]
}
