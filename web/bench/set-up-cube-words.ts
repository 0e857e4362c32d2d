/** What is said while a real cube is to be brought to the start: beside the setup, and in its place where there is none. */

import type { TFunction } from 'i18next'
import type { BenchView, RoundView } from '../../engine/wire/views.ts'

/** @returns what to do instead, where no setup was found; else that it is being worked out */
export function wordsForNoSetup(
  t: TFunction,
  { noSetup }: Pick<BenchView, 'noSetup'>,
  { settings: { cube } }: Pick<RoundView, 'settings'>,
): string {
  if (!noSetup) return t('bench:setUp.workedOut')
  return cube === 'real' ? t('bench:setUp.noneTellTeacher') : t('bench:setUp.noneOnScreen')
}

/** @returns what the clock of the round means for this child; null while it means nothing */
export function wordsForClockAtSetUp(
  t: TFunction,
  { noSetup }: Pick<BenchView, 'noSetup'>,
  { settings, clock }: Pick<RoundView, 'settings' | 'clock'>,
): string | null {
  if (clock.phase === 'ready' || settings.pace === 'alone') return null
  if (clock.phase === 'paused') return t('bench:paused')
  // Nobody is told to set a cube up who cannot.
  return noSetup ? null : t('bench:setUp.late')
}
