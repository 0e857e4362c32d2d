/** What a try remembers of the stages that it met and broke, against a plain recomputation from its cubes. Rules TU: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { playTry } from '../../../engine/contest/play-try.ts'
import { DEFAULT_ROUND_SETTINGS, type RoundSettings } from '../../../engine/contest/round-settings.ts'
import { anEmptyTry, type Try } from '../../../engine/contest/round-state.ts'
import { hintLevelOf, type Step, stepOf, TAKE_BACK } from '../../../engine/contest/steps.ts'
import { afterTurns, applyTurn } from '../../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../../engine/cube/cube-position.ts'
import { inverseTurn, type Turn } from '../../../engine/cube/turns.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { STAGES } from '../../../engine/method/stages.ts'
import { SEED, turns } from '../cube/arbitraries.ts'
import { anArrangementOf, aSpan } from '../method/starts.ts'

/** The cubes of a try: the start, then after each step. */
function cubesOf(start: CubePosition, steps: readonly Step[]): CubePosition[] {
  const cubes = [start]
  const standing: Turn[] = []
  let now = start
  for (const step of steps) {
    now = copyCube(now)
    if (step === TAKE_BACK) applyTurn(now, inverseTurn(standing.pop() as Turn))
    else if (hintLevelOf(step) === null) {
      applyTurn(now, step as Turn)
      standing.push(step as Turn)
    }
    cubes.push(now)
  }
  return cubes
}

/** From all cubes of the try at once: the furthest goal met so far, and since when it is broken. */
function recomputed(cubes: readonly CubePosition[], to: number): Pick<Try, 'highest' | 'brokeAfter'> {
  const furthest = (upTo: number) =>
    Math.max(
      0,
      ...STAGES.filter((stage) => stage <= to && cubes.slice(0, upTo + 1).some((cube) => goalMet(cube, stage))),
    )
  const isBroken = (at: number) => furthest(at) > 0 && !goalMet(cubes[at], furthest(at) as 1)
  const last = cubes.length - 1
  let first = last
  while (first > 0 && isBroken(first)) first--
  return { highest: furthest(last) as Try['highest'], brokeAfter: isBroken(last) ? first : null }
}

/** Turns that break layers, mend them and take them back: triggers, single turns, hints, parts of the lesson's own way. */
const somePieces = fc.array(
  fc.constantFrom("R U R' U'", "U R U' R'", "L' U' L U", "F'", 'F', 'R2', 'y', 'U', 'back', 'hint', 'lesson', 'lesson'),
  { maxLength: 14 },
)

function stepsFrom(start: CubePosition, pieces: readonly string[], settings: RoundSettings): Step[] {
  const steps: Step[] = []
  const standing: Turn[] = []
  const turn = (each: Turn) => {
    steps.push(each)
    standing.push(each)
  }
  for (const piece of pieces) {
    if (piece === 'hint') steps.push(stepOf('hint-1'))
    else if (piece === 'back') {
      if (standing.pop() !== undefined) steps.push(TAKE_BACK)
    } else if (piece === 'lesson') lessonWay(afterTurns(start, standing), settings).slice(0, 9).forEach(turn)
    else turns(piece).forEach(turn)
  }
  return steps
}

test('[TU13] the furthest goal of a try, and the step behind which it broke, are what its cubes say', () => {
  const aStart = aSpan.chain((span) => anArrangementOf(span.from).map((start) => ({ span, start })))
  let nBroken = 0
  fc.assert(
    fc.property(aStart, somePieces, ({ span, start }, pieces) => {
      fc.pre(!goalMet(start, span.to))
      const settings: RoundSettings = { ...DEFAULT_ROUND_SETTINGS, ...span, hints: 3 }
      const played = playTry(anEmptyTry(start, 1), stepsFrom(start, pieces, settings), settings, 0)
      if (!played.ok) throw new Error(played.error.code)
      const { steps, highest, brokeAfter } = played.value
      if (brokeAfter !== null) nBroken++
      expect({ highest, brokeAfter }).toEqual(recomputed(cubesOf(start, steps), span.to))
    }),
    { seed: SEED, numRuns: 400 },
  )
  // Neither hardly ever nor always: both answers are tried.
  expect(nBroken).toBeGreaterThan(50)
  expect(nBroken).toBeLessThan(350)
})
