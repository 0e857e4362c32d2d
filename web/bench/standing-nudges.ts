/** Which of the teacher's nudges stand on a bench: the last of each kind that the child has not put away. Pure. */

import type { NudgesView } from '../../engine/wire/views.ts'

/** A nudge with the number by which it is put away. */
type Numbered<Kind extends keyof NudgesView> = NonNullable<NudgesView[Kind]>

export type StandingNudges = {
  readonly hint: Numbered<'hint'> | null
  /** A sentence and a pointer, the newer one first. */
  readonly lines: readonly (Numbered<'words'> | Numbered<'point'>)[]
}

/** @param putAway numbers of nudges of the same round */
export function standingNudges({ hint, words, point }: NudgesView, putAway: readonly number[]): StandingNudges {
  const stands = ({ number }: { readonly number: number }) => !putAway.includes(number)
  const lines = [words, point].filter((each) => each !== null && stands(each)) as StandingNudges['lines'][number][]
  return {
    hint: hint !== null && stands(hint) ? hint : null,
    lines: lines.sort((one, other) => other.number - one.number),
  }
}

/** Reads the numbers of what was put away; what makes no sense is left out. */
export function readPutAway(kept: unknown): readonly number[] {
  return Array.isArray(kept) ? kept.filter((each) => Number.isInteger(each)) : []
}
