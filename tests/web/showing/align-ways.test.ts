/** Ways laid beside each other, so that the same moment of the puzzle stands at the same place. Rules SW: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { outerBlockCost } from '../../../engine/cube/outer-block-turns.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import { alignWays, turnsDoneAt, type WayMoment } from '../../../web/parts/showing/align-ways.ts'
import { aTurn, SEED, turns } from '../../engine/cube/arbitraries.ts'

type Way = { readonly turns: readonly Turn[]; readonly moments: readonly WayMoment[] }

/** `way('F R U', 'a0 b2')`: moment b after two turns. */
const way = (text: string, moments: string): Way => ({
  turns: turns(text),
  moments: moments.split(' ').map((each) => ({ key: each[0], turnIndex: Number(each.slice(1)) })),
})
const costOf = (each: Way) => each.turns.reduce((sum, turn) => sum + outerBlockCost(turn), 0)

describe('rows', () => {
  test('[SW8] who is there earlier waits for who is there later, and both go on together', () => {
    const { ways, moments, nSquares } = alignWays([way('F R', 'a0 b1 c2'), way('F2 U D R', 'a0 b3 c4')])
    expect(ways[0]).toEqual({ places: [0, 3, 4], waits: [{ turnIndex: 1, squares: 2 }] })
    expect(ways[1]).toEqual({ places: [0, 1, 2, 3, 4], waits: [] })
    expect([moments, nSquares]).toEqual([
      [
        { key: 'b', place: 3 },
        { key: 'c', place: 4 },
      ],
      4,
    ])
  })

  test('[SW8] a slice takes two squares, a re-hold none', () => {
    expect(alignWays([way('y M R', 'a0')]).ways[0].places).toEqual([0, 0, 2, 3])
  })

  test('[SW8] a wait at the end stands behind the last turn', () => {
    const { ways } = alignWays([way('R', 'a0 z1'), way('R U R', 'a0 z3')])
    expect(ways[0]).toEqual({ places: [0, 3], waits: [{ turnIndex: 1, squares: 2 }] })
  })

  test('[SW9] a moment that two ways meet in another order, or one way alone, is shared by none', () => {
    const { moments } = alignWays([way('R U F', 'a0 b1 c2 z3'), way('R U F', 'a0 c1 b2 z3'), way('R U F', 'a0 d1 z3')])
    expect(moments.map(({ key }) => key)).toContain('z')
    expect(moments.filter(({ key }) => key === 'b' || key === 'c').length).toBeLessThanOrEqual(1)
    expect(moments.map(({ key }) => key)).not.toContain('d')
  })

  test('[SW9] a moment that a way meets twice counts where it is met first', () => {
    const { moments, ways } = alignWays([way('R U F D', 'a0 b1 c2 b3 z4'), way('R U F D', 'a0 b2 z4')])
    expect(moments).toEqual([
      { key: 'b', place: 2 },
      { key: 'z', place: 5 },
    ])
    expect(ways[0].waits).toEqual([{ turnIndex: 1, squares: 1 }])
  })

  test('[SW8] nothing is nothing', () => {
    expect(alignWays([])).toEqual({ ways: [], moments: [], nSquares: 0 })
    expect(alignWays([{ turns: [], moments: [] }])).toMatchObject({ nSquares: 0, ways: [{ places: [0], waits: [] }] })
  })
})

/** Any turns, and moments as the coach reads them: one after another, neighbours different, keys coming again. */
const aWay: fc.Arbitrary<Way> = fc.array(aTurn, { maxLength: 25 }).chain((all) =>
  fc
    .tuple(
      fc.subarray(Array.from({ length: all.length }, (_, index) => index + 1)),
      fc.infiniteStream(fc.constantFrom(...'bcdefgh')),
    )
    .map(([indexes, keys]) => {
      const moments: WayMoment[] = [{ key: 'a', turnIndex: 0 }]
      for (const turnIndex of indexes) {
        const key = keys.next().value
        if (moments[moments.length - 1].key !== key) moments.push({ key, turnIndex })
      }
      return { turns: all, moments }
    }),
)
const someWays = fc.array(aWay, { minLength: 1, maxLength: 8 })
const firstOf = ({ moments }: Way, key: string) => moments.find((moment) => moment.key === key)?.turnIndex

describe('whatever ways are laid beside each other', () => {
  test('[SW8] none goes backwards, and its squares are its counted turns and what it waits', () => {
    fc.assert(
      fc.property(someWays, (all) => {
        const { ways, nSquares } = alignWays(all)
        for (const [index, { places, waits }] of ways.entries()) {
          expect(places.length).toBe(all[index].turns.length + 1)
          for (let at = 1; at < places.length; at++) expect(places[at]).toBeGreaterThanOrEqual(places[at - 1])
          expect(waits.every(({ squares }) => squares > 0)).toBe(true)
          const waited = waits.reduce((sum, { squares }) => sum + squares, 0)
          expect(places[places.length - 1]).toBe(costOf(all[index]) + waited)
        }
        expect(nSquares).toBe(Math.max(...ways.map(({ places }) => places[places.length - 1])))
      }),
      { seed: SEED, numRuns: 500 },
    )
  })

  test('[SW9] a shared moment stands at one place on every way that meets it, in an order that no way contradicts', () => {
    let nShared = 0
    fc.assert(
      fc.property(someWays, (all) => {
        const { ways, moments } = alignWays(all)
        nShared += moments.length
        for (const { key, place } of moments) {
          const there = all.flatMap((each, index) => {
            const turnIndex = firstOf(each, key)
            return turnIndex === undefined ? [] : [ways[index].places[turnIndex]]
          })
          expect(there.length).toBeGreaterThanOrEqual(2)
          expect(new Set(there)).toEqual(new Set([place]))
        }
        for (const each of all) {
          const own = moments.flatMap(({ key }) => firstOf(each, key) ?? [])
          expect(own).toEqual([...own].sort((a, b) => a - b))
        }
        expect(moments.map(({ place }) => place)).toEqual(moments.map(({ place }) => place).sort((a, b) => a - b))
      }),
      { seed: SEED, numRuns: 500 },
    )
    expect(nShared).toBeGreaterThan(100)
  })

  test('[SW9] the same way twice shares all of its moments and waits for nobody', () => {
    fc.assert(
      fc.property(aWay, (each) => {
        const { ways, moments } = alignWays([each, each])
        expect(ways.flatMap(({ waits }) => waits)).toEqual([])
        expect(moments.map(({ key }) => key)).toEqual([...new Set(each.moments.map(({ key }) => key))].slice(1))
      }),
      { seed: SEED },
    )
  })

  test('[SW8] the mark counts turns that end where it stands or before: never fewer as it goes on, all at the end', () => {
    fc.assert(
      fc.property(someWays, (all) => {
        const { ways, nSquares } = alignWays(all)
        for (const [index, each] of ways.entries()) {
          const done = Array.from({ length: nSquares + 1 }, (_, place) => turnsDoneAt(each, place))
          expect(done).toEqual([...done].sort((a, b) => a - b))
          expect(done[nSquares]).toBe(all[index].turns.length)
        }
      }),
      { seed: SEED },
    )
  })
})
