/** A start and its turns as a cube in a hand, gone so far: what a turning cube is drawn from. */

import { useMemo } from 'react'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { parseStickers } from '../../../engine/cube/stickers.ts'
import { type TurnName, turnOf } from '../../../engine/cube/turns.ts'
import type { CubeInHand } from '../../cube/turns-between.ts'

/** @param start 54 letters, which the server has checked @returns the cube after the first `at` turns */
export function useShownCube(start: string, turns: readonly TurnName[], at: number): CubeInHand {
  const from = useMemo((): CubePosition => {
    const read = parseStickers(start)
    return read.ok ? read.value : solvedCube()
  }, [start])
  return useMemo(() => {
    const standing = turns.slice(0, at).map(turnOf)
    return { tryNumber: 1, standing, position: afterTurns(from, standing) }
  }, [from, turns, at])
}
