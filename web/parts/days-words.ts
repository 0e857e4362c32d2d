/** Time that is counted in days, as a take-home room is open: nobody reads 167:59:59. Pure. */

import type { TFunction } from 'i18next'

const HOUR_MS = 3_600_000
const HOURS_A_DAY = 24

/** @param ms 0 or more @returns whole days and hours: "6 days 23 h"; null below a day, where a clock shows its figures */
export function daysWords(t: TFunction, ms: number): string | null {
  const nHours = Math.floor(ms / HOUR_MS)
  if (nHours < HOURS_A_DAY) return null
  const days = t('common:clock.days', { count: Math.floor(nHours / HOURS_A_DAY) })
  const hours = nHours % HOURS_A_DAY
  return hours === 0 ? days : t('common:clock.daysAndHours', { days, hours })
}
