/** Does what was done between two moments lead on, as the lesson understands it? */

import { isPieceStage } from '../method/piece-cases.ts'
import type { Standing } from './turn-track.ts'

/**
 * At stages 4 to 7 when the lesson needs fewer sequences then. At stages 1 to 3 when one piece, whichever, is nearer home by
 * what was turned, as the tables of that piece alone say, and none has left its home: the order of pieces is free.
 *
 * @param nTurns counted turns of the sequences alone
 */
export function leadsOn(before: Standing, after: Standing, nTurns: number): boolean {
  const { stage } = before
  if (stage === null || after.level < before.level) return false
  if (after.stage !== stage) return true
  if (!isPieceStage(stage)) return after.left.nSequences < before.left.nSequences
  const isKept = before.left.pieces.every((piece, index) => piece.nTurns > 0 || after.left.pieces[index].nTurns === 0)
  return isKept && before.left.pieces.some((piece, index) => isNearer(piece, after.left.pieces[index], nTurns))
}

type PieceLeft = Standing['left']['pieces'][number]

function isNearer(before: PieceLeft, after: PieceLeft, nTurns: number): boolean {
  return after.nSequences < before.nSequences && before.nTurns - after.nTurns >= nTurns
}
