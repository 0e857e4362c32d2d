/** The same turns for someone who holds the cube in another way. */

import { CENTRES_AT, type CubePosition } from '../../cube/cube-position.ts'
import { FACES } from '../../cube/faces.ts'
import { FACE_TURNS, type Turn } from '../../cube/turns.ts'

const TURNS_PER_FACE = FACE_TURNS.length / FACES.length

/**
 * @param turns face turns for the cube held home
 * @param position tells how it is held
 * @returns face turns that do the same to the cube in this hold: each face is turned where its centre is now
 */
export function turnsAsHeld(turns: readonly Turn[], position: CubePosition): Turn[] {
  return turns.map((turn) => {
    const homeFace = Math.trunc(turn / TURNS_PER_FACE)
    const faceNow = position.indexOf(homeFace, CENTRES_AT) - CENTRES_AT
    return FACE_TURNS[faceNow * TURNS_PER_FACE + (turn % TURNS_PER_FACE)]
  })
}
