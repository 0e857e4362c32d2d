/**
 * Exact distances over pairs of a symmetry class and a corner twist: the shape of both large tables, in which the class
 * is one of flips with slices (phase 1) or of corner orders.
 *
 * Four bits an entry, one row of 2,187 entries a class. Built row by row: from one row a turn leads to one other row, and
 * its twists there are read off one composed map, so that the inner loops stay in the processor's cache. Small distances
 * are spread forwards from the entries just found; once more entries are found than are left, each entry left looks for a
 * neighbour among them instead.
 *
 * A class that has symmetries of its own holds the same situation in several entries. They are made equal after each
 * forward step; backwards it comes by itself.
 */

import { N_AXIS_SYMMETRIES } from '../../cube/symmetry.ts'
import { assert } from '../../result.ts'
import { N_FACE_TURNS } from './coordinate.ts'
import { N_TWISTS } from './orientation.ts'
import type { SymmetryClasses } from './symmetry-classes.ts'

/** Bytes of a row: two entries each, one half byte to spare. */
const ROW_BYTES = (N_TWISTS + 1) / 2

/** An entry not yet found; larger than every distance. */
const UNKNOWN = 15

/**
 * An unknown entry looks at some four neighbours before one answers, an entry just found spreads to eighteen: so the
 * search turns round when fewer than this many times the entries just found are unknown.
 */
const UNKNOWN_PER_FOUND_TO_TURN_ROUND = 4

/** Rows done between two reports of progress. */
const ROWS_PER_REPORT = 4_096

/** Told how far a table is built; `nTotal` stays the same. */
export type OnProgress = (nDone: number, nTotal: number) => void

/** What a table is built over. */
export type ClassTwistSpace = {
  readonly classes: SymmetryClasses
  /** The rank after a turn 0..17, for ranks that stand for their class. */
  readonly rankAfter: (rank: number, turn: number) => number
  /** By rank and turn. */
  readonly twistTurns: Uint16Array
  /** By symmetry and rank. */
  readonly twistConjugates: Uint16Array
  /** The rank whose class, untwisted, is at distance 0. */
  readonly home: number
}

/** @returns the length of a table */
export function classTwistBytes(nClasses: number): number {
  return nClasses * ROW_BYTES
}

/** @returns the entry of a class and a twist, the twist being that of the rank which stands for the class */
export function readDistance(distances: Uint8Array, classNumber: number, twist: number): number {
  return (distances[classNumber * ROW_BYTES + (twist >>> 1)] >>> ((twist & 1) << 2)) & UNKNOWN
}

/**
 * @param distances `classTwistBytes` long; is filled. May lie on shared memory.
 * @param onProgress told in entries found
 */
export function fillClassTwistDistances(
  space: ClassTwistSpace,
  distances: Uint8Array,
  onProgress: OnProgress = () => {},
): void {
  const { classes, home } = space
  assert(distances.length === classTwistBytes(classes.nClasses), 'there is a row for every class, and no more')
  const nEntries = classes.nClasses * N_TWISTS
  const steps = stepsOf(space)
  distances.fill((UNKNOWN << 4) | UNKNOWN)
  distances[classes.classOf[home] * ROW_BYTES] ^= UNKNOWN
  const rowDistances = new Uint16Array(classes.nClasses)
  rowDistances[classes.classOf[home]] = 1
  let nFound = 1
  let nKnown = 1
  for (let distance = 0; nFound > 0; distance++) {
    const report = (row: number, nNew: number) => {
      if (row % ROWS_PER_REPORT === 0) onProgress(nKnown + nNew, nEntries)
    }
    const isForward = nEntries - nKnown > UNKNOWN_PER_FOUND_TO_TURN_ROUND * nFound
    nFound = isForward
      ? spreadForwards(distances, distance, steps, rowDistances, report) +
        equaliseSelfSymmetric(distances, distance + 1, space, rowDistances)
      : lookBackwards(distances, distance, steps, report)
    nKnown += nFound
  }
  onProgress(nKnown, nEntries)
}

/** Where turns lead: the row, and the twist in it. */
type Steps = {
  readonly nRows: number
  /** By row and turn: first byte of the row that the turn leads to. */
  readonly targetBytes: Uint32Array
  /** By row and turn: the start in `twistMaps` of the map that says which twist is met there. */
  readonly targetMaps: Uint32Array
  /** For each turn and symmetry a map of all twists: the turn, then the symmetry. */
  readonly twistMaps: Uint16Array
}

function stepsOf({ classes, rankAfter, twistTurns, twistConjugates }: ClassTwistSpace): Steps {
  const nRows = classes.nClasses
  const twistMaps = new Uint16Array(N_FACE_TURNS * N_AXIS_SYMMETRIES * N_TWISTS)
  let at = 0
  for (let turn = 0; turn < N_FACE_TURNS; turn++) {
    for (let symmetry = 0; symmetry < N_AXIS_SYMMETRIES; symmetry++) {
      for (let twist = 0; twist < N_TWISTS; twist++) {
        twistMaps[at++] = twistConjugates[symmetry * N_TWISTS + twistTurns[twist * N_FACE_TURNS + turn]]
      }
    }
  }
  const targetBytes = new Uint32Array(nRows * N_FACE_TURNS)
  const targetMaps = new Uint32Array(nRows * N_FACE_TURNS)
  for (let row = 0; row < nRows; row++) {
    for (let turn = 0; turn < N_FACE_TURNS; turn++) {
      const rank = rankAfter(classes.standFor[row], turn)
      targetBytes[row * N_FACE_TURNS + turn] = classes.classOf[rank] * ROW_BYTES
      targetMaps[row * N_FACE_TURNS + turn] = (turn * N_AXIS_SYMMETRIES + classes.symmetryOf[rank]) * N_TWISTS
    }
  }
  return { nRows, targetBytes, targetMaps, twistMaps }
}

