/** A range of pars in words. */

import type { TFunction } from 'i18next'
import type { ParRange } from './dealt-pars.ts'

/** @returns "par 9", "par 7 to 9", "par 7 or more", "par 7 or less"; empty where there is no limit */
export function parRangeWords(t: TFunction, { parFrom, parTo }: ParRange): string {
  if (parFrom === null && parTo === null) return ''
  if (parFrom === parTo) return t('desk:plan.parOnly', { from: parFrom })
  if (parTo === null) return t('desk:plan.parOrMore', { from: parFrom })
  if (parFrom === null) return t('desk:plan.parOrLess', { to: parTo })
  return t('desk:plan.parBetween', { from: parFrom, to: parTo })
}
