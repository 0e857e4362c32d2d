/** What the hints of a written try have cost, in words, beside the count that holds it. Pure. */

import type { TFunction } from 'i18next'

/** @param nHints 1 or more @param cost counted turns of each; 0 is free @returns "2 of them for 1 hint", "1 hint, free" */
export function hintCostWords(t: TFunction, nHints: number, cost: number): string {
  const hints = t('written:hints', { count: nHints })
  return cost === 0 ? t('written:hintsFree', { hints }) : t('written:hintsCost', { turns: nHints * cost, hints })
}
