/** Where written turns go astray. Rules WR: tests/RULES.md. */

import fc from 'fast-check'
import { beforeAll, expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import { ALL_TURNS, type Turn, turnKind, turnName } from '../../../engine/cube/turns.ts'
import { drawStart } from '../../../engine/method/draw-start.ts'
import { stepsBeforeGoal } from '../../../engine/method/goal-reached.ts'
import { goalsBeforeMet } from '../../../engine/method/goals.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import type { Stage } from '../../../engine/method/stages.ts'
import { astrayWords } from '../../../web/parts/written/astray-words.ts'
import { whereAstray } from '../../../web/parts/written/where-astray.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'
import { sourceNumbered } from '../../engine/method/starts.ts'
import { inEnglish } from '../english.ts'

let t: Awaited<ReturnType<typeof inEnglish>>
beforeAll(async () => {
  t = await inEnglish()
})

const only = (stage: Stage) => ({ from: stage, to: stage })
const startOf = (stage: Stage, number: number) => drawStart({ span: only(stage), random: sourceNumbered(number) })
/** No top edge shows its colour, both layers below are whole. */
const DOT = drawStart({ span: only(4), cases: ['dot'], random: sourceNumbered(1) })

function read(text: string): Turn[] {
  const turns = parseTurns(text)
  if (!turns.ok) throw new Error(text)
  return turns.value
}

test('[WR3] a sequence that is whole breaks nothing; the turn that is never mended is named', () => {
  // A whole sequence, a re-hold, and half of the next one: the layers were last whole behind the re-hold.
  const astray = whereAstray(DOT, read("F U R U' R' F' y R U R'"), only(4))
  expect(astray).toMatchObject({ kind: 'broken', lastWhole: { turnNumber: 6 }, broken: { turnNumber: 7 } })
  expect(astray.kind === 'broken' && turnName(astray.turn)).toBe('R')
  expect(astrayWords(t, astray, only(4), 'white')).toBe(
    'Up to turn 6 all was right. After turn 7, R, the first layer is broken and stays so.',
  )
})

test('[WR3] when the first turn breaks a layer, nothing was right before it', () => {
  const astray = whereAstray(DOT, read('y D'), only(4))
  expect(astrayWords(t, astray, only(4), 'yellow')).toBe('Right at turn 1, D, the yellow cross breaks and stays so.')
})

test('[WR3] of whole layers it is told how far they came, and where there was more', () => {
  const span = only(4)
  expect(astrayWords(t, whereAstray(DOT, read('U'), span), span, 'white')).toBe('0 of 4 top edges show yellow.')
  // Two of four in the middle, none at the end.
  const further = whereAstray(DOT, read("F U R U' R' F' F R U R' U' F'"), span)
  expect(further).toMatchObject({ kind: 'was-further', furthest: { turnNumber: 6 } })
  expect(astrayWords(t, further, span, 'white')).toMatch(/After turn 6 there was more: 2 of 4 top edges show yellow\.$/)
})

test('[WR3] a layer called broken is whole at the last right moment, and never again behind it', () => {
  const some = fc.array(fc.constantFrom(...ALL_TURNS), { minLength: 1, maxLength: 14 })
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 7 }), fc.integer({ min: 0, max: 999 }), some, (number, seed, turns) => {
      const stage = number as Stage
      const start = startOf(stage, seed)
      fc.pre(stepsBeforeGoal(start, turns, stage) === null)
      const astray = whereAstray(start, turns, only(stage))
      const isWhole = turns.map((_, index) => goalsBeforeMet(afterTurns(start, turns.slice(0, index + 1)), stage))
      if (astray.kind !== 'broken') {
        expect(isWhole.at(-1)).toBe(true)
        return
      }
      expect(goalsBeforeMet(astray.lastWhole.position, stage)).toBe(true)
      expect(goalsBeforeMet(astray.broken.position, stage)).toBe(false)
      expect(turnKind(astray.turn)).not.toBe('re-hold')
      expect(astray.broken.turnNumber).toBe(astray.lastWhole.turnNumber + 1)
      const lastWhole = isWhole.lastIndexOf(true)
      const nTurnsThen = turns.slice(0, lastWhole + 1).filter((turn) => turnKind(turn) !== 're-hold').length
      expect(astray.lastWhole.turnNumber).toBe(nTurnsThen)
    }),
    { seed: SEED },
  )
})

test('[WR3] of the lesson way without its last turn nothing is broken before its last sequence', () => {
  for (let number = 0; number < 40; number++) {
    const start = startOf(4, number)
    const way = lessonWay(start, only(4)).slice(0, -1)
    const astray = whereAstray(start, way, only(4))
    // Each sequence of this stage has six turns.
    expect(
      astray.kind === 'broken' && way.filter((turn) => turnKind(turn) !== 're-hold').length - astray.broken.turnNumber,
    ).toBe(4)
  }
})
