/** Says what a choice of the tables means on this very cube: the four parts of a lesson step. */

import { afterTurns, applyTurns } from '../../cube/apply-turn.ts'
import { type CubePosition, copyCube, EDGES_AT } from '../../cube/cube-position.ts'
import { FACES } from '../../cube/faces.ts'
import { holdOf } from '../../cube/hold.ts'
import { assert } from '../../result.ts'
import { caseOf, isLastLayerStage } from '../cases.ts'
import { TOP_CORNERS, TOP_EDGES } from '../goal-part.ts'
import { goalMet } from '../goals.ts'
import { isPieceStage, type PieceStage, pieceCaseOf } from '../piece-cases.ts'
import { facesAt, placeName } from '../place-name.ts'
import type { Stage } from '../stages.ts'
import type { CaseTable } from './case-table.ts'
import { caseMark, pieceMark } from './hold-mark.ts'
import type { LessonChoice } from './lesson-choice.ts'
import type { HowToHold, LessonStep, LookedForPiece, LookFor, WhatToDo, Why } from './lesson-step.ts'
import { SLOTS_OF_STAGE } from './piece-spots.ts'
import { asSeen, homeOfSeen } from './seen-cube.ts'
import { choiceIn, type StageTable, slotIn } from './stage-table.ts'

/** Where a piece is and how it is turned there, in the holder's space. */
type Spot = { readonly place: number; readonly turned: number }

/**
 * @param position base down, before the step
 * @param answer of the table for this position
 */
export function describeStep(
  position: CubePosition,
  stage: Stage,
  table: StageTable,
  answer: number,
  isRepair: boolean,
): LessonStep {
  const choice = table.choices[choiceIn(answer)]
  const whatToDo = whatToDoFor(choice)
  const reHold = choice.reHold === undefined ? [] : [choice.reHold]
  const held = afterTurns(position, reHold)
  const after = afterTurns(held, whatToDo.turns)
  const shared = { stage, isRepair, do: whatToDo }
  if (isPieceStage(stage)) {
    const home = homeOfSeen(holdOf(position), SLOTS_OF_STAGE[stage][slotIn(answer)])
    return { ...shared, ...describePiece(position, held, after, stage, home, reHold, choice) }
  }
  assert(isLastLayerStage(stage), `stage ${stage} is taught by cases`)
  const caseId = caseOf(position, stage)
  const isDone = goalMet(after, stage)
  return {
    ...shared,
    lookFor: { key: `look/${caseId}`, caseId, piece: null },
    hold: {
      turns: reHold,
      mark: choice.sequenceIndex === undefined ? { key: 'hold/any' } : caseMark(table as CaseTable, asSeen(held)),
    },
    why: isDone ? { key: 'why/stage-done' } : { key: 'why/case-becomes', caseId: caseOf(after, stage) },
  }
}

/** @returns the step that brings the base down, for a cube held otherwise */
export function describeBaseStep(stage: Stage, isRepair: boolean, turns: HowToHold['turns']): LessonStep {
  return {
    stage,
    isRepair,
    lookFor: { key: 'look/base-not-down' },
    hold: { turns, mark: { key: 'hold/base-down' } },
    do: { key: 'do/nothing-more', topTurn: null, sequenceIndex: null, nTimes: 0, turns: [] },
    why: { key: 'why/base-belongs-down' },
  }
}

function whatToDoFor({ topTurn, reHold, sequenceIndex, nTimes, turns }: LessonChoice): WhatToDo {
  const key = (['do/top-turn', 'do/sequence'] as const)[nTimes] ?? 'do/sequence-again'
  const done = reHold === undefined ? turns : turns.slice(1)
  return { key, topTurn: topTurn ?? null, sequenceIndex: sequenceIndex ?? null, nTimes, turns: done }
}

function describePiece(
  position: CubePosition,
  held: CubePosition,
  after: CubePosition,
  stage: PieceStage,
  home: number,
  reHold: HowToHold['turns'],
  { topTurn }: LessonChoice,
): { lookFor: LookFor; hold: HowToHold; why: Why } {
  const begun = copyCube(held)
  if (topTurn !== undefined) applyTurns(begun, [topTurn])
  const [spotNow, homeNow] = seenSpot(position, home)
  const [spotHeld, homeHeld] = seenSpot(begun, home)
  const [spotAfter, homeAfter] = seenSpot(after, home)
  const caseId = pieceCaseOf(stage, homeNow, spotNow.place, spotNow.turned)
  return {
    lookFor: { key: `look/${caseId}`, caseId, piece: lookedForPiece(position, home) },
    hold: { turns: reHold, mark: pieceMark(stage, spotHeld.place, spotHeld.turned, homeHeld) },
    why: whyOfPiece(spotNow, spotAfter, homeAfter),
  }
}

function whyOfPiece(before: Spot, after: Spot, homeAfter: number): Why {
  if (after.place === homeAfter && after.turned === 0) return { key: 'why/piece-home' }
  return { key: isOnTop(after) && !isOnTop(before) ? 'why/piece-out' : 'why/piece-nearer' }
}

function isOnTop({ place }: Spot): boolean {
  return TOP_CORNERS.includes(place) || TOP_EDGES.includes(place)
}

/** @returns where the solver sees the piece of this home, and where the solver sees its home */
function seenSpot(position: CubePosition, home: number): [spot: Spot, homeNow: number] {
  const seen = asSeen(position)
  const homeNow = seen.findIndex((_, place) => {
    const isSameKind = place < EDGES_AT === home < EDGES_AT
    return isSameKind && homeOfSeen(holdOf(position), place) === home
  })
  const nWays = home < EDGES_AT ? 3 : 2
  const first = home < EDGES_AT ? 0 : EDGES_AT
  const homeCode = (homeNow - first) * nWays
  const place = seen.findIndex(
    (code, index) => index < EDGES_AT === home < EDGES_AT && code - (code % nWays) === homeCode,
  )
  return [{ place, turned: seen[place] % nWays }, homeNow]
}

/** The piece as it looks in the holder's space, its colours by home face. */
function lookedForPiece(position: CubePosition, home: number): LookedForPiece {
  const nWays = home < EDGES_AT ? 3 : 2
  const first = home < EDGES_AT ? 0 : EDGES_AT
  const at = position.findIndex(
    (code, place) => place < EDGES_AT === home < EDGES_AT && Math.trunc(code / nWays) === home - first,
  )
  const turned = position[at] % nWays
  const { faces } = facesAt(at)
  return {
    home: placeName(home),
    at: placeName(at),
    colours: facesAt(home).faces.map((colour, side) => ({
      colour: FACES[colour],
      facing: FACES[faces[(side + turned) % nWays]],
    })),
  }
}
