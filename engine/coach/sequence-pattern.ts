/**
 * A sequence of the book as the coach looks for it in a row of turns: as tokens, seen by someone who holds the cube home,
 * with the triggers in it, and with the forms it takes when a whole trigger or a re-hold goes wrong. Made once for each book.
 */

import { applyTurn } from '../cube/apply-turn.ts'
import { solvedCube } from '../cube/cube-position.ts'
import { mirrorTurns } from '../cube/mirror-turns.ts'
import { type Turn, turnKind, turnOf } from '../cube/turns.ts'
import { LEFT_TRIGGER, RIGHT_TRIGGER, type SequenceBook } from '../method/sequence-book.ts'
import { STAGES, type Stage } from '../method/stages.ts'
import type { TriggerSide } from './note.ts'
import { pushTokens, type Token } from './turn-tokens.ts'

/** A trigger inside a sequence. */
export type Block = {
  readonly side: TriggerSide
  /** Index of its first token, which is also that of its first turn among those that turn a layer. */
  readonly at: number
  /** How many triggers of this side there are up to this one, itself included. */
  readonly nth: number
}

/** The same trigger several times in a row: a range of blocks. */
export type BlockRun = { readonly from: number; readonly to: number }

/** What can go wrong with a whole part of a sequence. */
export type PartSlip =
  | { readonly key: 'coach/wrong-trigger'; readonly side: TriggerSide }
  | {
      readonly key: 'coach/too-often' | 'coach/too-seldom'
      readonly side: TriggerSide
      readonly nDone: number
      readonly nAdvised: number
    }
  | { readonly key: 'coach/re-hold-left-out'; readonly shouldBe: Turn }

/** A sequence with one part gone wrong. */
export type SlippedForm = {
  readonly slip: PartSlip
  readonly tokens: readonly Token[]
  /** The tokens that are otherwise, or that come too often; an empty range where some are missing. */
  readonly at: number
  readonly to: number
}

/** A sequence, once or several times in a row. */
export type SequencePattern = {
  readonly stage: Stage
  readonly sequenceIndex: number
  readonly nTimes: number
  /** As the book has it, repeats written out. */
  readonly turns: readonly Turn[]
  /** For the home hold. */
  readonly tokens: readonly Token[]
  /** By token: the turn that it belongs to, as the book has it. */
  readonly turnOfToken: readonly Turn[]
  readonly blocks: readonly Block[]
  readonly forms: readonly SlippedForm[]
}

const TRIGGER_TURNS = RIGHT_TRIGGER.length
const OTHER_RE_HOLDS: ReadonlyArray<readonly Turn[]> = [[], [turnOf('y')], [turnOf("y'")], [turnOf('y2')]]

/** Stage 2 is taught so: repeat the trigger until the corner is home, at most five times. */
const TIMES_MAX: Readonly<Partial<Record<Stage, number>>> = { 2: 5 }

/** So often a trigger may come too often or too seldom and is still recognised as a slip of counting. */
const REPEATS_OFF_MAX = 2

const patternsOfBook = new WeakMap<SequenceBook, readonly SequencePattern[]>()

/** @param book not to be changed afterwards @returns all its sequences, those that are repeated in a step also as repeated */
export function patternsOf(book: SequenceBook): readonly SequencePattern[] {
  const known = patternsOfBook.get(book)
  if (known !== undefined) return known
  const patterns = STAGES.flatMap((stage) =>
    book.stages[stage].flatMap(({ turns }, sequenceIndex) =>
      Array.from({ length: TIMES_MAX[stage] ?? 1 }, (_, index) => patternOf(stage, sequenceIndex, index + 1, turns)),
    ),
  )
  patternsOfBook.set(book, patterns)
  return patterns
}

/** @returns is this run of turns one of the two triggers, and which */
function sideOf(turns: readonly Turn[]): TriggerSide | null {
  const isSame = (trigger: readonly Turn[]) =>
    turns.length === trigger.length && turns.every((turn, index) => turn === trigger[index])
  if (isSame(RIGHT_TRIGGER)) return 'right'
  return isSame(LEFT_TRIGGER) ? 'left' : null
}

function patternOf(stage: Stage, sequenceIndex: number, nTimes: number, once: readonly Turn[]): SequencePattern {
  const turns = Array.from({ length: nTimes }, () => once).flat()
  const { tokens, turnOfToken } = tokensFromHome(turns)
  const blocks = blocksIn(turns)
  const forms = [...mirroredForms(turns, blocks), ...recountedForms(turns, blocks), ...reHeldForms(turns)]
  return { stage, sequenceIndex, nTimes, turns, tokens, turnOfToken, blocks: blocks.map(({ block }) => block), forms }
}

type PlacedBlock = { readonly block: Block; readonly turnAt: number }

