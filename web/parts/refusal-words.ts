/** One kind sentence for each way in which the server says no. */

import type { TFunction } from 'i18next'
import type { Refusal } from '../../engine/wire/refusal.ts'

export function refusalWords(t: TFunction, refusal: Refusal): string {
  return t(`refusals:${refusal.code}`, { ...refusal })
}
