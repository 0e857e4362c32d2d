/**
 * A try laid out turn by turn: where the cube stood before and after each turn, how far the lesson had come there, and what
 * it had still to do. Everything the coach asks of a moment is looked up here.
 */

import { applyTurn } from '../cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../cube/cube-position.ts'
import { asHeldHome } from '../cube/hold.ts'
import { countOuterBlockTurns, outerBlockCost } from '../cube/outer-block-turns.ts'
import type { Turn } from '../cube/turns.ts'
import { firstStageToDo, nPartsDone } from '../method/goals.ts'
import { lessonWay } from '../method/lesson-way.ts'
import { isPieceStage } from '../method/piece-cases.ts'
import type { SequenceBook } from '../method/sequence-book.ts'
import { PARTS_PER_STAGE, type Stage, type StageSpan } from '../method/stages.ts'
import { type LessonLeft, lessonLeft } from './lesson-left.ts'
import { pushTokens, type Token } from './turn-tokens.ts'

/** A moment of the try. */
export type Standing = {
  readonly position: CubePosition
  /** The stage under way: the first one whose goal is not met; null when the goal of the span is met. */
  readonly stage: Stage | null
  /** Rises with the stage, and at stages 1 to 3 with the pieces that are home. A lower one means that something broke. */
  readonly level: number
  /** What the lesson has to do at that stage. */
  readonly left: LessonLeft
}

/** The try; see above. Lists by turn have one entry more than there are turns, for the end. */
export type TurnTrack = {
  readonly span: StageSpan
  readonly book: SequenceBook
  /** Those that are read: up to the goal of the span, or all. */
  readonly turns: readonly Turn[]
  readonly standings: readonly Standing[]
  /** Counted turns before this one. */
  readonly nCounted: readonly number[]
  /** What the turns do to layers, one after the other. */
  readonly tokens: readonly Token[]
  /** By turn: its first token. A re-hold has none. */
  readonly firstToken: readonly number[]
  /** By token: the turn that it belongs to. A slice turn has two. */
  readonly turnOfToken: readonly number[]
  /** Lengths of lesson ways over several stages, as they are asked for. Optimisation: each is walked once. */
  readonly lessonTurns: Map<number, number>
}

const LEVELS_PER_STAGE = PARTS_PER_STAGE + 1
const NOTHING_LEFT: LessonLeft = { nTurns: 0, nSequences: 0, pieces: [] }
const STAGES_AND_END = 8

/** @param start stays as it is @param book leads to the goal of the span; asserted */
export function trackTurns(
  start: CubePosition,
  turns: readonly Turn[],
  span: StageSpan,
  book: SequenceBook,
): TurnTrack {
  const position = copyCube(start)
  const standings = [standingAt(position, span.to, book)]
  const nCounted = [0]
  const tokens: Token[] = []
  const firstToken = [0]
  const turnOfToken: number[] = []
  for (const turn of turns) {
    const before = standings[standings.length - 1]
    if (before.stage === null) break
    const nTokens = tokens.length
    pushTokens(position, turn, tokens)
    for (let token = nTokens; token < tokens.length; token++) turnOfToken.push(standings.length - 1)
    applyTurn(position, turn)
    // A re-hold changes nothing but the hold.
    const isReHold = tokens.length === nTokens
    standings.push(isReHold ? { ...before, position: copyCube(position) } : standingAt(position, span.to, book))
    nCounted.push(nCounted[nCounted.length - 1] + outerBlockCost(turn))
    firstToken.push(tokens.length)
  }
  return {
    span,
    book,
    turns: turns.slice(0, standings.length - 1),
    standings,
    nCounted,
    tokens,
    firstToken,
    turnOfToken,
    lessonTurns: new Map(),
  }
}

/** @returns how a position stands on the way to the goal of `to` */
export function standingAt(position: CubePosition, to: Stage, book: SequenceBook): Standing {
  const stage = firstStageToDo(position, to) ?? null
  const own = copyCube(position)
  if (stage === null) {
    return { position: own, stage, level: STAGES_AND_END * LEVELS_PER_STAGE, left: NOTHING_LEFT }
  }
  const nParts = isPieceStage(stage) ? nPartsDone(position, stage) : 0
  return { position: own, stage, level: stage * LEVELS_PER_STAGE + nParts, left: lessonLeft(position, stage, book) }
}

/** @returns counted turns from one moment to another */
export function countBetween({ nCounted }: TurnTrack, from: number, to: number): number {
  return nCounted[to] - nCounted[from]
}

/** @returns the first moment from `at` on when everything stands that stood at `since`; null when there is none */
export function soundAgain({ standings }: TurnTrack, since: number, at: number): number | null {
  const { level } = standings[since]
  for (let moment = at; moment < standings.length; moment++) if (standings[moment].level >= level) return moment
  return null
}

/**
 * How many turns longer the way has become: what was turned between two moments, plus what the lesson takes from the second
 * to the goal of its stage, less what it took from the first. Where stages were finished in between, the lesson's way to
 * the goal of the last of them is what counts.
 *
 * @param to a moment at which everything stands that stood at `from`
 */
export function turnsLost(track: TurnTrack, from: number, to: number): number {
  const [before, after] = [track.standings[from], track.standings[to]]
  const nTurns = countBetween(track, from, to)
  if (after.stage === before.stage) return nTurns + after.left.nTurns - before.left.nTurns
  const finished = ((after.stage ?? track.span.to + 1) - 1) as Stage
  if (finished === before.stage) return nTurns - before.left.nTurns
  return nTurns - nLessonTurns(track, from, finished)
}

/** @returns counted turns of the lesson way from a moment to the goal of the span, over whatever is broken then; 0 at the goal */
export function lessonTurnsToGoal(track: TurnTrack, moment: number): number {
  const { stage, left } = track.standings[moment]
  if (stage === null) return 0
  return stage === track.span.to ? left.nTurns : nLessonTurns(track, moment, track.span.to)
}

/** @returns counted turns of the lesson way from a moment to the goal of a later stage than the one under way */
function nLessonTurns({ standings, book, lessonTurns }: TurnTrack, from: number, to: Stage): number {
  const key = from * STAGES_AND_END + to
  const known = lessonTurns.get(key)
  if (known !== undefined) return known
  const nTurns = countOuterBlockTurns(lessonWay(standings[from].position, { from: to, to }, book))
  lessonTurns.set(key, nTurns)
  return nTurns
}

/** @returns a text that two moments share exactly when the puzzle stands alike, in whatever hold */
export function puzzleKey({ position }: Standing): string {
  return String.fromCharCode(...asHeldHome(position).subarray(0, 20))
}

/** @returns the moment right after the turn that ends with the token before `token`; null in the middle of a slice turn */
export function momentBefore({ firstToken, turnOfToken }: TurnTrack, token: number): number | null {
  if (token === 0) return 0
  const moment = turnOfToken[token - 1] + 1
  return firstToken[moment] === token ? moment : null
}

/** @returns is something broken at a moment that stood at an earlier one? */
export function isMending({ standings }: TurnTrack, moment: number): boolean {
  const { level } = standings[moment]
  return standings.slice(0, moment).some((earlier) => earlier.level > level)
}
