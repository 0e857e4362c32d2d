/**
 * How a simulated student thinks: the lesson way, at an own pace, with the mistakes that beginners make. Pure: it is told
 * what it sees and asked what it does next; chance comes in.
 */

import type { RandomSource } from '../../../engine/chance/random-source.ts'
import { below } from '../../../engine/chance/random-source.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { FACES } from '../../../engine/cube/faces.ts'
import { inverseTurn, type Turn, turnOf } from '../../../engine/cube/turns.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import { nextLessonTurns } from '../../../engine/method/lesson-way.ts'
import { STAGES, type Stage, type StageSpan } from '../../../engine/method/stages.ts'

export type Skill = {
  /** Milliseconds before a sequence is begun: looking, and remembering. */
  readonly thinkMs: number
  /** Milliseconds between two turns. */
  readonly turnMs: number
  /** Chance in a hundred that a sequence goes wrong. */
  readonly slipPercent: number
}

/** Twelve students from quick and sure to slow and dreamy. */
export const SKILLS: readonly Skill[] = Array.from({ length: 12 }, (_, index) => ({
  thinkMs: 3_500 + 900 * index,
  turnMs: 650 + 110 * index,
  slipPercent: 12 + 6 * index,
}))

export type Plan = { readonly kind: 'turns'; readonly turns: readonly Turn[] } | { readonly kind: 'start-again' }

/** What to do at this position: the next sequence, perhaps with a slip; or start again, once the layers below are lost. */
export function nextPlan(position: CubePosition, span: StageSpan, skill: Skill, random: RandomSource): Plan {
  const stage = stageToWorkOn(position, span)
  if (stage === null) return { kind: 'start-again' }
  const turns = nextLessonTurns(position, stage)
  if (below(random, 100) >= skill.slipPercent || turns.length < 2) return { kind: 'turns', turns }
  return { kind: 'turns', turns: withSlip(turns, random) }
}

/** The first stage whose goal is not met; null when it is one before the round's, which beginners do not mend. */
function stageToWorkOn(position: CubePosition, { from, to }: StageSpan): Stage | null {
  const stage = STAGES.find((each) => !goalMet(position, each))
  return stage === undefined || stage < from || to < stage ? null : stage
}

/** What beginners do: hold the cube another way, try a turn and undo it, forget the last turn, turn one twice, begin with a wrong layer. */
function withSlip(turns: readonly Turn[], random: RandomSource): readonly Turn[] {
  const slip = below(random, 8)
  const any = turnOf(FACES[below(random, FACES.length)])
  // The commonest by far: the right sequence in the wrong hold. It breaks nothing, it only takes longer.
  if (slip < 3) return [turnOf((['y', "y'", 'y2'] as const)[slip]), ...turns]
  if (slip < 5) return [any, inverseTurn(any), ...turns]
  if (slip === 5) return turns.slice(0, -1)
  if (slip === 6) return [any, ...turns]
  const at = below(random, turns.length)
  return [...turns.slice(0, at), turns[at], ...turns.slice(at)]
}
