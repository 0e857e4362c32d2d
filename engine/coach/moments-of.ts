/**
 * The moments of a try by which ribbons are aligned: whenever a stage begins, one more piece is home, or at stages 4 to 7
 * another case stands there. While something earlier is broken there is none.
 */

import { caseOf, isLastLayerStage } from '../method/cases.ts'
import { nPartsDone } from '../method/goals.ts'
import { STAGES } from '../method/stages.ts'
import type { Moment } from './reading.ts'
import type { Standing, TurnTrack } from './turn-track.ts'

/** The stage behind the last one. */
const BEHIND_ALL = STAGES.length + 1

/** @returns the moments, the start first; the last one is the goal when it was reached */
export function momentsOf({ standings, span }: TurnTrack): Moment[] {
  const moments: Moment[] = []
  let level = 0
  for (const [turnIndex, standing] of standings.entries()) {
    if (standing.level < level) continue
    const moment = momentAt(standing, turnIndex, span.to)
    const isSame = moments.length > 0 && moments[moments.length - 1].key === moment.key
    if (!isSame) moments.push(moment)
    level = standing.level
  }
  return moments
}

function momentAt({ stage, position }: Standing, turnIndex: number, to: Moment['stage']): Moment {
  if (stage === null) {
    return { key: `${Math.min(to + 1, BEHIND_ALL)}/reached`, turnIndex, stage: to, caseId: null, nPartsDone: 4 }
  }
  const nParts = nPartsDone(position, stage)
  const caseId = isLastLayerStage(stage) ? caseOf(position, stage) : null
  return { key: `${stage}/${caseId ?? nParts}`, turnIndex, stage, caseId, nPartsDone: nParts }
}
