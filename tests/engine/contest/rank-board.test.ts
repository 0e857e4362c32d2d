/** The ranking. Rules RA: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { SeatId } from '../../../engine/contest/ids.ts'
import { type Lane, rankBoard } from '../../../engine/contest/rank-board.ts'
import { SEED } from '../cube/arbitraries.ts'

function lane(name: string, best: [turns: number, momentMs: number] | null, more: Partial<Lane> = {}): Lane {
  const reached = best === null ? null : { turns: best[0], momentMs: best[1] }
  return {
    seatId: name as SeatId,
    name,
    late: false,
    turns: 0,
    tryNumber: 1,
    tryReached: false,
    best: reached,
    progress: 0,
    notes: null,
    ...more,
  }
}
const ranked = (lanes: Lane[], phase: 'running' | 'ended') =>
  rankBoard(lanes, phase).map((each) => [each.place, each.name])

describe('the board', () => {
  test('[RA1] fewest turns lead, then the earlier moment', () => {
    const lanes = [lane('Cy', [18, 100]), lane('Ada', [18, 90]), lane('Bo', [12, 5_000])]
    expect(ranked(lanes, 'running')).toEqual([
      [1, 'Bo'],
      [2, 'Ada'],
      [3, 'Cy'],
    ])
  })

  test('[RA2] equal on both share the place, and the next place is skipped', () => {
    const lanes = [lane('Di', [14, 70]), lane('Ada', [12, 10]), lane('Cy', [14, 60]), lane('Bo', [14, 60])]
    expect(ranked(lanes, 'ended')).toEqual([
      [1, 'Ada'],
      [2, 'Bo'],
      [2, 'Cy'],
      [4, 'Di'],
    ])
  })

  test('[RA3] who has not reached the goal has no place: by name while the clock runs, by progress when it has ended', () => {
    const lanes = [
      lane('Cy', null, { progress: 1, turns: 3 }),
      lane('Bo', null, { progress: 3, turns: 90 }),
      lane('Ada', null),
      lane('Di', [9, 9]),
    ]
    expect(ranked(lanes, 'running')).toEqual([
      [1, 'Di'],
      [null, 'Ada'],
      [null, 'Bo'],
      [null, 'Cy'],
    ])
    expect(ranked(lanes, 'ended')).toEqual([
      [1, 'Di'],
      [null, 'Bo'],
      [null, 'Cy'],
      [null, 'Ada'],
    ])
  })

  test('[RA4] the order is the same whatever order the lanes come in, and nobody is lost', () => {
    const anyLane = fc.record({
      name: fc.constantFrom('Ada', 'Bo', 'Cy'),
      turns: fc.integer({ min: 1, max: 4 }),
      momentMs: fc.integer({ min: 0, max: 3 }),
      hasReached: fc.boolean(),
      progress: fc.nat(4),
    })
    const anyBoard = fc.array(anyLane, { maxLength: 40 }).map((all) =>
      all.map((each, index) =>
        lane(each.name, each.hasReached ? [each.turns, each.momentMs] : null, {
          seatId: `s${index}` as SeatId,
          progress: each.progress,
        }),
      ),
    )
    fc.assert(
      fc.property(
        anyBoard,
        fc.constantFrom('running' as const, 'ended' as const),
        fc.infiniteStream(fc.nat()),
        (lanes, phase, chance) => {
          const mixed = lanes
            .map((each) => ({ each, key: chance.next().value as number }))
            .sort((a, b) => a.key - b.key)
            .map(({ each }) => each)
          expect(rankBoard(mixed, phase)).toEqual(rankBoard(lanes, phase))
          expect(rankBoard(lanes, phase).length).toBe(lanes.length)
        },
      ),
      { seed: SEED },
    )
  })

  test('[RA5] a place is one more than the number of students who did strictly better', () => {
    const anyBoard = fc.array(fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 0, max: 3 })), {
      maxLength: 30,
    })
    fc.assert(
      fc.property(anyBoard, (all) => {
        const lanes = all.map(([turns, momentMs], index) => lane(`N${index}`, [turns, momentMs]))
        for (const each of rankBoard(lanes, 'ended')) {
          const nBetter = all.filter(
            ([turns, momentMs]) =>
              turns < each.best!.turns || (turns === each.best!.turns && momentMs < each.best!.momentMs),
          ).length
          expect(each.place).toBe(nBetter + 1)
        }
      }),
      { seed: SEED },
    )
  })
})
