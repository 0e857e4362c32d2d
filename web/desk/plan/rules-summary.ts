/** The folded rules in a line of words. */

import type { TFunction } from 'i18next'
import type { BoardSeenBy, RoundSettings } from '../../../engine/contest/round-settings.ts'
import { colourWords } from '../../parts/colour-words.ts'
import { parRangeWords } from './par-range-words.ts'

const SEEN_BY = {
  all: 'desk:plan.summary.seenByAll',
  teacher: 'desk:plan.summary.seenByTeacher',
  own: 'desk:plan.summary.seenByOwn',
} as const satisfies Record<BoardSeenBy, string>

export function rulesSummary(t: TFunction, settings: RoundSettings): string {
  return [
    parRangeWords(t, settings),
    settings.cube === 'screen' ? '' : t(`desk:plan.summary.cube.${settings.cube}`),
    t(settings.tries === 'many' ? 'desk:plan.summary.triesMany' : 'desk:plan.summary.triesOne'),
    t(settings.takeBack ? 'desk:plan.summary.takeBack' : 'desk:plan.summary.noTakeBack'),
    t('desk:plan.summary.base', colourWords(t, settings.baseColour)),
    t(SEEN_BY[settings.boardSeenBy]),
  ]
    .filter((words) => words !== '')
    .join(' · ')
}
