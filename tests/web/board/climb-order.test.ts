/** The order in which lanes climb: a few at a time, and always to the end. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { nextOrder, sameOrder, withMembersOf } from '../../../web/parts/lanes/climb-order.ts'

const order = (text: string) => text.split('')

describe('nextOrder', () => {
  test.each([
    // shown, target, climbers at once, next
    ['abcd', 'abcd', 3, 'abcd'],
    ['abcd', 'dabc', 3, 'dabc'],
    ['abcdef', 'fedabc', 1, 'fabcde'],
    ['abcdef', 'fedabc', 2, 'feabcd'],
    ['abcdef', 'fedabc', 3, 'fedabc'],
  ])('[BO5] %s on the way to %s, %i at once, becomes %s', (shown, target, nClimbers, next) => {
    expect(nextOrder(order(shown), order(target), nClimbers).join('')).toBe(next)
  })

  test('[BO5] it ends at the target, no more climb at once than may, and loses nobody', () => {
    const twoOrders = fc
      .uniqueArray(fc.integer({ min: 0, max: 99 }).map(String), { minLength: 1, maxLength: 30 })
      .chain((ids) => fc.tuple(shuffled(ids), shuffled(ids)))
    fc.assert(
      fc.property(twoOrders, fc.integer({ min: 1, max: 4 }), ([from, target], nClimbers) => {
        let shown: readonly string[] = from
        for (let step = 0; step <= from.length && !sameOrder(shown, target); step++) {
          const next = nextOrder(shown, target, nClimbers)
          expect([...next].sort()).toEqual([...target].sort())
          expect(nClimbed(shown, next)).toBeLessThanOrEqual(nClimbers)
          shown = next
        }
        expect(shown).toEqual(target)
      }),
    )
  })
})

describe('withMembersOf', () => {
  test.each([
    ['abc', 'abc', 'abc'],
    ['abc', 'ac', 'abc'],
    ['ac', 'abc', 'ac'],
    ['xabc', 'cba', 'xcba'],
    ['abcx', 'cba', 'cxba'],
  ])('[BO6] towards %s, %s is shown as %s', (target, shown, expected) => {
    expect(withMembersOf(order(target), order(shown)).join('')).toBe(expected)
  })
})

/** Lanes outside a longest part that keeps its order. */
function nClimbed(before: readonly string[], after: readonly string[]): number {
  const places = after.map((id) => before.indexOf(id))
  const longest: number[] = []
  for (const place of places) {
    const at = longest.findIndex((top) => top >= place)
    longest[at < 0 ? longest.length : at] = place
  }
  return before.length - longest.length
}

function shuffled(ids: readonly string[]) {
  return fc.shuffledSubarray([...ids], { minLength: ids.length, maxLength: ids.length })
}
