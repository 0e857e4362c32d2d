import i18next from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import { DEFAULT_ROUND_SETTINGS } from '../../../engine/contest/round-settings.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { countOuterBlockTurns } from '../../../engine/cube/outer-block-turns.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import { ALL_TURNS, inverseTurns, turnKind } from '../../../engine/cube/turns.ts'
import { bench } from '../../../web/locales/en/bench.ts'
import { common } from '../../../web/locales/en/common.ts'
import { sayWhatHappened } from '../../../web/parts/bench-page/words-for-turns.ts'
import { turnWords } from '../../../web/parts/turn-words.ts'

beforeAll(async () => {
  await i18next.init({ lng: 'en', resources: { en: { bench, common } }, interpolation: { escapeValue: false } })
})

const START = afterTurns(solvedCube(), inverseTurns(turnsOf("F U R U' R' F'")))

test.each([
  ['', 'F', 'front layer clockwise. 1 turn so far. An earlier layer is not whole just now.'],
  ['F', "F U R U' R'", 'Right trigger. 5 turns so far. 3 of 4 top edges show yellow.'],
  ["F U R U' R'", "F U R U' R' F'", 'front layer anticlockwise. 6 turns so far. The goal is reached.'],
  ['U', '', 'Taken back: top layer to the left. 0 turns so far.'],
  ['', 'y', 're-hold: the front goes to the left. 0 turns so far.'],
  ['R', 'F', ''],
])('[BE9] from "%s" to "%s"', (before, after, words) => {
  expect(sayWhatHappened(i18next.t, cubeAfter(before), cubeAfter(after), DEFAULT_ROUND_SETTINGS)).toBe(words)
})

test('[BE9] a new try is said', () => {
  const said = sayWhatHappened(i18next.t, cubeAfter('R'), { ...cubeAfter(''), tryNumber: 2 }, DEFAULT_ROUND_SETTINGS)
  expect(said).toBe('Try 2. The cube stands at the start.')
})

test('[BE9] every turn has words of its own', () => {
  const words = ALL_TURNS.map((turn) => turnWords(i18next.t, turn))
  expect(new Set(words).size).toBe(ALL_TURNS.length)
  for (const turn of ALL_TURNS) if (turnKind(turn) !== 'wide') expect(words[turn]).not.toMatch(/^(bench:)?turn\./)
})

function cubeAfter(text: string) {
  const standing = turnsOf(text)
  return { tryNumber: 1, standing, position: afterTurns(START, standing), turns: countOuterBlockTurns(standing) }
}

function turnsOf(text: string) {
  const read = parseTurns(text)
  if (!read.ok) throw new Error(`${text} cannot be read`)
  return read.value
}
