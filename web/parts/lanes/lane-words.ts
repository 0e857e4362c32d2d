/** A lane in a sentence, for who hears the board. */

import type { TFunction } from 'i18next'
import type { RankedLane } from '../../../engine/contest/rank-board.ts'

export function laneWords(t: TFunction, lane: RankedLane, moment: string | undefined): string {
  const { name, place, best } = lane
  const late = lane.late ? `, ${t('common:sign.late')}` : ''
  if (place === null || best === null)
    return t('board:lane.running', { name, turns: t('common:turns', { count: lane.turns }) }) + late
  return t('board:lane.reached', { place, name, turns: t('common:turns', { count: best.turns }), moment }) + late
}