/** Which twists of a row have this entry: gathered once, so that the loops over turns need not look for them. */
const twistsOfRow = new Uint16Array(N_TWISTS)

function gatherTwists(distances: Uint8Array, rowByte: number, entry: number): number {
  const bothHalves = (entry << 4) | entry
  let nTwists = 0
  for (let half = 0; half < ROW_BYTES; half++) {
    const pair = distances[rowByte + half] ^ bothHalves
    if ((pair & 0x0f) === 0) twistsOfRow[nTwists++] = 2 * half
    if ((pair & 0xf0) === 0) twistsOfRow[nTwists++] = 2 * half + 1
  }
  // The half byte to spare stays unknown and is no twist.
  return nTwists > 0 && twistsOfRow[nTwists - 1] === N_TWISTS ? nTwists - 1 : nTwists
}

/** Gives the unknown neighbours of all entries at `distance` the next distance. @returns how many */
function spreadForwards(
  distances: Uint8Array,
  distance: number,
  { nRows, targetBytes, targetMaps, twistMaps }: Steps,
  rowDistances: Uint16Array,
  report: (row: number, nNew: number) => void,
): number {
  const change = UNKNOWN ^ (distance + 1)
  let nNew = 0
  for (let row = 0; row < nRows; row++) {
    report(row, nNew)
    if (((rowDistances[row] >>> distance) & 1) === 0) continue
    const nTwists = gatherTwists(distances, row * ROW_BYTES, distance)
    for (let turn = 0; turn < N_FACE_TURNS; turn++) {
      const rowByte = targetBytes[row * N_FACE_TURNS + turn]
      const map = targetMaps[row * N_FACE_TURNS + turn]
      const nBefore = nNew
      for (let index = 0; index < nTwists; index++) {
        const twist = twistMaps[map + twistsOfRow[index]]
        const at = rowByte + (twist >>> 1)
        const shift = (twist & 1) << 2
        if (((distances[at] >>> shift) & UNKNOWN) !== UNKNOWN) continue
        distances[at] ^= change << shift
        nNew++
      }
      if (nNew > nBefore) rowDistances[rowByte / ROW_BYTES] |= 1 << (distance + 1)
    }
  }
  return nNew
}

/** Gives every unknown entry that has a neighbour at `distance` the next distance. @returns how many */
function lookBackwards(
  distances: Uint8Array,
  distance: number,
  { nRows, targetBytes, targetMaps, twistMaps }: Steps,
  report: (row: number, nNew: number) => void,
): number {
  const change = UNKNOWN ^ (distance + 1)
  let nNew = 0
  for (let row = 0; row < nRows; row++) {
    report(row, nNew)
    const ownByte = row * ROW_BYTES
    let nLeft = gatherTwists(distances, ownByte, UNKNOWN)
    for (let turn = 0; turn < N_FACE_TURNS && nLeft > 0; turn++) {
      const rowByte = targetBytes[row * N_FACE_TURNS + turn]
      const map = targetMaps[row * N_FACE_TURNS + turn]
      let nKept = 0
      for (let index = 0; index < nLeft; index++) {
        const own = twistsOfRow[index]
        const twist = twistMaps[map + own]
        if (((distances[rowByte + (twist >>> 1)] >>> ((twist & 1) << 2)) & UNKNOWN) !== distance) {
          twistsOfRow[nKept++] = own
          continue
        }
        distances[ownByte + (own >>> 1)] ^= change << ((own & 1) << 2)
      }
      nNew += nLeft - nKept
      nLeft = nKept
    }
  }
  return nNew
}

/** Copies the entries just found to those which a symmetry of their class makes the same. @returns how many are new */
function equaliseSelfSymmetric(
  distances: Uint8Array,
  found: number,
  { classes, twistConjugates }: ClassTwistSpace,
  rowDistances: Uint16Array,
): number {
  let nNew = 0
  for (let row = 0; row < classes.nClasses; row++) {
    if (classes.selfSymmetries[row] === 1 || ((rowDistances[row] >>> found) & 1) === 0) continue
    const nTwists = gatherTwists(distances, row * ROW_BYTES, found)
    for (let symmetry = 1; symmetry < N_AXIS_SYMMETRIES; symmetry++) {
      if (((classes.selfSymmetries[row] >>> symmetry) & 1) === 0) continue
      for (let index = 0; index < nTwists; index++) {
        const twist = twistConjugates[symmetry * N_TWISTS + twistsOfRow[index]]
        if (readDistance(distances, row, twist) !== UNKNOWN) continue
        distances[row * ROW_BYTES + (twist >>> 1)] ^= (UNKNOWN ^ found) << ((twist & 1) << 2)
        nNew++
      }
    }
  }
  return nNew
}
