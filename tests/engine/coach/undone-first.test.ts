/** Which of several turns of one layer is said to have been undone. Rules CC: tests/RULES.md. */

import { expect, test } from 'vitest'
import { readSolution } from '../../../engine/coach/read-solution.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { inverseTurns, turnOf } from '../../../engine/cube/turns.ts'
import { drawArrangement } from '../../../engine/method/draw-start.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { cubeAfter, turns } from '../cube/arbitraries.ts'
import { sourceNumbered } from '../method/starts.ts'

const TOP_FIRST = "U R U' R'"
const CROSS = "F U R U' R' F'"

// Origin: turned on a cube by hand. The turn behind the pair is the same as its first, so that two pairs would do.
test.each([
  ['before a trigger that begins with it', `U U' ${TOP_FIRST}`, TOP_FIRST, 2, 'U', [0, 2]],
  ['the other way round', `U' U U' F' U F`, `U' F' U F`, 3, "U'", [0, 2]],
  ['inside a sequence', `F U U' U R U' R' F'`, CROSS, 4, 'U', [1, 3]],
  ['at the beginning of a sequence', `F F' ${CROSS}`, CROSS, 4, 'F', [0, 2]],
] as const)('[CC14] %s it is the first that was made', (_, solution, home, stage, turn, range) => {
  const start = cubeAfter(formatTurns(inverseTurns(turns(home))))
  const { notes: all, isReached } = readSolution({ start, turns: turns(solution), span: { from: stage, to: stage } })
  const notes = all.filter(({ key }) => key === 'coach/undone')
  expect(isReached).toBe(true)
  expect(notes).toHaveLength(1)
  expect(notes[0]).toMatchObject({ turn: turnOf(turn), nTurns: 2, costTurns: 2 })
  expect([notes[0].fromTurn, notes[0].toTurn]).toEqual(range)
})

test('[CC14] between sequences too, whatever the hold became meanwhile', () => {
  const span = { from: 3, to: 3 } as const
  let nMet = 0
  for (let number = 0; number < 20; number++) {
    const start = drawArrangement(3, sourceNumbered(number))
    const made = turns("U' U y U' F'")
    const { notes } = readSolution({
      start,
      turns: [...made, ...lessonWay(afterTurns(start, made), span)],
      span,
    })
    for (const note of notes) {
      if (note.key !== 'coach/undone' || note.nTurns !== 2) continue
      expect(note).toMatchObject({ turn: turnOf("U'"), fromTurn: 0, toTurn: 2 })
      nMet++
    }
  }
  expect(nMet).toBeGreaterThan(0)
})
