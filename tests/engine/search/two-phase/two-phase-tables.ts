/** The tables of the two-phase search, filled once for the tests of a file. */

import { NODES_PER_ASKING } from '../../../../engine/search/two-phase/node-budget.ts'
import {
  buildPhase1Tables,
  fillPhase1Distances,
  PHASE_1_BYTES,
} from '../../../../engine/search/two-phase/phase-1-distances.ts'
import { buildPhase2Tables } from '../../../../engine/search/two-phase/phase-2-distances.ts'
import type { TwoPhaseTables } from '../../../../engine/search/two-phase/two-phase-search.ts'

/** A table on shared memory, as threads would use it. */
export function filledTables(): TwoPhaseTables {
  const phase1 = buildPhase1Tables()
  const phase1Distances = new Uint8Array(new SharedArrayBuffer(PHASE_1_BYTES))
  fillPhase1Distances(phase1, phase1Distances)
  return { phase1, phase1Distances, phase2: buildPhase2Tables() }
}

/** In place of a clock: says that the time is up after so many nodes. */
export function afterNodes(nNodes: number): () => boolean {
  let nLeft = nNodes
  return () => {
    nLeft -= NODES_PER_ASKING
    return nLeft <= 0
  }
}
