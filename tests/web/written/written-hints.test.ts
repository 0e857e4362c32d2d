/** Hints asked for while a solution is written down: their places, and what stands of them. Rules WR: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { playTry } from '../../../engine/contest/play-try.ts'
import { anEmptyTry } from '../../../engine/contest/round-state.ts'
import { hintLevelOf, stepName } from '../../../engine/contest/steps.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import { FACE_TURNS, type Turn } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { drawStart } from '../../../engine/method/draw-start.ts'
import { stepsBeforeGoal } from '../../../engine/method/goal-reached.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import type { HintLevel } from '../../../engine/method/way/hint-level.ts'
import {
  hintBesideWriting,
  readWrittenHints,
  stepsWithHints,
  type WrittenHint,
} from '../../../web/parts/written/written-hints.ts'
import { aRound } from '../../engine/contest/a-round.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'
import { sourceNumbered } from '../../engine/method/starts.ts'

const SPAN = { from: 4, to: 4 } as const
const LESSON = { span: SPAN, book: LESSON_BOOK }
const DOT = drawStart({ span: SPAN, cases: ['dot'], random: sourceNumbered(1) })
const WAY = lessonWay(DOT, SPAN)

function turns(text: string): readonly Turn[] {
  const read = parseTurns(text)
  if (!read.ok) throw new Error(text)
  return read.value
}
const asked = (level: HintLevel, behind: string): WrittenHint => ({ level, behind: turns(behind) })

describe('where they stand among the steps', () => {
  // Rows: what is sent, whether it reaches the goal, the hints in the order in which they were asked for, the steps.
  test.each<[string, boolean, WrittenHint[], string]>([
    ['R U', false, [], 'R U'],
    ['R U', false, [asked(1, '')], 'hint-1 R U'],
    ['R U F', false, [asked(1, 'R'), asked(2, 'R')], 'R hint-1 hint-2 U F'],
    ['R U', false, [asked(1, 'R U')], 'R U hint-1'],
    // The text was shortened since: behind the last turn.
    ['R U', false, [asked(1, 'R U F D')], 'R U hint-1'],
    // Other turns since, as many or more: the same place.
    ['D L B', false, [asked(1, 'R U')], 'D L hint-1 B'],
    // Behind the goal the server would leave it off.
    ['R U', true, [asked(1, 'R U F D')], 'R hint-1 U'],
    ['R', true, [asked(1, 'R'), asked(2, 'R U')], 'hint-1 hint-2 R'],
    // The order of asking holds at one place.
    ['R', false, [asked(1, 'R U'), asked(2, 'R'), asked(1, '')], 'hint-1 R hint-1 hint-2'],
  ])('[WR6] %s, reaches %s: each stands where it was asked for', (sent, reaches, hints, steps) => {
    expect(stepsWithHints(turns(sent), reaches, hints).map(stepName).join(' ')).toBe(steps)
  })

  test('[WR6] however the text was changed, a try that is sent counts each hint, and its turns are as written', () => {
    const some = fc.array(fc.constantFrom(...FACE_TURNS), { maxLength: 12 })
    const settings = aRound({ settings: { ...SPAN, hints: 3, hintCost: 2 } }).settings
    fc.assert(
      fc.property(
        fc.oneof(some, fc.constant(WAY)),
        fc.array(fc.record({ level: fc.constantFrom<HintLevel>(1, 2, 3), behind: some }), { maxLength: 6 }),
        (written, hints) => {
          const nToGoal = stepsBeforeGoal(DOT, written, 4)
          const sent = nToGoal === null ? written : written.slice(0, nToGoal)
          const steps = stepsWithHints(sent, nToGoal !== null, hints)
          expect(steps.filter((step) => hintLevelOf(step) === null)).toEqual(sent)
          const played = playTry(anEmptyTry(DOT, 1), steps, settings, 0)
          expect(played.ok && played.value.hints.length).toBe(hints.length)
          expect(played.ok && played.value.steps.length).toBe(steps.length)
        },
      ),
      { seed: SEED },
    )
  })
})

describe('what stands of them', () => {
  const first = WAY.slice(0, 1)

  test('[WR7] none before one is asked for; then the highest rung that was asked for at these turns', () => {
    expect(hintBesideWriting(DOT, [], [], LESSON)).toBeNull()
    const hints = [1, 2].map((level) => ({ level: level as HintLevel, behind: first }))
    // Amid the sequence it is the hint of the step that began at the start.
    expect(hintBesideWriting(DOT, first, hints, LESSON)).toEqual({ position: DOT, level: 2 })
  })

  test('[WR7] it stands through the turns of its step, whichever text came between, and is gone at the goal', () => {
    const hints = [{ level: 1, behind: [] }] as const
    expect(hintBesideWriting(DOT, WAY.slice(0, 3), hints, LESSON)).toEqual({ position: DOT, level: 1 })
    expect(hintBesideWriting(DOT, WAY, hints, LESSON)).toBeNull()
  })

  test('[WR7] rubbed out to fewer turns, or to others, it is not shown; written again it is', () => {
    const hints = [{ level: 1, behind: WAY.slice(0, 2) }] as const
    expect(hintBesideWriting(DOT, first, hints, LESSON)).toBeNull()
    expect(hintBesideWriting(DOT, turns("B' L D2"), hints, LESSON)).toBeNull()
    expect(hintBesideWriting(DOT, WAY.slice(0, 2), hints, LESSON)).not.toBeNull()
  })

  test('[WR7] what was kept is read back, and what makes no sense is left out', () => {
    const good = asked(2, "R U'")
    expect(readWrittenHints(JSON.parse(JSON.stringify([good])))).toEqual([good])
    const bad = [
      null,
      4,
      { level: 4, behind: [] },
      { level: 1 },
      { level: 1, behind: [99] },
      { level: 1, behind: ['R'] },
    ]
    expect(readWrittenHints([...bad, good])).toEqual([good])
    for (const kept of [null, {}, 'x']) expect(readWrittenHints(kept)).toEqual([])
  })
})
