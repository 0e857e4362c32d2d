/**
 * Ready-made plans: a lesson for each of the seven stages, a club night, a week to take home. Plans without words: titles
 * and notes come from the language of the page, which makes each of them a teacher's own plan.
 */

import { isLastLayerStage } from '../../method/cases.ts'
import { STAGES, type Stage } from '../../method/stages.ts'
import { assert } from '../../result.ts'
import type { ParTables } from '../../search/par/open-par-tables.ts'
import { DEFAULT_ROUND_SETTINGS, type RoundSettings } from '../round-settings.ts'
import { casesByLength, hardParFrom } from './harder-starts.ts'
import type { LessonPart } from './lesson-plan.ts'
import { LESSON_MINUTES, planMinutes } from './plan-minutes.ts'

/** Which title and note a part takes. */
export type ReadyWords =
  | 'example'
  | 'guided'
  | 'open'
  | 'harderCase'
  | 'harderStart'
  | 'review'
  | 'clubCross'
  | 'clubLastLayer'
  | 'clubCube'
  | 'takeHome'

/** A part whose title and note are still empty. */
export type ReadyPart = { readonly words: ReadyWords; readonly part: LessonPart }

/** A plan for a stage, or for an occasion. */
export type ReadyPlan = {
  readonly occasion: { readonly stage: Stage } | 'clubNight' | 'takeHomeWeek'
  readonly parts: readonly ReadyPart[]
}

const MINUTE_MS = 60_000

/**
 * @param pars for what is hard at stages 1 to 3
 * @returns nine plans: the stages in order, then the club night, then the week
 */
export function readyPlans(pars: Pick<ParTables, 'distributionOf'>): readonly ReadyPlan[] {
  return [...STAGES.map((stage) => stageLesson(stage, pars)), CLUB_NIGHT, TAKE_HOME_WEEK]
}

/** Shown first, then tried with help, then alone, then at its hardest, then talked about. */
function stageLesson(stage: Stage, pars: Pick<ParTables, 'distributionOf'>): ReadyPlan {
  const cases = isLastLayerStage(stage) ? casesByLength(stage) : []
  const [easiest] = cases
  const hardest = cases[cases.length - 1]
  const parts: ReadyPart[] = [
    { words: 'example', part: { kind: 'example', stage, caseId: easiest ?? null, minutes: 8, note: '' } },
    round('guided', 10, stage, { hints: 3, boardSeenBy: 'own' }),
    round('open', 10, stage, { hints: 1 }),
    hardest === undefined
      ? round('harderStart', 7, stage, { hints: 2, parFrom: hardParFrom(pars.distributionOf(stage)) })
      : round('harderCase', 7, stage, { hints: 2, cases: [hardest] }),
    { words: 'review', part: { kind: 'review', minutes: 10, note: '' } },
  ]
  assert(planMinutes({ parts: parts.map(({ part }) => part) }).minutes === LESSON_MINUTES, 'a lesson is filled')
  return { occasion: { stage }, parts }
}

/** Friendly contests on the club's own cubes: one try each, nothing is taken back. */
const CLUB_NIGHT: ReadyPlan = {
  occasion: 'clubNight',
  parts: [
    clubRound('clubCross', 10, { from: 1, to: 1 }),
    clubRound('clubLastLayer', 15, { from: 4, to: 7 }),
    clubRound('clubCube', 20, { from: 1, to: 7 }),
  ],
}

const FIRST_TAKE_HOME_STAGE = 3

/** A round a day, each alone and without a clock, help included. */
const TAKE_HOME_WEEK: ReadyPlan = {
  occasion: 'takeHomeWeek',
  parts: STAGES.filter((stage) => stage >= FIRST_TAKE_HOME_STAGE).map((stage) =>
    round('takeHome', null, stage, { hints: 3, boardSeenBy: 'own', cube: 'either', pace: 'alone' }),
  ),
}

function clubRound(words: ReadyWords, minutes: number, span: Pick<RoundSettings, 'from' | 'to'>): ReadyPart {
  return round(words, minutes, span.from, { ...span, tries: 'one', takeBack: false, cube: 'real' })
}

function round(words: ReadyWords, minutes: number | null, stage: Stage, changes: Partial<RoundSettings>): ReadyPart {
  const timeLimitMs = minutes === null ? null : minutes * MINUTE_MS
  const settings = { ...DEFAULT_ROUND_SETTINGS, from: stage, to: stage, timeLimitMs, ...changes }
  return { words, part: { kind: 'round', title: '', note: '', settings } }
}
