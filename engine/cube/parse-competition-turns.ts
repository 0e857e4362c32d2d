/**
 * Reads a written solution as strictly as a competition does.
 * Source: World Cube Association, Regulations 2024, articles 12a (face turns, wide turns `Rw` or `2Rw`, rotations x y z,
 * each with `'` or `2`) and E2c4 (everything else makes the solution invalid), with guideline E2c4+.
 */

import { err, ok, type Result } from '../result.ts'
import { PARSED_TURNS_MAX, type TurnsFault, unknownTurn } from './parse-turns.ts'
import { type Turn, turnNamed } from './turns.ts'

const SPELLING = /^(?:2(?=[URFDLB]w))?([URFDLB]w?|[xyz])(['2]?)$/u

/**
 * @param text turns with white space between them; no brackets, no slices, no other prime than `'`
 * @returns the turns in reading order, or the first token that article 12a does not know
 */
export function parseCompetitionTurns(text: string): Result<Turn[], TurnsFault> {
  const turns: Turn[] = []
  for (const { 0: token, index: at } of text.matchAll(/\S+/gu)) {
    const spelling = SPELLING.exec(token)
    const turn = spelling === null ? undefined : turnNamed(spelling[1] + spelling[2])
    if (turn === undefined) return unknownTurn(token, at)
    turns.push(turn)
    if (turns.length > PARSED_TURNS_MAX) return err({ code: 'cube/too-many-turns', max: PARSED_TURNS_MAX })
  }
  return ok(turns)
}
