/**
 * The making of the par tables as a list of parts, each a computation that tells how far it is. A part that was made can be
 * kept, and the making can go on later with the next one.
 */

import { STAGES, type Stage } from '../../../method/stages.ts'
import { assert } from '../../../result.ts'
import { writeParBytes } from '../par-bytes.ts'
import { STAGES_WITH_WORDS } from '../shortest-solutions.ts'
import { writeWordBytes } from '../word-bytes.ts'
import type { SolvedClasses } from './kindest-words.ts'
import { type MeetingStages, meetInTheMiddle } from './meet-in-the-middle.ts'
import type { PlaceTables } from './place-tables.ts'
import { spreadFromCross } from './spread-from-cross.ts'

/** A part of the making. */
export type ParPart = {
  /** The stages that it makes. */
  readonly stages: readonly Stage[]
  /** Its share 0..1 of the work, as measured: for telling progress. */
  readonly shareOfWork: number
  /** Makes it; yields the share 0..1 that is done; returns what is found, in the order of `stages`. */
  readonly make: (tables: PlaceTables) => Generator<number, SolvedClasses[]>
}

/** All parts. */
export const PAR_PARTS: readonly ParPart[] = [
  {
    stages: [1],
    shareOfWork: 0.01,
    make: function* (tables) {
      yield 0
      const pars = spreadFromCross(tables)
      return [{ pars, words: new Float64Array(pars.length) }]
    },
  },
  meetingPart([2], 12, 0.24),
  meetingPart([3, 4, 5, 6, 7], 13, 0.75),
]

/** @param solvedOfStages by stage @returns the bytes of both generated modules */
export function packParts(solvedOfStages: ReadonlyMap<Stage, SolvedClasses>): {
  readonly pars: Uint8Array
  readonly solutions: Uint8Array
} {
  const solvedOf = (stage: Stage) => {
    const solved = solvedOfStages.get(stage)
    assert(solved !== undefined, `stage ${stage} is made`)
    return solved
  }
  return {
    pars: writeParBytes(STAGES.map((stage) => solvedOf(stage).pars)),
    solutions: writeWordBytes(
      Uint8Array.from(STAGES_WITH_WORDS.flatMap((stage) => [...solvedOf(stage).pars])),
      Float64Array.from(STAGES_WITH_WORDS.flatMap((stage) => [...solvedOf(stage).words])),
    ),
  }
}

function meetingPart(stages: MeetingStages, turnsMax: number, shareOfWork: number): ParPart {
  return {
    stages,
    shareOfWork,
    make: (tables) => meetInTheMiddle({ tables, stages, turnsMax }),
  }
}
