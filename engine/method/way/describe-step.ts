/** Says what a choice of the tables means on this very cube: the four parts of a lesson step. */

import { afterTurns, applyTurns } from '../../cube/apply-turn.ts'
import { type CubePosition, copyCube, EDGES_AT } from '../../cube/cube-position.ts'
import { FACES } from '../../cube/faces.ts'
import { holdOf } from '../../cube/hold.ts'
import { cornerPiece, cornerTwist, edgeFlip, edgePiece } from '../../cube/piece-code.ts'
import { turnOf } from '../../cube/turns.ts'
import { assert } from '../../result.ts'
import { caseOf, isLastLayerStage, type LastLayerStage } from '../cases.ts'
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

/** Where a piece is, how it is turned there, and where its home is: all as the holder sees it. */
type Spot = { readonly place: number; readonly turned: number; readonly home: number }

/** From wherever the cube is held, the four holds with the base down. */
const SIDE_HOLDS = [[], [turnOf('y')], [turnOf('y2')], [turnOf("y'")]]

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
  const mark = caseMark(table as CaseTable, asSeen(held), choice)
  const afterwards = mark.key === 'hold/any' ? afterFromAllSides(position, whatToDo) : [after]
  return {
    ...shared,
    lookFor: { key: `look/${caseId}`, caseId, piece: null },
    hold: { turns: reHold, mark },
    why: whyOfCase(afterwards, stage),
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
  const now = seenSpot(position, home)
  const whenHeld = seenSpot(begun, home)
  const caseId = pieceCaseOf(stage, now.home, now.place, now.turned)
  return {
    lookFor: { key: `look/${caseId}`, caseId, piece: lookedForPiece(position, home) },
    hold: { turns: reHold, mark: pieceMark(stage, whenHeld.place, whenHeld.turned, whenHeld.home) },
    why: whyOfPiece(now, seenSpot(after, home)),
  }
}

/** Where the hold does not matter, what is said has to come true whichever is taken. */
function afterFromAllSides(position: CubePosition, { turns }: WhatToDo): CubePosition[] {
  return SIDE_HOLDS.map((reHold) => afterTurns(position, [...reHold, ...turns]))
}

function whyOfCase(afterwards: readonly CubePosition[], stage: LastLayerStage): Why {
  if (afterwards.every((after) => goalMet(after, stage))) return { key: 'why/stage-done' }
  const [caseId, ...others] = new Set(afterwards.map((after) => caseOf(after, stage)))
  return others.length === 0 ? { key: 'why/case-becomes', caseId } : { key: 'why/fewer-sequences' }
}

function whyOfPiece(before: Spot, after: Spot): Why {
  if (after.place === after.home && after.turned === 0) return { key: 'why/piece-home' }
  return { key: isOnTop(after) && !isOnTop(before) ? 'why/piece-out' : 'why/piece-nearer' }
}

function isOnTop({ place }: Spot): boolean {
  return TOP_CORNERS.includes(place) || TOP_EDGES.includes(place)
}

/** @param home of the piece, on a cube held home */
function seenSpot(position: CubePosition, home: number): Spot {
  const place = placeOfPiece(position, home)
  const code = asSeen(position)[place]
  return home < EDGES_AT
    ? { place, turned: cornerTwist(code), home: cornerPiece(code) }
    : { place, turned: edgeFlip(code), home: EDGES_AT + edgePiece(code) }
}

/** The piece as it looks in the holder's space, its colours by home face. */
function lookedForPiece(position: CubePosition, home: number): LookedForPiece {
  const place = placeOfPiece(position, home)
  const turned = home < EDGES_AT ? cornerTwist(position[place]) : edgeFlip(position[place])
  const { faces } = facesAt(place)
  return {
    home: placeName(home),
    at: placeName(place),
    colours: facesAt(home).faces.map((colour, side) => ({
      colour: FACES[colour],
      facing: FACES[faces[(side + turned) % faces.length]],
    })),
  }
}

function placeOfPiece(position: CubePosition, home: number): number {
  return home < EDGES_AT
    ? position.findIndex((code, place) => place < EDGES_AT && cornerPiece(code) === home)
    : position.findIndex((code, place) => place >= EDGES_AT && EDGES_AT + edgePiece(code) === home)
}
