/**
 * How the cube is held: which centre is up and which is in front. Whole-cube rotations ("re-holds") change nothing else.
 * Source: World Cube Association, Regulations 2024, articles 12a4 and 12i (a rotation does not change the state).
 */

import { afterTurns, applyTurns } from './apply-turn.ts'
import { CENTRES_AT, type CubePosition, copyCube, solvedCube } from './cube-position.ts'
import { FACES, type Face, faceIndex } from './faces.ts'
import { ALL_TURNS, inverseTurns, type Turn, turnKind } from './turns.ts'

/** Number 0..23 of a hold. 0 is home: U up, F in front. */
export type Hold = number

/** Ways to hold a cube: six faces can be up, and then four in front. */
export const N_HOLDS = 24

const RE_HOLD_TURNS = ALL_TURNS.filter((turn) => turnKind(turn) === 're-hold')
const NO_HOLD = 255
const UP = faceIndex('U')
const FRONT = faceIndex('F')

const { heldCubes, routes, holdByUpAndFront } = numberHolds()

const WAYS_HOME: ReadonlyArray<readonly Turn[]> = routes.map(inverseTurns)

/** The solved cube in each hold, by hold number. Not to be changed. */
export const HELD_CUBES: readonly CubePosition[] = heldCubes

/** @returns how the position is held, 0..23, read off two centres */
export function holdOf(position: CubePosition): Hold {
  return holdByUpAndFront[position[CENTRES_AT + UP] * FACES.length + position[CENTRES_AT + FRONT]]
}

/**
 * @param up home face whose centre is up
 * @param front home face whose centre is in front
 * @returns the hold, or undefined when the two are the same or opposite
 */
export function holdWith(up: Face, front: Face): Hold | undefined {
  const hold = holdByUpAndFront[faceIndex(up) * FACES.length + faceIndex(front)]
  return hold === NO_HOLD ? undefined : hold
}

/** @returns the fewest re-holds (none to two) that lead from home to this hold */
export function turnsToHold(hold: Hold): readonly Turn[] {
  return routes[hold]
}

/** @returns the same cube, held home: a new position */
export function asHeldHome(position: CubePosition): CubePosition {
  const home = copyCube(position)
  applyTurns(home, WAYS_HOME[holdOf(position)])
  return home
}

/** @param centres home face index 0..5 seen at each face, in the order of `FACES` @returns can a cube be held so? */
export function areCentresOfAHold(centres: readonly number[]): boolean {
  return HELD_CUBES.some((cube) => centres.every((centre, face) => cube[CENTRES_AT + face] === centre))
}

/** @returns the home face whose centre is at this face of the holder's space now */
export function centreAt(position: CubePosition, face: Face): Face {
  return FACES[position[CENTRES_AT + faceIndex(face)]]
}

/** Breadth-first from home: so numbers rise with the re-holds needed, and each route is as short as can be. */
function numberHolds() {
  const heldCubes = [solvedCube()]
  const routes: Turn[][] = [[]]
  const holdByUpAndFront = new Uint8Array(FACES.length * FACES.length).fill(NO_HOLD)
  const note = (cube: CubePosition, hold: Hold) => {
    holdByUpAndFront[cube[CENTRES_AT + UP] * FACES.length + cube[CENTRES_AT + FRONT]] = hold
  }
  note(heldCubes[0], 0)
  for (let hold = 0; hold < heldCubes.length; hold++) {
    for (const turn of RE_HOLD_TURNS) {
      const cube = afterTurns(heldCubes[hold], [turn])
      if (holdByUpAndFront[cube[CENTRES_AT + UP] * FACES.length + cube[CENTRES_AT + FRONT]] !== NO_HOLD) continue
      note(cube, heldCubes.length)
      heldCubes.push(cube)
      routes.push([...routes[hold], turn])
    }
  }
  return { heldCubes, routes, holdByUpAndFront }
}
