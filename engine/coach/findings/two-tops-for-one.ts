/**
 * The top layer was turned twice before a sequence, where one turn would do.
 *
 *     U U A    where U2 A does the same
 */

import { type TurnName, turnNamed, turnQuarters } from '../../cube/turns.ts'
import { assert } from '../../result.ts'
import { aboutSegment, type Finder } from './finding.ts'

const TOP_TURNS: readonly TurnName[] = ['U', 'U2', "U'"]

/** Several top turns in front of a sequence; they cost all but one. */
export const twoTopsForOne: Finder = (explained, index) => {
  const segment = explained.segments[index]
  if (segment.kind !== 'sequence' || segment.done.nTops < 2) return null
  const { nTops, topQuarters, beginsAt } = segment.done
  const better = TOP_TURNS.map(turnNamed).find((turn) => turn !== undefined && turnQuarters(turn) === topQuarters)
  assert(better !== undefined, 'turns that do something do what one turn does')
  const finding = aboutSegment(segment, { key: 'coach/two-for-one', nTurns: nTops, better })
  return { ...finding, to: beginsAt, until: beginsAt, costTurns: nTops - 1 }
}
