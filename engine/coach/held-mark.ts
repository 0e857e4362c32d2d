/** How the cube was held for a sequence, by the same landmarks as the lesson uses to say how to hold it. */

import { CENTRES_AT, EDGES_AT } from '../cube/cube-position.ts'
import { holdOf } from '../cube/hold.ts'
import { cornerPiece, cornerTwist, edgeFlip, edgePiece } from '../cube/piece-code.ts'
import { isLastLayerStage } from '../method/cases.ts'
import { isPieceStage, type PieceStage } from '../method/piece-cases.ts'
import { placeName } from '../method/place-name.ts'
import type { CaseTable } from '../method/way/case-table.ts'
import { caseMark, type HoldMark, pieceMark } from '../method/way/hold-mark.ts'
import { stageTable } from '../method/way/lesson-tables.ts'
import { SLOTS_OF_STAGE } from '../method/way/piece-spots.ts'
import { asSeen, homeOfSeen, type SeenCube, turnsToBringBaseDown } from '../method/way/seen-cube.ts'
import { assert } from '../result.ts'
import { adviceAt } from './advice.ts'
import type { SequenceDone } from './segment.ts'
import type { TurnTrack } from './turn-track.ts'

/** The base was not down. */
const BASE_NOT_DOWN: HoldMark = { key: 'hold/any' }

/**
 * @param moment at which the case was seen
 * @returns the landmark as it lay when the sequence was begun; `hold/any` when the base was not down
 */
export function heldMark(track: TurnTrack, moment: number, { beginsAt }: SequenceDone): HoldMark {
  const { stage } = track.standings[moment]
  const { position } = track.standings[beginsAt]
  if (stage === null || turnsToBringBaseDown(position).length > 0) return BASE_NOT_DOWN
  const seen = asSeen(position)
  if (isPieceStage(stage)) return heldPieceMark(track, moment, stage, seen, holdOf(position))
  assert(isLastLayerStage(stage), `stage ${stage} is taught by cases`)
  const table = stageTable(track.book, stage) as CaseTable
  const advised = adviceAt(track, moment).do
  const choice = table.choices.find(({ sequenceIndex }) => sequenceIndex === (advised.sequenceIndex ?? undefined))
  return choice === undefined ? BASE_NOT_DOWN : caseMark(table, seen, choice)
}

function heldPieceMark(track: TurnTrack, moment: number, stage: PieceStage, seen: SeenCube, hold: number): HoldMark {
  const { lookFor } = adviceAt(track, moment)
  const piece = 'piece' in lookFor ? lookFor.piece : null
  // The piece is named by its home on a cube held home; seen from this hold its home has another name.
  const home = SLOTS_OF_STAGE[stage].find((slot) => placeName(homeOfSeen(hold, slot)) === piece?.home)
  if (home === undefined) return BASE_NOT_DOWN
  const isCorner = home < EDGES_AT
  const at = [...seen.keys()].find((place) =>
    isCorner
      ? place < EDGES_AT && cornerPiece(seen[place]) === home
      : EDGES_AT <= place && place < CENTRES_AT && EDGES_AT + edgePiece(seen[place]) === home,
  )
  assert(at !== undefined, 'every piece is somewhere')
  return pieceMark(stage, at, isCorner ? cornerTwist(seen[at]) : edgeFlip(seen[at]), home)
}
