/** Reads the position that a question is about: a scramble of the solved cube, or the 54 stickers of a cube as it lies there. */

import { afterTurns } from '../../engine/cube/apply-turn.ts'
import { type CubePosition, solvedCube } from '../../engine/cube/cube-position.ts'
import { type PositionFault, parseStickers } from '../../engine/cube/stickers.ts'
import { err, neverHappens, ok, type Result } from '../../engine/result.ts'
import { type InputFault, readTurns } from './read-input.ts'

/** @returns the position, or why it cannot be read; a cube that no turns can solve is refused with the rule that it breaks */
export function readPosition(asked: {
  readonly scramble?: string | undefined
  readonly stickers?: string | undefined
}): Result<CubePosition, InputFault> {
  if (asked.stickers === undefined) {
    const turns = readTurns('--scramble', asked.scramble)
    return turns.ok ? ok(afterTurns(solvedCube(), turns.value)) : turns
  }
  if (asked.scramble !== undefined) return err('--stickers cannot stand beside --scramble: give one of them')
  const position = parseStickers(asked.stickers)
  return position.ok ? position : err(`--stickers: ${sentenceFor(position.error)}`)
}

function sentenceFor(fault: PositionFault): string {
  switch (fault.code) {
    case 'cube/unknown-sticker':
      return `"${fault.token}" at character ${fault.at + 1} is no face; the faces are U R F D L B`
    case 'cube/sticker-count':
      return `${fault.nStickers} stickers are given; a cube has 54`
    case 'cube/centres':
      return 'the six centres do not lie to each other as on a cube'
    case 'cube/unknown-piece':
      return `no piece has the colours that are given at ${fault.place}`
    case 'cube/doubled-piece':
      return `the piece ${fault.piece} is there twice, the second time at ${fault.place}`
    case 'cube/corner-twist':
      return `no turns can solve this cube: a corner is twisted by ${fault.nThirds === 1 ? 'a third' : 'two thirds'} of a turn`
    case 'cube/edge-flip':
      return 'no turns can solve this cube: an odd number of its edges is flipped'
    case 'cube/parity':
      return 'no turns can solve this cube: two of its pieces have changed places'
    default:
      return neverHappens(fault, 'sentenceFor')
  }
}
