/** Which sequences of the book may have been begun at a moment, done as they are or with one slip. */

import { applyTurns } from '../cube/apply-turn.ts'
import { copyCube } from '../cube/cube-position.ts'
import { faceIndex } from '../cube/faces.ts'
import { countOuterBlockTurns } from '../cube/outer-block-turns.ts'
import { turnKind } from '../cube/turns.ts'
import { leadsOn } from './leads-on.ts'
import { PRICE, type Segment, type SequenceDone } from './segment.ts'
import { patternsOf, type SequencePattern } from './sequence-pattern.ts'
import { findAdded, findSlips } from './slips/find-slip.ts'
import { type Begun, nAlike, type Slip } from './slips/slip.ts'
import { layerOf, quartersTogether } from './turn-tokens.ts'
import { countBetween, momentBefore, standingAt, type TurnTrack } from './turn-track.ts'

/** Hears of possible explanations. */
export type SegmentTaker = {
  readonly take: (segment: Segment) => void
  /** Would one to that moment at that price change anything? Optimisation: what would not need not be looked into. */
  readonly isCheaper: (to: number, price: number) => boolean
}

/** Top turns in a row before a sequence, each of which may be there. */
const TOP_TURNS_MAX = 3
/** A trigger has order 6; twice round and a step. */
const TIMES_MAX = 12
const TOP_LAYER = faceIndex('U')

/** How a sequence may begin at a moment: after so many turns of the top layer. */
type Beginning = {
  readonly from: number
  readonly beginsAt: number
  readonly topQuarters: number
  readonly nTops: number
}

/** @param from a moment whose next turn turns a layer @param reached the last stage that was under way up to there */
export function stepSegments(track: TurnTrack, from: number, reached: number, taker: SegmentTaker): void {
  const withTwoSlips: SlipSegment[] = []
  const take = (segment: Segment) => {
    if (hasTwoSlips(segment)) withTwoSlips.push(segment)
    else taker.take(segment)
  }
  for (const beginning of beginningsAt(track, from)) {
    for (const pattern of patternsOf(track.book)) tryPattern(track, beginning, pattern, reached, { ...taker, take })
  }
  for (const segment of withTwoSlips) {
    // Two slips are only believed where no other sequence with two slips explains the same turns.
    if (withTwoSlips.every((other) => other === segment || other.to !== segment.to)) taker.take(segment)
  }
}

type SlipSegment = Extract<Segment, { kind: 'slip' }>

function hasTwoSlips(segment: Segment): segment is SlipSegment {
  return segment.kind === 'slip' && segment.slip.details.key === 'coach/two-slips'
}

function beginningsAt(track: TurnTrack, from: number): Beginning[] {
  const { tokens, firstToken } = track
  const first = firstToken[from]
  const beginnings: Beginning[] = [{ from, beginsAt: from, topQuarters: 0, nTops: 0 }]
  for (let nTops = 1; nTops <= TOP_TURNS_MAX && layerOf(tokens[first + nTops - 1]) === TOP_LAYER; nTops++) {
    const topQuarters = quartersTogether(tokens, first, first + nTops)
    const moment = momentBefore(track, first + nTops)
    if (topQuarters === 0 || moment === null) continue
    const beginsAt = afterReHolds(track, moment)
    if (beginsAt < track.turns.length) beginnings.push({ from, beginsAt, topQuarters, nTops })
  }
  return beginnings
}

/** @returns the moment behind any re-holds */
export function afterReHolds({ turns }: TurnTrack, moment: number): number {
  let at = moment
  while (at < turns.length && turnKind(turns[at]) === 're-hold') at++
  return at
}

function tryPattern(
  track: TurnTrack,
  beginning: Beginning,
  pattern: SequencePattern,
  reached: number,
  taker: SegmentTaker,
): void {
  const { beginsAt, topQuarters, nTops } = beginning
  const held = track.standings[beginsAt].position
  const at = track.firstToken[beginsAt]
  const nRight = nAlike(track, at, pattern.tokens, 0, held)
  if (nTops === 0 && nRight < 2) tryFused(track, beginning, pattern, taker)
  // In the last layer a top turn ends a stage or is needless; what comes behind it is a step of its own.
  const { stage } = track.standings[beginning.from]
  if (nTops > 0 && stage !== null && stage > 3 && pattern.stage !== stage) return
  const isWhole = nRight === pattern.tokens.length
  if (isWhole && pattern.nTimes === 1) takeWhole(track, beginning, pattern, reached, taker)
  // Slips are believed only in sequences of the stage under way.
  if (pattern.stage !== stage) return
  const begun = { track, pattern, held, at, nRight }
  const done = { pattern, nTimes: pattern.nTimes, beginsAt, topQuarters, nTops }
  const isCutOff = !isWhole && at + nRight === track.tokens.length && nRight > 0
  if (isCutOff) takeUnderWay(track, beginning.from, done, taker)
  for (const slip of isWhole ? findAdded(begun) : findSlips(begun)) takeSlip(begun, beginning, done, slip, taker)
}

