import { expect, test } from 'vitest'
import { chachaSource } from '../../engine/chance/chacha-source.ts'
import { afterTurns } from '../../engine/cube/apply-turn.ts'
import { turnOf } from '../../engine/cube/turns.ts'
import { drawStart } from '../../engine/method/draw-start.ts'
import { goalMet } from '../../engine/method/goals.ts'
import { STAGES, type Stage } from '../../engine/method/stages.ts'
import { nextPlan } from '../../server/live/pretend/pretend-mind.ts'

const random = chachaSource(new Uint8Array(32).fill(8))
const SURE = { thinkMs: 0, turnMs: 0, slipPercent: 0 }

test.each(STAGES)('[PC5] a pretend student who never slips reaches the goal of stage %i', (stage) => {
  let position = drawStart({ span: { from: stage, to: stage }, random })
  for (let nPlans = 0; nPlans < 20 && !goalMet(position, stage); nPlans++) {
    const plan = nextPlan(position, { from: stage, to: stage }, SURE, random)
    if (plan.kind === 'turns') position = afterTurns(position, plan.turns)
  }
  expect(goalMet(position, stage)).toBe(true)
})

test('[PC5] one who has broken what was done before the round starts again', () => {
  const broken = afterTurns(drawStart({ span: { from: 4, to: 4 }, random }), [turnOf('R'), turnOf('F')])
  const plan = nextPlan(broken, { from: 4, to: 7 as Stage }, SURE, random)
  expect(plan).toEqual({ kind: 'start-again' })
})
