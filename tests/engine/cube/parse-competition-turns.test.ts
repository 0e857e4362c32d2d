import fc from 'fast-check'
import { expect, test } from 'vitest'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { parseCompetitionTurns } from '../../../engine/cube/parse-competition-turns.ts'
import { PARSED_TURNS_MAX, parseTurns } from '../../../engine/cube/parse-turns.ts'
import { ALL_TURNS, turnKind } from '../../../engine/cube/turns.ts'
import { SEED } from './arbitraries.ts'

const aCompetitionTurn = fc.constantFrom(...ALL_TURNS.filter((turn) => turnKind(turn) !== 'slice'))

test('[NO1] what is written without slices reads back by the strict reader too', () => {
  fc.assert(
    fc.property(fc.array(aCompetitionTurn, { maxLength: 40 }), (sequence) => {
      expect(parseCompetitionTurns(formatTurns(sequence))).toEqual({ ok: true, value: sequence })
    }),
    { seed: SEED },
  )
})

test('[NO6] what the strict reader accepts the lenient one reads in the same way', () => {
  const nearlyNotation = fc
    .array(fc.constantFrom(..."URFDLBMESxyzw2'( )\n"), { maxLength: 12 })
    .map((letters) => letters.join(''))
  fc.assert(
    fc.property(nearlyNotation, (text) => {
      const strict = parseCompetitionTurns(text)
      if (strict.ok) expect(parseTurns(text)).toEqual(strict)
    }),
    { seed: SEED, numRuns: 5_000 },
  )
})

test('[NO4] no text makes the strict reader throw', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
      const read = parseCompetitionTurns(text)
      if (!read.ok && read.error.code === 'cube/unknown-turn') {
        expect(text.startsWith(read.error.token, read.error.at)).toBe(true)
      }
    }),
    { seed: SEED, numRuns: 500 },
  )
})

test('[NO5] the strict reader takes as many turns as the lenient one', () => {
  const full = 'R '.repeat(PARSED_TURNS_MAX)
  expect(parseCompetitionTurns(full).ok).toBe(true)
  expect(parseCompetitionTurns(`${full}U`)).toEqual({
    ok: false,
    error: { code: 'cube/too-many-turns', max: PARSED_TURNS_MAX },
  })
})