function takeWhole(
  track: TurnTrack,
  { from, beginsAt, topQuarters, nTops }: Beginning,
  pattern: SequencePattern,
  reached: number,
  taker: SegmentTaker,
): void {
  const before = track.standings[from]
  const isRepeated = pattern.stage === 2 && before.stage === 2
  const nTurns = countOuterBlockTurns(pattern.turns)
  const topPrice = nTops > 1 ? PRICE.twoForOne : 0
  const nTokens = pattern.tokens.length
  const at = track.firstToken[beginsAt]
  for (let nTimes = 1; nTimes <= (isRepeated ? TIMES_MAX : 1); nTimes++) {
    const end = at + nTimes * nTokens
    if (nAlike(track, end - nTokens, pattern.tokens, 0, heldAt(track, beginsAt)) < nTokens) return
    const to = momentBefore(track, end)
    if (to === null) continue
    const isOn = leadsOn(before, track.standings[to], nTimes * nTurns)
    const price = topPrice + (isOn ? PRICE.leadsOn : wrongPrice(pattern.stage, before.stage, reached))
    const done = { pattern, nTimes, beginsAt, topQuarters, nTops }
    taker.take({ kind: 'sequence', from, to, price, done, leadsOn: isOn })
  }
}

function heldAt(track: TurnTrack, moment: number) {
  return track.standings[moment].position
}

function wrongPrice(ofStage: number, stage: number | null, reached: number): number {
  if (ofStage === stage) return stage === 1 ? PRICE.wrongAtFirst : PRICE.wrongHere
  return ofStage === reached && stage !== null && stage < reached ? PRICE.unseenBreak : PRICE.otherStage
}

/**
 * A top turn and a sequence that begins with one may be made as one turn, or as none when they undo each other. That is
 * well done, so it is believed only when it leads on.
 */
function tryFused(track: TurnTrack, { from }: Beginning, pattern: SequencePattern, taker: SegmentTaker): void {
  const [own] = pattern.tokens
  if (pattern.nTimes > 1 || layerOf(own) !== TOP_LAYER || pattern.stage !== track.standings[from].stage) return
  const at = track.firstToken[from]
  const isTop = layerOf(track.tokens[at]) === TOP_LAYER
  const behind = isTop ? at + 1 : at
  const nLeft = pattern.tokens.length - 1
  if (nAlike(track, behind, pattern.tokens, 1, heldAt(track, from)) < nLeft) return
  const to = momentBefore(track, behind + nLeft)
  if (to === null) return
  const nTurns = countBetween(track, from, to)
  if (!leadsOn(track.standings[from], track.standings[to], nTurns)) return
  const topQuarters = ((isTop ? track.tokens[at] : 0) + 4 - (own & 3)) & 3
  const done = { pattern, nTimes: 1, beginsAt: from, topQuarters, nTops: 0 }
  taker.take({ kind: 'sequence', from, to, price: PRICE.leadsOn, done, leadsOn: true })
}

function takeUnderWay(track: TurnTrack, from: number, done: SequenceDone, taker: SegmentTaker): void {
  if (!wouldLeadOn(track, from, done)) return
  taker.take({ kind: 'under-way', from, to: track.turns.length, price: PRICE.underWay, done })
}

function takeSlip({ track }: Begun, { from }: Beginning, done: SequenceDone, slip: Slip, taker: SegmentTaker): void {
  const to = momentBefore(track, slip.endToken)
  if (to === null || !taker.isCheaper(to, leastPrice(slip))) return
  const price = slipPrice(track, from, done, slip)
  if (price !== null) taker.take({ kind: 'slip', from, to, price, done, slip })
}

/** @returns a lower bound, without asking what the sequence would have done */
function leastPrice({ details }: Slip): number {
  if (details.key === 'coach/undone') return PRICE.undone + PRICE.leadsOn
  if (details.key === 'coach/two-for-one') return PRICE.twoForOne + PRICE.leadsOn
  if (details.key === 'coach/two-slips') return PRICE.twoSlips
  return details.key === 'coach/too-often' ? PRICE.miscount : PRICE.slip
}

/** @returns null when it is not believed */
function slipPrice(
  track: TurnTrack,
  from: number,
  done: SequenceDone,
  { details, toToken, endToken }: Slip,
): number | null {
  const wouldLead = wouldLeadOn(track, from, done)
  switch (details.key) {
    case 'coach/undone':
      return PRICE.undone + (wouldLead ? PRICE.leadsOn : PRICE.wrongHere)
    case 'coach/two-for-one':
      return PRICE.twoForOne + (wouldLead ? PRICE.leadsOn : PRICE.wrongHere)
    case 'coach/two-slips':
      return wouldLead ? PRICE.twoSlips : null
  }
  const price = wouldLead ? PRICE.slip : PRICE.slipElsewhere
  switch (details.key) {
    case 'coach/too-often':
      return wouldLead ? PRICE.miscount : price
    case 'coach/unfinished':
      return price + details.missing.length * PRICE.missingTurn
    case 'coach/wrong-layer':
      return price + (toToken === endToken ? PRICE.otherLayerAtEnd : 0)
    default:
      return price
  }
}

/** Would the sequence have led on, had it been done as the book has it? */
function wouldLeadOn(track: TurnTrack, from: number, { pattern, beginsAt }: SequenceDone): boolean {
  const position = copyCube(track.standings[beginsAt].position)
  applyTurns(position, pattern.turns)
  const after = standingAt(position, track.span.to, track.book)
  return leadsOn(track.standings[from], after, countOuterBlockTurns(pattern.turns))
}
