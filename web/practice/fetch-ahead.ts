/** Fetches what practice needs later than at first sight, so that it goes on when the network is gone. */

import { openParTables } from '../../engine/search/par/open-par-tables.ts'

/** What cannot be had is done without: no par is shown, turns are set in the next best typeface. */
export function fetchAhead(): void {
  openParTables().catch(() => {})
  // A browser fetches a typeface only when it first sets a letter in it; turns are first written on the bench.
  const turnFont = getComputedStyle(document.documentElement).getPropertyValue('--font-turn')
  document.fonts.load(`600 1em ${turnFont}`).catch(() => {})
}
