/** The pars that a round deals, and how a teacher narrows them. Rules DE: tests/RULES.md. */

import { beforeAll, describe, expect, test } from 'vitest'
import { chachaSource, SEED_BYTES } from '../../../../engine/chance/chacha-source.ts'
import { drawRoundStart } from '../../../../engine/contest/draw-round-start.ts'
import { DEFAULT_ROUND_SETTINGS, type RoundSettings } from '../../../../engine/contest/round-settings.ts'
import { STAGES } from '../../../../engine/method/stages.ts'
import { openParTables, type ParTables } from '../../../../engine/search/par/open-par-tables.ts'
import { withLastStage, withStage } from '../../../../web/desk/change-settings.ts'
import { dealtPars, parsThatOccur, parThirds, shareInRange } from '../../../../web/desk/plan/dealt-pars.ts'
import { parRangeWords } from '../../../../web/desk/plan/par-range-words.ts'
import { rulesSummary } from '../../../../web/desk/plan/rules-summary.ts'
import { inEnglish } from '../../english.ts'

let pars: ParTables
beforeAll(async () => {
  const opened = await openParTables()
  if (!opened.ok) throw new Error(opened.error.code)
  pars = opened.value
})
const settings = (changes: Partial<RoundSettings>): RoundSettings => ({ ...DEFAULT_ROUND_SETTINGS, ...changes })

describe('the pars that are shown', () => {
  // Origin: a start of stage 4 is a dot (1 of 8 patterns), a line (2) or a corner shape (4); the cross (1) is not dealt.
  test('[DE9] are those of the chosen cases, without the goal', () => {
    expect(dealtPars(settings({ from: 4 }), pars).reduce((sum, n) => sum + n, 0)).toBe(7)
    expect(dealtPars(settings({ from: 4, cases: ['line'] }), pars).reduce((sum, n) => sum + n, 0)).toBe(2)
    expect(dealtPars(settings({ from: 1 }), pars)[0]).toBe(0)
  })

  test.each(STAGES)('[DE9] stage %i: are as frequent among drawn starts', (stage) => {
    const counts = dealtPars(settings({ from: stage }), pars)
    const random = chachaSource(new Uint8Array(SEED_BYTES).fill(stage))
    const nDraws = 1_500
    const drawn: number[] = counts.map(() => 0)
    for (let n = 0; n < nDraws; n++) {
      const start = drawRoundStart(settings({ from: stage, to: stage }), random, pars)
      if (start === null) throw new Error('nothing was drawn')
      drawn[pars.parOf(start, stage)]++
    }
    counts.forEach((_, par) => {
      const expected = shareInRange(counts, { parFrom: par, parTo: par })
      // Five standard deviations of a binomial share, and one draw.
      const margin = 5 * Math.sqrt((expected * (1 - expected)) / nDraws) + 1 / nDraws
      expect(Math.abs(drawn[par] / nDraws - expected), `par ${par}`).toBeLessThanOrEqual(margin)
    })
  })
})

describe('the thirds', () => {
  test.each<[readonly number[], object]>([
    [
      [0, 15, 158, 1394, 9809, 46381, 97254, 34966, 102],
      {
        shorter: { parFrom: null, parTo: 5 },
        middle: { parFrom: 6, parTo: 6 },
        longer: { parFrom: 7, parTo: null },
      },
    ],
    [[0, 6, 0, 1], { shorter: { parFrom: null, parTo: 1 }, longer: { parFrom: 3, parTo: null } }],
    [[0, 0, 7], {}],
    [[], {}],
  ])('[DE10] of %j', (counts, thirds) => expect(parThirds(counts)).toEqual(thirds))

  test.each(STAGES)('[DE10] stage %i: every start is in one of them, and in one only', (stage) => {
    const counts = dealtPars(settings({ from: stage }), pars)
    const thirds = Object.values(parThirds(counts))
    for (const par of parsThatOccur(counts)) {
      const inside = thirds
        .filter((third) => shareInRange(counts, third) > 0)
        .filter(({ parFrom, parTo }) => {
          return (parFrom ?? 0) <= par && par <= (parTo ?? Number.POSITIVE_INFINITY)
        })
      expect(inside.length).toBe(1)
    }
  })
})

test('[DE11] a range of pars falls with its stage, and with a second stage', () => {
  const narrow = settings({ from: 4, to: 4, parFrom: 7, parTo: 9 })
  expect(withStage(narrow, 5)).toMatchObject({ parFrom: null, parTo: null })
  expect(withLastStage(narrow, 6)).toMatchObject({ parFrom: null, parTo: null })
  expect(withLastStage(narrow, 4)).toMatchObject({ parFrom: 7, parTo: 9 })
})

test('[DE12] the folded rules say what differs from a plain round', async () => {
  const t = await inEnglish()
  expect(rulesSummary(t, settings({}))).toBe(
    'many tries · turns can be taken back · white first layer · everybody sees the board',
  )
  expect(rulesSummary(t, settings({ parFrom: 7, cube: 'real' }))).toMatch(/^par 7 or more · real cubes · many tries/)
  expect(
    [
      [null, null],
      [7, 7],
      [7, 9],
      [null, 9],
    ].map(([parFrom, parTo]) => parRangeWords(t, { parFrom, parTo })),
  ).toEqual(['', 'par 7', 'par 7 to 9', 'par 9 or less'])
})
