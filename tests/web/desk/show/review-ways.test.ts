/** Which ways a review shows, and under what names. Rules RV: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import type { SeatId } from '../../../../engine/contest/ids.ts'
import { SHOWN_WAYS_MAX } from '../../../../engine/wire/limits.ts'
import { shownSchema } from '../../../../engine/wire/shown.ts'
import { defaultChoice, nChosen, waysToShow } from '../../../../web/desk/show/review-ways.ts'
import { aReview } from './a-review.ts'

const seat = (name: string) => `seat-${name}` as SeatId
const choice = (...names: string[]) => ({ shortest: true, lesson: true, seats: names.map(seat) })

describe('what a review begins with', () => {
  test.each<[string, [string, number | null][], string[]]>([
    ['of nobody', [], []],
    ['of one', [['Ada', 9]], ['Ada']],
    [
      'of two',
      [
        ['Ada', 9],
        ['Bo', 12],
      ],
      ['Ada', 'Bo'],
    ],
    [
      'of three',
      [
        ['Ada', 9],
        ['Bo', 12],
        ['Cy', 30],
      ],
      ['Ada', 'Bo', 'Cy'],
    ],
    [
      'of many: the best, one in the middle, the last',
      [
        ['Ada', 9],
        ['Bo', 10],
        ['Cy', 11],
        ['Di', 12],
        ['Eve', 30],
      ],
      ['Ada', 'Cy', 'Eve'],
    ],
    [
      'of those who reached the goal, when anybody did',
      [
        ['Ada', 9],
        ['Bo', null],
        ['Cy', null],
      ],
      ['Ada'],
    ],
    [
      'of those on their way, when nobody did',
      [
        ['Bo', null],
        ['Cy', null],
      ],
      ['Bo', 'Cy'],
    ],
  ])('[RV4] %s', (_what, students, names) => {
    expect(defaultChoice(aReview(students)).seats).toEqual(names.map(seat))
  })

  test('[RV4] with the two ways of the guide, as soon as there are any', () => {
    expect(defaultChoice(aReview([['Ada', 9]]))).toMatchObject({ shortest: true, lesson: true })
    expect(defaultChoice({ ...aReview([['Ada', 9]]), ways: null })).toMatchObject({ shortest: false, lesson: false })
    expect(nChosen(choice('Ada', 'Bo'))).toBe(4)
  })
})

describe('what is shown', () => {
  const REVIEW = aReview([
    ['Ada', 9],
    ['Bo', 12],
    ['Cy', null],
  ])

  test('[RV5] the shortest, the lesson way and the chosen students, in this order', () => {
    expect(waysToShow(REVIEW, choice('Cy', 'Ada'), false).map(({ owner, reached }) => [owner, reached])).toEqual([
      [{ kind: 'shortest' }, true],
      [{ kind: 'lesson' }, true],
      [{ kind: 'name', name: 'Cy' }, false],
      [{ kind: 'name', name: 'Ada' }, true],
    ])
  })

  test('[RV5] what is not proven is called best known', () => {
    const par = { turns: 3, proven: false, lowerBound: 2 }
    expect(waysToShow({ ...REVIEW, par }, choice(), false)[0].owner).toEqual({ kind: 'best-known' })
  })

  test('[RV5] with names hidden students are letters in the order in which they are shown, and no name is left', () => {
    const shown = waysToShow(REVIEW, choice('Bo', 'Ada'), true)
    expect(shown.map(({ owner }) => ('letter' in owner ? owner.letter : owner.kind))).toEqual([
      'shortest',
      'lesson',
      'A',
      'B',
    ])
    expect(JSON.stringify(shown)).not.toMatch(/Ada|Bo/)
  })

  test('[RV5] somebody who left meanwhile falls away', () => {
    expect(waysToShow(REVIEW, choice('Zoe', 'Ada'), false)).toHaveLength(3)
  })

  test('[RV5] never more than a projector has room for, and always what a showing may be', () => {
    const many = aReview(Array.from({ length: 12 }, (_, index) => [`N${index}`, 10 + index]))
    const all = { shortest: true, lesson: true, seats: many.solutions.map(({ seatId }) => seatId) }
    for (const hidesNames of [true, false]) {
      const ways = waysToShow(many, all, hidesNames)
      expect(ways).toHaveLength(SHOWN_WAYS_MAX)
      const { start, settings, number: roundNumber } = many.round
      const { from, to, baseColour } = settings
      const shown = { kind: 'review', roundNumber, from, to, start, baseColour, ways }
      expect(shownSchema.safeParse(shown).error?.issues).toBeUndefined()
    }
  })
})
