/** Writes turns in the one spelling of the engine. The pair of `parse-turns.ts`. */

import { type Turn, turnName } from './turns.ts'

/** @returns names separated by single spaces, with the ASCII apostrophe: `R U' Rw2 M x`; empty for no turns */
export function formatTurns(turns: readonly Turn[]): string {
  return turns.map(turnName).join(' ')
}
