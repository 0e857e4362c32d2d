/** Par in words. What is not proven is never called par. */

import type { TFunction } from 'i18next'
import type { ParView } from '../../engine/wire/views.ts'

/** @returns "Par 11", "Best known 27" */
export function parName(t: TFunction, { turns, proven }: ParView): string {
  return t(proven ? 'common:par.proven' : 'common:par.bestKnown', { turns })
}

/** @returns "Par 11", "Best known 27, at least 15": all that is known */
export function parWords(t: TFunction, par: ParView): string {
  const name = parName(t, par)
  return par.proven
    ? name
    : t('common:par.withBound', { name, bound: t('common:par.atLeast', { turns: par.lowerBound }) })
}
