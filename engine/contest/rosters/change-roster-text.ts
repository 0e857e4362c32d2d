/** Changes the text of a roster in place, and says what is left of it once its names are in the class. */

import type { PlaceInText, RosterReading } from './read-roster.ts'

/** A place, and what is to stand there. */
export type TextChange = Pick<PlaceInText, 'from' | 'to'> & { readonly by: string }

/** @param changes of places that do not overlap, in any order */
export function withChanges(text: string, changes: readonly TextChange[]): string {
  return [...changes]
    .sort((one, other) => other.from - one.from)
    .reduce((changed, { from, to, by }) => changed.slice(0, from) + by + changed.slice(to), text)
}

/** @returns what was not taken, one a line as it was written; the names that were taken are gone */
export function whatIsLeft(text: string, { faults }: Pick<RosterReading, 'faults'>): string {
  return faults.map(({ from, to }) => text.slice(from, to)).join('\n')
}
