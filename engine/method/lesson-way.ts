/**
 * What the lesson would do: the way of the taught sequences through the stages of the last layer. Stages 1 to 3 are
 * taught by looking, not by cases, and have no way here.
 */

import { afterTurns, applyTurns } from '../cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../cube/cube-position.ts'
import { centreAt } from '../cube/hold.ts'
import { type Turn, turnOf } from '../cube/turns.ts'
import { assert } from '../result.ts'
import { buildCaseGraph, type CaseGraph, type LessonStep, turnsOfStep } from './case-graph.ts'
import { LAST_LAYER_STAGES, type LastLayerStage } from './cases.ts'
import { LESSON_BOOK } from './sequence-book.ts'
import type { StageSpan } from './stages.ts'

/** Any five re-holds that bring each of the other faces down; `x2` serves for the face that is up. */
const WAYS_TO_BRING_BASE_DOWN: ReadonlyArray<readonly Turn[]> = [
  [],
  ...(['x', "x'", 'x2', 'z', "z'"] as const).map((name) => [turnOf(name)]),
]

const lessonGraphs = new Map<LastLayerStage, CaseGraph>()

/**
 * @param stage of the last layer
 * @returns the graph of the lesson's own book, made at first use and then kept
 */
export function lessonGraph(stage: LastLayerStage): CaseGraph {
  const known = lessonGraphs.get(stage)
  if (known !== undefined) return known
  const built = buildCaseGraph(stage, LESSON_BOOK[stage])
  assert(built.ok, `the lesson's own book serves for stage ${stage}`)
  lessonGraphs.set(stage, built.value)
  return built.value
}

/**
 * @param position meets the goals before `stage`, in any hold; asserted
 * @returns the next step's parts, for a cube held with the base down; undefined when the goal is met
 */
export function nextLessonStep(
  position: CubePosition,
  stage: LastLayerStage,
  graph: CaseGraph = lessonGraph(stage),
): LessonStep | undefined {
  return graph.firstStep(afterTurns(position, turnsToBringBaseDown(position)))
}

/**
 * @param position meets the goals before `stage`, in any hold; asserted
 * @param graph of another sequence book; the lesson's own when left out
 * @returns the turns of the next step: a re-hold that brings the base down if it is not, then a top turn or none, a
 *   re-hold or none, and one sequence or none. Empty when the goal is met.
 */
export function nextLessonTurns(
  position: CubePosition,
  stage: LastLayerStage,
  graph: CaseGraph = lessonGraph(stage),
): Turn[] {
  const step = nextLessonStep(position, stage, graph)
  return step === undefined ? [] : [...turnsToBringBaseDown(position), ...turnsOfStep(step)]
}

/**
 * @param position meets the goals before `span.from`, in any hold; asserted
 * @param span of stages 4 to 7
 * @returns all turns of the lesson way from there to the goal of `span.to`
 */
export function lessonWay(position: CubePosition, span: StageSpan): Turn[] {
  assert(span.from >= LAST_LAYER_STAGES[0], 'the lesson way begins at stage 4')
  const way: Turn[] = []
  const reached = copyCube(position)
  for (const stage of LAST_LAYER_STAGES.filter((each) => span.from <= each && each <= span.to)) {
    for (let next = nextLessonTurns(reached, stage); next.length > 0; next = nextLessonTurns(reached, stage)) {
      applyTurns(reached, next)
      way.push(...next)
    }
  }
  return way
}

function turnsToBringBaseDown(position: CubePosition): readonly Turn[] {
  const way = WAYS_TO_BRING_BASE_DOWN.find((turns) => centreAt(afterTurns(position, turns), 'D') === 'D')
  assert(way !== undefined, 'one of these re-holds brings the base down')
  return way
}
