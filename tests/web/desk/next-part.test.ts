/** What the plan has now, where that is no round. Rules DE: tests/RULES.md. */

import { expect, test } from 'vitest'
import type { DeskView } from '../../../engine/wire/views.ts'
import { nextPart } from '../../../web/desk/room-phase.ts'

const roomAt = (kind: string | null, roundPhases: readonly string[]) =>
  ({
    plan: kind === null ? null : { at: 1, plan: { title: '', parts: [{ kind: 'round' }, { kind }] } },
    rounds: roundPhases.map((phase) => ({ phase })),
  }) as unknown as Pick<DeskView, 'plan' | 'rounds'>

// Rows: the part that the class is at, the rounds so far, what is to be pressed next.
test.each([
  [null, [], null],
  ['round', ['ended'], null],
  ['example', [], 'demonstrate'],
  ['review', ['void', 'ended'], 'review'],
  // Nothing can be looked back at yet.
  ['review', ['void'], null],
] as const)('[DE21] at a part "%s" after rounds %j', (kind, roundPhases, wanted) => {
  expect(nextPart(roomAt(kind, roundPhases))).toBe(wanted)
})
