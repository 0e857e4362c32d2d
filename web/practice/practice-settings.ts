/** What somebody practises alone. */

import { DEFAULT_ROUND_SETTINGS, type RoundSettings } from '../../engine/contest/round-settings.ts'
import { COLOURS, type Colour } from '../../engine/cube/colour-scheme.ts'
import { CASES_OF_STAGE, type CaseId, isLastLayerStage } from '../../engine/method/cases.ts'
import { casesLeaveAStart } from '../../engine/method/draw-start.ts'
import { STAGES, type Stage } from '../../engine/method/stages.ts'
import { HINT_LEVELS, type HintLevel } from '../../engine/method/way/hint-level.ts'
import { parseKept, useDeviceSettings } from '../ui/device-settings.ts'

export type PracticeSettings = {
  readonly stage: Stage
  /** One case of a last-layer stage, or null for all of them. */
  readonly caseId: CaseId | null
  readonly baseColour: Colour
  /** The highest hint that can be asked for; 0 gives none. Hints are free here. */
  readonly hints: 0 | HintLevel
}

/** Where the lesson begins to be taught by cases, with all the help there is. */
export const DEFAULT_PRACTICE: PracticeSettings = { stage: 4, caseId: null, baseColour: 'white', hints: 3 }

export const HINT_CHOICES = [0, ...HINT_LEVELS] as const

/** @returns the cases that can be practised at this stage: none is at the goal already; empty for stages 1 to 3 */
export function casesToPractise(stage: Stage): readonly CaseId[] {
  if (!isLastLayerStage(stage)) return []
  return CASES_OF_STAGE[stage].filter((id) => casesLeaveAStart({ from: stage, to: stage }, [id]))
}

/** @returns the rules of a round for one alone: no clock, as many tries as one likes, hints for nothing */
export function roundOf({ stage, caseId, baseColour, hints }: PracticeSettings): RoundSettings {
  return {
    ...DEFAULT_ROUND_SETTINGS,
    from: stage,
    to: stage,
    cases: caseId === null ? null : [caseId],
    baseColour,
    timeLimitMs: null,
    hints,
  }
}

/** Reads what was kept, perhaps by an older version: each setting that makes no sense falls back to its default. */
export function readPracticeSettings(kept: string | null): PracticeSettings {
  const read = parseKept(kept)
  const stage = STAGES.find((each) => each === read.stage) ?? DEFAULT_PRACTICE.stage
  return {
    stage,
    caseId: casesToPractise(stage).find((id) => id === read.caseId) ?? null,
    baseColour: COLOURS.find((colour) => colour === read.baseColour) ?? DEFAULT_PRACTICE.baseColour,
    hints: HINT_CHOICES.find((level) => level === read.hints) ?? DEFAULT_PRACTICE.hints,
  }
}

const KEPT_AS = 'fairturn.practice'

export function usePracticeSettings(): readonly [PracticeSettings, (change: Partial<PracticeSettings>) => void] {
  return useDeviceSettings(KEPT_AS, readPracticeSettings)
}
