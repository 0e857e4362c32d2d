/**
 * Turning a cube. The hottest code of the engine: it allocates nothing and branches only at the end of its loop.
 */

import { type CubePosition, copyCube } from './cube-position.ts'
import { CODE_AFTER_ADDING } from './piece-code.ts'
import { QUAD_BYTES, TURN_PROGRAMS } from './turn-program.ts'
import type { Turn } from './turns.ts'

const { quads, startOfTurn } = TURN_PROGRAMS

/**
 * Turns the cube in place.
 *
 * Optimisation: four pieces at a time are held in local variables, which makes a scratch array needless. A copy of all
 * 26 bytes for each turn would be plainer and was several times slower (see `tests/bench/engine-bench.ts`).
 */
export function applyTurn(position: CubePosition, turn: Turn): void {
  const end = startOfTurn[turn + 1]
  for (let at = startOfTurn[turn]; at < end; at += QUAD_BYTES) {
    const a = CODE_AFTER_ADDING[quads[at + 8] + position[quads[at]]]
    const b = CODE_AFTER_ADDING[quads[at + 9] + position[quads[at + 1]]]
    const c = CODE_AFTER_ADDING[quads[at + 10] + position[quads[at + 2]]]
    const d = CODE_AFTER_ADDING[quads[at + 11] + position[quads[at + 3]]]
    position[quads[at + 4]] = a
    position[quads[at + 5]] = b
    position[quads[at + 6]] = c
    position[quads[at + 7]] = d
  }
}

/** Turns the cube in place, first turn first. */
export function applyTurns(position: CubePosition, turns: readonly Turn[]): void {
  for (const turn of turns) applyTurn(position, turn)
}

/** @returns a new position: the given one after these turns. The given one stays as it is. */
export function afterTurns(position: CubePosition, turns: readonly Turn[]): CubePosition {
  const after = copyCube(position)
  applyTurns(after, turns)
  return after
}
