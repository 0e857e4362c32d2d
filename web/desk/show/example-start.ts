/**
 * A start for a worked example: of the stage and case that the lesson plan is at, or else of the next round's settings. Drawn
 * in this browser as the round would deal it, with the lesson way from there.
 */

import type { TFunction } from 'i18next'
import { useMemo, useState } from 'react'
import { chachaSource } from '../../../engine/chance/chacha-source.ts'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import { formatStickers } from '../../../engine/cube/stickers.ts'
import { type TurnName, turnName } from '../../../engine/cube/turns.ts'
import type { CaseId } from '../../../engine/method/cases.ts'
import { casesLeaveAStart, drawStart } from '../../../engine/method/draw-start.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import type { Stage } from '../../../engine/method/stages.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import { stageWords } from '../../parts/stage-words.ts'

/** What is shown, and from where. */
export type ExampleStart = {
  readonly stage: Stage
  readonly caseId: CaseId | null
  /** 54 letters. */
  readonly start: string
  readonly way: readonly TurnName[]
}

const SEED_BYTES = 32

/** Is the lesson at a worked example? Then a demonstration begins with it. */
export function isExamplePart({ plan }: Pick<DeskView, 'plan'>): boolean {
  return plan?.plan.parts[plan.at]?.kind === 'example'
}

/** @returns the example, and what draws another start of the same kind */
export function useExampleStart({ plan, settings }: Pick<DeskView, 'plan' | 'settings'>) {
  const [seed, setSeed] = useState(newSeed)
  const part = plan?.plan.parts[plan.at]
  const stage = part?.kind === 'example' ? part.stage : settings.from
  const caseId = part?.kind === 'example' ? part.caseId : null
  const example = useMemo((): ExampleStart => {
    const span = { from: stage, to: stage }
    const cases = caseId !== null && casesLeaveAStart(span, [caseId]) ? { cases: [caseId] } : {}
    const start = drawStart({ span, random: chachaSource(seed), ...cases })
    return { stage, caseId, start: formatStickers(start), way: lessonWay(start, span).map(turnName) }
  }, [stage, caseId, seed])
  return { example, drawAnother: () => setSeed(newSeed()) }
}

/** @returns "Yellow cross, line": the stage, and the case where there is one */
export function exampleWords(t: TFunction, { stage, caseId }: ExampleStart, baseColour: Colour): string {
  const { title } = stageWords(t, stage, baseColour)
  return caseId === null ? title : `${title}, ${t(`desk:case.${caseId}`)}`
}

function newSeed(): Uint8Array {
  return crypto.getRandomValues(new Uint8Array(SEED_BYTES))
}