/** Triggers are found as an eye finds them: from the left, each where the one before has ended. */
function blocksIn(turns: readonly Turn[]): PlacedBlock[] {
  const blocks: PlacedBlock[] = []
  let token = 0
  for (let at = 0; at < turns.length; ) {
    const side = sideOf(turns.slice(at, at + TRIGGER_TURNS))
    if (side !== null) {
      const nth = 1 + blocks.filter(({ block }) => block.side === side).length
      blocks.push({ block: { side, at: token, nth }, turnAt: at })
    }
    const nTurns = side === null ? 1 : TRIGGER_TURNS
    token += tokensFromHome(turns.slice(at, at + nTurns)).tokens.length
    at += nTurns
  }
  return blocks
}

function runsOf(blocks: readonly PlacedBlock[]): BlockRun[] {
  const runs: BlockRun[] = []
  blocks.forEach(({ block, turnAt }, index) => {
    const before = blocks[index - 1]
    const goesOn = before?.block.side === block.side && before.turnAt + TRIGGER_TURNS === turnAt
    const from = goesOn ? runs[runs.length - 1].from : index
    if (goesOn) runs.pop()
    runs.push({ from, to: index + 1 })
  })
  return runs
}

/** One trigger, or a whole run of it, done with the other hand. A sequence that is nothing but a trigger is another one then. */
function mirroredForms(turns: readonly Turn[], blocks: readonly PlacedBlock[]): SlippedForm[] {
  if (blocks.length * TRIGGER_TURNS === turns.length && runsOf(blocks).length === 1) return []
  const runs = runsOf(blocks)
  const singles = blocks.map((_, index) => ({ from: index, to: index + 1 }))
  const spans = [...runs, ...singles.filter(({ from, to }) => !runs.some((run) => run.from === from && run.to === to))]
  return spans.map(({ from, to }) => {
    const [first, last] = [blocks[from], blocks[to - 1]]
    const [begin, end] = [first.turnAt, last.turnAt + TRIGGER_TURNS]
    const mirrored = [...turns.slice(0, begin), ...mirrorTurns(turns.slice(begin, end)), ...turns.slice(end)]
    return {
      slip: { key: 'coach/wrong-trigger', side: first.block.side === 'right' ? 'left' : 'right' },
      tokens: tokensFromHome(mirrored).tokens,
      at: first.block.at,
      to: last.block.at + TRIGGER_TURNS,
    }
  })
}

/** A run of triggers that is longer or shorter. A single trigger that is missing altogether is no slip of counting. */
function recountedForms(turns: readonly Turn[], blocks: readonly PlacedBlock[]): SlippedForm[] {
  // Repeats of a whole sequence are counted where steps are read.
  if (blocks.length * TRIGGER_TURNS === turns.length && runsOf(blocks).length === 1) return []
  return runsOf(blocks).flatMap(({ from, to }) => {
    const nAdvised = to - from
    const [first, last] = [blocks[from], blocks[to - 1]]
    const end = last.turnAt + TRIGGER_TURNS
    const trigger = turns.slice(first.turnAt, first.turnAt + TRIGGER_TURNS)
    const forms: SlippedForm[] = []
    for (let off = 1; off <= REPEATS_OFF_MAX; off++) {
      const more = Array.from({ length: off }, () => trigger).flat()
      forms.push({
        slip: { key: 'coach/too-often', side: first.block.side, nDone: nAdvised + off, nAdvised },
        tokens: tokensFromHome([...turns.slice(0, end), ...more, ...turns.slice(end)]).tokens,
        at: last.block.at + TRIGGER_TURNS,
        to: last.block.at + TRIGGER_TURNS * (1 + off),
      })
      if (off >= nAdvised) continue
      const shorter = [...turns.slice(0, end - off * TRIGGER_TURNS), ...turns.slice(end)]
      const at = last.block.at + TRIGGER_TURNS * (1 - off)
      forms.push({
        slip: { key: 'coach/too-seldom', side: first.block.side, nDone: nAdvised - off, nAdvised },
        tokens: tokensFromHome(shorter).tokens,
        at,
        to: at,
      })
    }
    return forms
  })
}

function reHeldForms(turns: readonly Turn[]): SlippedForm[] {
  return turns.flatMap((shouldBe, index) => {
    if (turnKind(shouldBe) !== 're-hold') return []
    const at = tokensFromHome(turns.slice(0, index)).tokens.length
    const others = OTHER_RE_HOLDS.filter(([other]) => other !== shouldBe)
    return others.map((other) => ({
      slip: { key: 'coach/re-hold-left-out', shouldBe } as const,
      tokens: tokensFromHome([...turns.slice(0, index), ...other, ...turns.slice(index + 1)]).tokens,
      at,
      to: at,
    }))
  })
}

function tokensFromHome(turns: readonly Turn[]): { tokens: Token[]; turnOfToken: Turn[] } {
  const position = solvedCube()
  const tokens: Token[] = []
  const turnOfToken: Turn[] = []
  for (const turn of turns) {
    pushTokens(position, turn, tokens)
    while (turnOfToken.length < tokens.length) turnOfToken.push(turn)
    applyTurn(position, turn)
  }
  return { tokens, turnOfToken }
}
