/**
 * Turns of one layer right after each other in a way of one's own: undone at once, or several for one. Beside sequences of
 * the book this is looked for elsewhere, since there the end of one and the beginning of the next may be of one layer.
 *
 *     D R R' D    D2 would do
 */

import { type Turn, turnLetters, turnNamed } from '../../cube/turns.ts'
import type { Segment } from '../segment.ts'
import { layerOf, quartersTogether } from '../turn-tokens.ts'
import { momentBefore, type TurnTrack } from '../turn-track.ts'
import type { Explained, Finding } from './finding.ts'

const AMOUNTS = ['', '', '2', "'"] as const

const OWN_KINDS: readonly Segment['kind'][] = ['own-way', 'turn', 'top-turn']

/** @returns one finding for each row of turns of one layer; what they cost is plain from their number */
export function insideOwnWays({ track, segments }: Explained): Finding[] {
  const findings: Finding[] = []
  let isOpenToNext = false
  let runFrom = 0
  // Rows of single turns and ways of one's own hang together; a step of the lesson ends a row.
  for (const [index, { kind, from, to }] of segments.entries()) {
    const isOwn = OWN_KINDS.includes(kind)
    if (isOwn && !isOpenToNext) runFrom = from
    isOpenToNext = isOwn || (isOpenToNext && kind === 're-hold')
    const next = segments[index + 1]
    const goesOn = next !== undefined && isOpenToNext && [...OWN_KINDS, 're-hold'].includes(next.kind)
    if (isOpenToNext && !goesOn) {
      findings.push(...inRow(track, track.firstToken[runFrom], track.firstToken[to]))
      isOpenToNext = false
    }
  }
  return findings
}

function inRow(track: TurnTrack, first: number, end: number): Finding[] {
  const findings: Finding[] = []
  for (let token = first; token < end; ) {
    let runEnd = token + 1
    while (runEnd < end && layerOf(track.tokens[runEnd]) === layerOf(track.tokens[token])) runEnd++
    const [from, to] = [momentBefore(track, token), momentBefore(track, runEnd)]
    if (runEnd - token > 1 && from !== null && to !== null) findings.push(finding(track, token, runEnd, to))
    token = runEnd
  }
  return findings
}

function finding(track: TurnTrack, token: number, runEnd: number, to: number): Finding {
  const nTurns = runEnd - token
  const from = track.turnOfToken[token]
  const turn = track.turns[from]
  const quarters = quartersTogether(track.tokens, token, runEnd)
  const shared = { from, to, since: from, until: to }
  if (quarters === 0) return { ...shared, details: { key: 'coach/undone', turn, nTurns }, costTurns: nTurns }
  return {
    ...shared,
    details: { key: 'coach/two-for-one', nTurns, better: sameLayer(turn, quarters) },
    costTurns: nTurns - 1,
  }
}

function sameLayer(turn: Turn, quarters: number): Turn {
  return turnNamed(`${turnLetters(turn)}${AMOUNTS[quarters]}`) ?? turn
}
