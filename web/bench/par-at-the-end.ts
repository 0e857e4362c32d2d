/** Par beside the own result, in one calm sentence or two. Who has not reached the goal is only told what par was. */

import type { TFunction } from 'i18next'
import type { ParView } from '../../engine/wire/views.ts'

/** @param mine turns of the own best try; null when the goal was not reached */
export function parAtTheEnd(t: TFunction, { turns, proven }: ParView, mine: number | null): string {
  if (proven) {
    return mine === null
      ? t('bench:ended.par', { par: turns })
      : t('bench:ended.parAndYours', { par: turns, turns: mine })
  }
  if (mine === null) return t('bench:ended.bestKnown', { count: turns })
  // What is not proven can be bettered, and then it is not the best known any more.
  if (mine < turns) return t('bench:ended.shorter', { turns: mine })
  return t('bench:ended.bestKnownAndYours', { count: turns, turns: mine })
}
