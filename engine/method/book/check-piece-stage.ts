/**
 * Checks a book at stage 1, 2 or 3, exactly: walks the way from every arrangement of the stage's four pieces, and
 * tabulates every situation of a single piece.
 */

import { N_PIECE_CODES } from '../../cube/piece-code.ts'
import { GOAL_MASKS, maskRow } from '../goal-masks.ts'
import { PIECE_CASES_OF_STAGE, type PieceCaseId, type PieceStage, pieceCaseOf } from '../piece-cases.ts'
import type { BookSequence } from '../sequence-book.ts'
import type { Stage } from '../stages.ts'
import { pieceMark } from '../way/hold-mark.ts'
import { type LessonChoice, turnsIn } from '../way/lesson-choice.ts'
import {
  doneMaskOf,
  N_SLOTS,
  type PieceEffect,
  type PieceSpots,
  pieceEffectOf,
  SLOTS_OF_STAGE,
} from '../way/piece-spots.ts'
import { buildPieceTable, type PieceTable } from '../way/piece-table.ts'
import { seenEffectOf } from '../way/seen-cube.ts'
import { choiceIn, DONE } from '../way/stage-table.ts'
import type { CaseReport } from './book-report.ts'
import { type CaseDraft, caseReport, newCaseDraft, noteBegin, type StageFindings } from './stage-findings.ts'
import { addCost, addStuck, addWay, newTally, type Tally } from './tally.ts'

const SCRATCH: PieceSpots = new Uint8Array(N_SLOTS)

/** @returns what the sequences do with the stage; those with a fault are not used */
export function checkPieceStage(stage: PieceStage, sequences: readonly BookSequence[]): StageFindings {
  const table = buildPieceTable(stage, sequences)
  const used = new Set<number>()
  const stuckCases = new Set<PieceCaseId>()
  const total = newTally()
  const spots = new Uint8Array(N_SLOTS)
  for (const start of arrangements(table)) {
    spots.set(start)
    walk(table, spots, total, used)
    if (table.nextFor(spots) !== DONE) for (const caseId of undoneCases(table, spots)) stuckCases.add(caseId)
  }
  return { total, used, stuckCases, cases: tabulate(table, sequences) }
}

/** Walks to the goal, or until there is no way, and adds what it took. */
function walk(table: PieceTable, spots: PieceSpots, total: Tally, used: Set<number>): void {
  let nSequences = 0
  let nTurns = 0
  let answer = table.nextFor(spots)
  for (; answer >= 0; answer = table.nextFor(spots)) {
    const { cost, sequenceIndex, nTimes } = table.choices[choiceIn(answer)]
    nSequences += nTimes
    nTurns += turnsIn(cost)
    if (sequenceIndex !== undefined) used.add(sequenceIndex)
    table.carry(spots, choiceIn(answer), SCRATCH)
  }
  if (answer === DONE) addWay(total, nSequences, nTurns)
  else addStuck(total)
}

/** Every way in which the four pieces can lie, on the places that no earlier stage has filled. Yields one array again. */
function* arrangements(table: PieceTable): Generator<PieceSpots> {
  const { nWays } = table.kind
  const places = freePlaces(table)
  const spots = new Uint8Array(N_SLOTS)
  const nTurned = nWays ** N_SLOTS
  for (const a of places) {
    for (const b of places) {
      for (const c of places) {
        for (const d of places) {
          if (a === b || a === c || a === d || b === c || b === d || c === d) continue
          for (let turned = 0; turned < nTurned; turned++) {
            spots[0] = a * nWays + (turned % nWays)
            spots[1] = b * nWays + (Math.trunc(turned / nWays) % nWays)
            spots[2] = c * nWays + (Math.trunc(turned / nWays ** 2) % nWays)
            spots[3] = d * nWays + Math.trunc(turned / nWays ** 3)
            yield spots
          }
        }
      }
    }
  }
}

/** @returns places, counted from the first of the kind, where no earlier goal wants a certain piece */
function freePlaces({ stage, kind: { firstPlace, endPlace } }: PieceTable): number[] {
  const row = maskRow((stage - 1) as Stage | 0, 0)
  const places = Array.from({ length: endPlace - firstPlace }, (_, index) => index)
  return places.filter((index) => {
    const mask = GOAL_MASKS[row + firstPlace + index]
    return (mask & (mask - 1)) !== 0
  })
}

function undoneCases(table: PieceTable, spots: PieceSpots): PieceCaseId[] {
  const done = doneMaskOf(spots, table.kind)
  return [...spots].flatMap((spot, slot) => ((done >> slot) & 1 ? [] : [caseAt(table, slot, spot)]))
}

function caseAt({ stage, kind }: PieceTable, slot: number, spot: number): PieceCaseId {
  const place = kind.firstPlace + Math.trunc(spot / kind.nWays)
  return pieceCaseOf(stage, SLOTS_OF_STAGE[stage][slot], place, spot % kind.nWays)
}

/** Goes through every situation of one piece: its slot, where it is, and which of the others are done. */
function tabulate(table: PieceTable, sequences: readonly BookSequence[]): CaseReport[] {
  const drafts = new Map<PieceCaseId, CaseDraft>(PIECE_CASES_OF_STAGE[table.stage].map((id) => [id, newCaseDraft()]))
  const all: Tally = newTally()
  const inFront = table.choices.map((choice) => effectInFront(choice, table))
  for (let slot = 0; slot < N_SLOTS; slot++) {
    for (const spot of spotsOf(table, slot)) {
      for (let mask = 0; mask < 2 ** N_SLOTS; mask++) {
        if ((mask >> slot) & 1 || isTaken(table, mask, spot)) continue
        const cost = table.costOf(slot, spot, mask)
        const draft = drafts.get(caseAt(table, slot, spot))
        if (draft === undefined) continue
        addCost(all, cost)
        addCost(draft.tally, cost)
        const choice = table.choiceFor(slot, spot, mask)
        if (choice < 0) continue
        noteBegin(draft, markAfter(table, inFront[choice], slot, spot), table.choices[choice], sequences)
      }
    }
  }
  return [...drafts].map(([caseId, draft]) => caseReport(caseId, draft, all.nWays))
}

function spotsOf(table: PieceTable, slot: number): number[] {
  const { nWays, homes } = table.kind
  const spots = freePlaces(table).flatMap((place) =>
    Array.from({ length: nWays }, (_, turned) => place * nWays + turned),
  )
  return spots.filter((spot) => spot !== homes[slot])
}

/** Is the place of this spot one whose own piece is done? */
function isTaken({ kind: { homes, nWays } }: PieceTable, mask: number, spot: number): boolean {
  return homes.some((home, slot) => (mask >> slot) & 1 && Math.trunc(home / nWays) === Math.trunc(spot / nWays))
}

function effectInFront({ turns, nTurnsInFront }: LessonChoice, { kind }: PieceTable): PieceEffect {
  return pieceEffectOf(seenEffectOf(turns.slice(0, nTurnsInFront)), kind)
}

function markAfter({ stage, kind }: PieceTable, { spotAfter }: PieceEffect, slot: number, spot: number) {
  const after = spotAfter[slot * N_PIECE_CODES + spot]
  const [slotAfter, at] = [Math.trunc(after / N_PIECE_CODES), after % N_PIECE_CODES]
  const place = kind.firstPlace + Math.trunc(at / kind.nWays)
  return pieceMark(stage, place, at % kind.nWays, SLOTS_OF_STAGE[stage][slotAfter])
}
