/** Solutions that do not reach the goal. Rules CC: tests/RULES.md. */

import { expect, test } from 'vitest'
import { below } from '../../../engine/chance/random-source.ts'
import { whereAstray } from '../../../engine/coach/where-astray.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { FACE_TURNS, inverseTurns, turnKind, turnOf } from '../../../engine/cube/turns.ts'
import { drawStart } from '../../../engine/method/draw-start.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { STAGES } from '../../../engine/method/stages.ts'
import { cubeAfter, turns } from '../cube/arbitraries.ts'
import { sourceNumbered } from '../method/starts.ts'

const CROSS = "F U R U' R' F'"
const LINE = cubeAfter(formatTurns(inverseTurns(turns(CROSS))))

test('[CC8] a solution that reaches the goal did not go astray', () => {
  expect(whereAstray({ start: LINE, turns: turns(CROSS), span: { from: 4, to: 4 } })).toBeNull()
})

test('[CC8] a wrong turn is found, with the moment after which nothing stood any more and the turn that mends it', () => {
  const astray = whereAstray({ start: LINE, turns: turns("y y' F U R U' R F'"), span: { from: 4, to: 4 } })
  expect(astray).toMatchObject({
    turnIndex: 2,
    note: { key: 'coach/wrong-way', fromTurn: 6 },
    mend: { at: 6, from: turnOf('R'), to: turnOf("R'") },
  })
})

test('[CC8] turns that only end too early have no cause', () => {
  const dot = cubeAfter(formatTurns(inverseTurns(turns(`${CROSS} y ${CROSS} ${CROSS}`))))
  const astray = whereAstray({ start: dot, turns: turns(CROSS), span: { from: 4, to: 4 } })
  expect(astray).toEqual({ turnIndex: 6, note: null, mend: null })
})

test('[CC9] one letter of a written solution is exchanged: the mend that is found makes it reach the goal', () => {
  for (let number = 0; number < 60; number++) {
    const random = sourceNumbered(300_000 + number)
    const stage = STAGES[number % STAGES.length]
    const span = { from: stage, to: stage }
    const start = drawStart({ span, random })
    const way = lessonWay(start, span)
    const places = [...way.keys()].filter((at) => turnKind(way[at]) === 'face')
    const at = places[below(random, places.length)]
    const written = way.with(at, FACE_TURNS[below(random, FACE_TURNS.length)])
    const astray = whereAstray({ start, turns: written, span })
    if (astray === null) continue
    const { mend } = astray
    if (mend === null) throw new Error(`no mend for number ${number}`)
    const put = mend.to === null ? [] : [mend.to]
    const mended = [...written.slice(0, mend.at), ...put, ...written.slice(mend.at + (mend.from === null ? 0 : 1))]
    expect(goalMet(afterTurns(start, mended), stage)).toBe(true)
  }
})
