/** How one choice of the teacher changes the settings of the next round, so that they always leave a start to deal. */

import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import { CASES_OF_STAGE, type CaseId, isLastLayerStage } from '../../engine/method/cases.ts'
import { casesLeaveAStart } from '../../engine/method/draw-start.ts'
import { STAGES, type Stage } from '../../engine/method/stages.ts'

/** Another stage is one goal by itself, with all its cases and pars. */
export function withStage(settings: RoundSettings, stage: Stage): RoundSettings {
  return { ...settings, from: stage, to: stage, cases: null, parFrom: null, parTo: null }
}

/** Cases that the shorter round cannot start from fall away; when none is left, all are dealt. Pars are for one stage. */
export function withLastStage(settings: RoundSettings, to: Stage): RoundSettings {
  const next = to === settings.from ? { ...settings, to } : { ...settings, to, parFrom: null, parTo: null }
  if (settings.cases === null) return next
  const offered = offeredCases(next)
  const kept = settings.cases.filter((id) => offered.includes(id))
  return { ...next, cases: kept.length === 0 || kept.length === offered.length ? null : kept }
}

/** The cases that can be ticked: what is at the goal already is no start. */
export function offeredCases({ from, to }: Pick<RoundSettings, 'from' | 'to'>): readonly CaseId[] {
  if (!isLastLayerStage(from)) return []
  return CASES_OF_STAGE[from].filter((id) => casesLeaveAStart({ from, to }, [id]))
}

/** @returns the settings, or null when that would untick the last case */
export function withCase(settings: RoundSettings, id: CaseId, ticked: boolean): RoundSettings | null {
  const offered = offeredCases(settings)
  const before = settings.cases ?? offered
  const after = offered.filter((other) => (other === id ? ticked : before.includes(other)))
  if (after.length === 0) return null
  return { ...settings, cases: after.length === offered.length ? null : after }
}

export function stagesFrom(stage: Stage): readonly Stage[] {
  return STAGES.filter((later) => later >= stage)
}
