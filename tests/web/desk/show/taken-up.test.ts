/** What a desk goes on with when it comes back while something is shown. Rules SW: tests/RULES.md. */

import type { TFunction } from 'i18next'
import { beforeAll, describe, expect, test } from 'vitest'
import type { SeatId } from '../../../../engine/contest/ids.ts'
import { solvedCube } from '../../../../engine/cube/cube-position.ts'
import { formatStickers } from '../../../../engine/cube/stickers.ts'
import { turnName } from '../../../../engine/cube/turns.ts'
import type { ShowingAt, ShownCube } from '../../../../engine/wire/shown.ts'
import {
  type Material,
  type Source,
  shownFrom,
  sourcesOf,
  takenUp,
} from '../../../../web/desk/show/demonstration-source.ts'
import { takenUpChoice, waysToShow } from '../../../../web/desk/show/review-ways.ts'
import { cubeAfter, turns } from '../../../engine/cube/arbitraries.ts'
import { inEnglish } from '../../english.ts'
import { aReview } from './a-review.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

const row = (text: string) => turns(text).map(turnName)
const startAfter = (text: string) => formatStickers(cubeAfter(text))
const START = startAfter("F U R U' R' F'")
const LESSON = row("F R U R' U' F'")
const SHORTEST = row("R U R'")
const KIM = row('U F')
const OWN = row("R U y R'")
const AT: ShowingAt = { at: 2, chosen: 0, pointer: 'UF' }

function material(more: Partial<Material> = {}): Material {
  const view = {
    round: { start: START, settings: { baseColour: 'white' } },
    ways: { lesson: { turns: LESSON }, shortest: SHORTEST },
    settings: { baseColour: 'white' },
    plan: null,
  } as unknown as Material['view']
  const example = { stage: 4, caseId: null, start: startAfter('R U F'), way: row("F R' F'") } as const
  return { view, given: null, example, kept: null, ...more }
}

function shown(source: Source, own = OWN, of = material()): ShownCube {
  return { kind: 'cube', ...shownFrom(t, source, of, own) }
}

describe('a demonstration that is shown', () => {
  test.each<[Source]>([['own-start'], ['own-solved'], ['own-case']])(
    '[SW13] goes on: the turns of %s, and where it points',
    (source) => {
      expect(takenUp(t, { shown: shown(source), at: { ...AT, at: OWN.length } }, material())).toEqual({
        source,
        own: OWN,
        gone: OWN.length,
        pointer: 'UF',
        kept: null,
      })
    },
  )

  test.each<[Source]>([['lesson'], ['shortest'], ['case-way'], ['given']])(
    '[SW13] goes on: %s as far as it has gone',
    (source) => {
      const given = { name: 'Kim', turns: KIM }
      const at = material({ given })
      expect(takenUp(t, { shown: shown(source, [], at), at: AT }, at)).toEqual({
        source,
        own: [],
        gone: 2,
        pointer: 'UF',
        kept: null,
      })
    },
  )

  test('[SW13] stays as the class sees it where nothing at hand makes it: turns of a try that has gone', () => {
    const was = shown('given', [], material({ given: { name: 'Kim', turns: KIM } }))
    const taken = takenUp(t, { shown: was, at: AT }, material())
    expect(taken).toMatchObject({ source: 'kept', gone: 2, kept: was })
    const now = material({ kept: taken?.kept ?? null })
    expect(sourcesOf(now)).toContain('kept')
    expect(shown('kept', [], now)).toEqual(was)
  })

  test('[SW13] the same for a cube of one’s own from another start, which can be turned on', () => {
    const was: ShownCube = { ...shown('own-case'), start: startAfter("B' L2") }
    const taken = takenUp(t, { shown: was, at: AT }, material())
    expect(taken).toMatchObject({ source: 'own-kept', own: OWN, kept: was })
    const now = material({ kept: taken?.kept ?? null })
    const further = [...OWN, ...row('U')]
    expect(shown('own-kept', further, now)).toEqual({ ...was, turns: further })
  })

  test('[SW13] is not there while a review is', () => {
    const review = {
      kind: 'review',
      roundNumber: 1,
      from: 4,
      to: 4,
      start: formatStickers(solvedCube()),
      baseColour: 'white',
      ways: [],
    } as const
    expect(takenUp(t, { shown: review, at: AT }, material())).toBeNull()
  })
})

describe('a review that is shown', () => {
  const review = aReview([
    ['Ada', 9],
    ['Bo', 12],
    ['Cy', 30],
  ])
  const seat = (name: string) => `seat-${name}` as SeatId
  const { round } = review
  const { from, to, baseColour } = round.settings
  const asShown = (ways: ReturnType<typeof waysToShow>, start = round.start) =>
    ({ kind: 'review', roundNumber: round.number, from, to, start, baseColour, ways }) as const

  test.each([
    ['with names', false],
    ['without', true],
  ])('[SW13] goes on %s, the same ways chosen', (_, hidesNames) => {
    const choice = { shortest: review.ways !== null, lesson: false, seats: [seat('Ada'), seat('Cy')] }
    const ways = waysToShow(review, choice, hidesNames)
    const taken = takenUpChoice(review, asShown(ways))
    expect(taken?.hidesNames).toBe(hidesNames)
    expect(taken === null ? null : waysToShow(review, taken.choice, hidesNames)).toEqual(ways)
  })

  test('[SW13] is another one for another start, and where a way has gone', () => {
    const ways = waysToShow(review, { shortest: false, lesson: true, seats: [seat('Bo')] }, false)
    expect(takenUpChoice(review, asShown(ways, startAfter('R')))).toBeNull()
    const gone = { owner: { kind: 'name', name: 'Di' }, turns: KIM, reached: true, hintTurns: 0 } as const
    expect(takenUpChoice(review, asShown([...ways, gone]))).toBeNull()
  })
})
