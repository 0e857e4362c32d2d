/**
 * Fills a table of exact distances, breadth first from the goal: the entry of two numbers (a, b) is the fewest face
 * turns that bring both to their goals at once. Row a has the entries of all b, so that a turn leads from one row to one
 * other row, and the inner loop stays in the cache.
 *
 * Source: pattern databases, J. C. Culberson and J. Schaeffer, Computational Intelligence 14 (1998) 318-334; R. E. Korf,
 * Finding optimal solutions to Rubik's Cube using pattern databases, AAAI 1997. Rows are our own arrangement.
 */

import { N_FACE_TURNS } from '../two-phase/coordinate.ts'
import { homeEntry, type PairTable } from './pair-tables.ts'

/** An entry that no turns reach, because two pieces would stand in one place; larger than every distance. */
const UNREACHED = 15

/**
 * An empty entry looks at a few neighbours before one answers, an entry just found spreads to eighteen: so the search turns
 * round when fewer than this many times the entries just found are empty.
 */
const EMPTY_PER_FOUND_TO_TURN_ROUND = 4

/** Rows done between two reports of progress. */
const ROWS_PER_REPORT = 1_024

/**
 * @param packed rows times columns, two entries a byte, the even one in the low half; is filled. May lie on shared memory.
 * @param onProgress told how many entries are found, and how many there are
 */
export function buildDistanceTable(
  table: PairTable,
  packed: Uint8Array,
  onProgress: (nDone: number, nTotal: number) => void = () => {},
): void {
  const { rows, columns, nReachable } = table
  const [nRows, nColumns] = [rows.n, columns.n]
  const rowMoves = rows.moves()
  const columnsAfter = transposed(columns.moves(), nColumns)
  // One byte an entry while it is worked on: two entries that share a byte would cost a third of the speed.
  const distances = new Uint8Array(nRows * nColumns).fill(UNREACHED)
  distances[homeEntry(table)] = 0
  const chosen = new Uint16Array(nColumns)
  let nFilled = 1
  for (let depth = 1, nLast = 1; nFilled < nReachable && nLast > 0; depth++) {
    const isBackward = nRows * nColumns - nFilled < EMPTY_PER_FOUND_TO_TURN_ROUND * nLast
    const nBefore = nFilled
    for (let row = 0; row < nRows; row++) {
      if (row % ROWS_PER_REPORT === 0) onProgress(nFilled, nReachable)
      nFilled += isBackward ? fillRow(row, depth) : spreadRow(row, depth)
    }
    nLast = nFilled - nBefore
  }
  onProgress(nReachable, nReachable)
  for (let byte = 0; byte < packed.length; byte++) packed[byte] = distances[2 * byte] | (distances[2 * byte + 1] << 4)

  /** Forward: every entry of the row at the last distance fills its empty neighbours. */
  function spreadRow(row: number, depth: number): number {
    const base = row * nColumns
    let nChosen = 0
    for (let column = 0; column < nColumns; column++) {
      if (distances[base + column] === depth - 1) chosen[nChosen++] = column
    }
    if (nChosen === 0) return 0
    let nNew = 0
    for (let turn = 0; turn < N_FACE_TURNS; turn++) {
      const target = rowMoves[row * N_FACE_TURNS + turn] * nColumns
      const after = turn * nColumns
      for (let index = 0; index < nChosen; index++) {
        const at = target + columnsAfter[after + chosen[index]]
        if (distances[at] !== UNREACHED) continue
        distances[at] = depth
        nNew++
      }
    }
    return nNew
  }

  /** Backward: every empty entry of the row is filled when a neighbour is at the last distance. */
  function fillRow(row: number, depth: number): number {
    const base = row * nColumns
    let nChosen = 0
    for (let column = 0; column < nColumns; column++) {
      if (distances[base + column] === UNREACHED) chosen[nChosen++] = column
    }
    const nEmpty = nChosen
    for (let turn = 0; turn < N_FACE_TURNS && nChosen > 0; turn++) {
      const target = rowMoves[row * N_FACE_TURNS + turn] * nColumns
      const after = turn * nColumns
      let nLeft = 0
      for (let index = 0; index < nChosen; index++) {
        const column = chosen[index]
        if (distances[target + columnsAfter[after + column]] === depth - 1) distances[base + column] = depth
        else chosen[nLeft++] = column
      }
      nChosen = nLeft
    }
    return nEmpty - nChosen
  }
}

/** The same moves with all numbers of one turn side by side: `moves[turn * n + number]`. */
function transposed(moves: Uint32Array, n: number): Uint16Array {
  const result = new Uint16Array(n * N_FACE_TURNS)
  for (let number = 0; number < n; number++) {
    for (let turn = 0; turn < N_FACE_TURNS; turn++) result[turn * n + number] = moves[number * N_FACE_TURNS + turn]
  }
  return result
}
