import { expect, test } from 'vitest'
import { TAKE_BACK } from '../../../engine/contest/steps.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { cubesEqual, solvedCube } from '../../../engine/cube/cube-position.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import type { Stage } from '../../../engine/method/stages.ts'
import { newPractice, type PracticeStep, practise } from '../../../web/bench/practice-cube.ts'
import { DEFAULT_BENCH_SETTINGS, readBenchSettings } from '../../../web/parts/bench-page/bench-settings.ts'
import { goalProgress } from '../../../web/parts/bench-page/goal-progress.ts'

test.each([
  ['nothing', null, DEFAULT_BENCH_SETTINGS],
  ['no JSON', '{', DEFAULT_BENCH_SETTINGS],
  ['no record', '[1]', DEFAULT_BENCH_SETTINGS],
  ['null', 'null', DEFAULT_BENCH_SETTINGS],
  ['one wrong, one right', '{"marks":"stars","showClock":false}', { ...DEFAULT_BENCH_SETTINGS, showClock: false }],
  ['a word for a flag', '{"marks":"letters","shortcuts":"no"}', { ...DEFAULT_BENCH_SETTINGS, marks: 'letters' }],
])('[BE6] kept: %s', (_, kept, settings) => {
  expect(readBenchSettings(kept)).toEqual(settings)
})

test('[BE7] the practice cube turns, takes back and starts again', () => {
  const turned = after([...turnsOf('R U'), TAKE_BACK, ...turnsOf('F')])
  expect(cubesEqual(turned.position, afterTurns(solvedCube(), turnsOf('R F')))).toBe(true)
  expect(turned.standing).toEqual(turnsOf('R F'))
  const again = practise(turned, 'start-again')
  expect(cubesEqual(again.position, solvedCube())).toBe(true)
  expect(again.tryNumber).toBe(2)
  expect(after([TAKE_BACK]).standing).toEqual([])
})

// Rows: turns from the solved cube, the round's span, the stage at hand, parts done, earlier layers whole, reached.
test.each<[string, Stage, Stage, Stage, number, boolean, boolean]>([
  ['', 4, 4, 4, 4, true, true],
  ["F U R U' R' F'", 4, 4, 4, 2, true, false],
  ['U', 4, 7, 6, 0, true, false],
  ['R', 4, 4, 4, 4, false, false],
])('[BE8] after "%s" from stage %i to %i', (text, from, to, stage, nDone, earlierWhole, reached) => {
  const progress = goalProgress(afterTurns(solvedCube(), turnsOf(text)), { from, to })
  expect(progress.stage).toBe(stage)
  expect(progress.earlierWhole).toBe(earlierWhole)
  expect(progress.reached).toBe(reached)
  if (earlierWhole) expect(progress.nDone).toBe(nDone)
})

function after(steps: readonly PracticeStep[]) {
  return steps.reduce(practise, newPractice())
}

function turnsOf(text: string) {
  const read = parseTurns(text)
  if (!read.ok) throw new Error(`${text} cannot be read`)
  return read.value
}
