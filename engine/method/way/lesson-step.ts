/**
 * One step of the lesson, as data: what to look for, how to hold, what to do, and why. The keys are closed lists; only
 * `web/locales/` turns them into sentences. Everything is plain data that can be sent and stored.
 */

import type { Face } from '../../cube/faces.ts'
import type { Turn } from '../../cube/turns.ts'
import type { CaseId } from '../cases.ts'
import type { StageCaseId } from '../piece-cases.ts'
import type { Stage } from '../stages.ts'
import type { HoldMark } from './hold-mark.ts'

/** The piece that a step of stages 1 to 3 is about. */
export type LookedForPiece = {
  /** Its home place on a cube held home, which names its colours: `DFR`, `FR`. */
  readonly home: string
  /** Where it is now, in the hold before the step. */
  readonly at: string
  /** Each of its colours, by home face, and the face to which it looks now. */
  readonly colours: ReadonlyArray<{ readonly colour: Face; readonly facing: Face }>
}

/** The first rung of the ladder: what to look for. */
export type LookFor =
  | { readonly key: 'look/base-not-down' }
  | { readonly key: `look/${StageCaseId}`; readonly caseId: StageCaseId; readonly piece: LookedForPiece | null }

/** The second rung: how to hold. */
export type HowToHold = {
  /** None or one re-hold. */
  readonly turns: readonly Turn[]
  /** How to know that it is right; at stages 1 to 3 once the top turn has been done as well. */
  readonly mark: HoldMark
}

/** The third rung: what to do then. */
export type WhatToDo = {
  readonly key: 'do/nothing-more' | 'do/top-turn' | 'do/sequence' | 'do/sequence-again'
  /** A turn of the top layer, before the sequence. */
  readonly topTurn: Turn | null
  /** Place in the book's list for the stage. */
  readonly sequenceIndex: number | null
  /** How often in a row; 0 without a sequence. */
  readonly nTimes: number
  /** Top turn and sequences, written out. */
  readonly turns: readonly Turn[]
}

/** Why: what the step achieves. */
export type Why =
  /** The method is taught with the base down. */
  | { readonly key: 'why/base-belongs-down' }
  /** Stages 1 to 3: the piece is home then. */
  | { readonly key: 'why/piece-home' }
  /** The piece is in the top layer then, from where it can be brought home. */
  | { readonly key: 'why/piece-out' }
  /** The piece is nearer home. */
  | { readonly key: 'why/piece-nearer' }
  /** Stages 4 to 7: the goal of the stage is met then. */
  | { readonly key: 'why/stage-done' }
  /** The case becomes one that takes fewer sequences. */
  | { readonly key: 'why/case-becomes'; readonly caseId: CaseId }
  /** Any hold is as good, and the case depends on it; it takes one sequence less. */
  | { readonly key: 'why/fewer-sequences' }

/** A step. Done in this order: `hold.turns`, then `do.turns`. */
export type LessonStep = {
  /** The stage that the step works for. */
  readonly stage: Stage
  /** Is that a stage before the first one asked for? Then earlier work is broken, and the way starts there. */
  readonly isRepair: boolean
  readonly lookFor: LookFor
  readonly hold: HowToHold
  readonly do: WhatToDo
  readonly why: Why
}

/** The closed lists of keys. Every language has a sentence for each. */
export type LookForKey = LookFor['key']
export type DoKey = WhatToDo['key']
export type WhyKey = Why['key']

/** @returns all turns of a step, in the order in which they are done */
export function turnsOfStep(step: LessonStep): Turn[] {
  return [...step.hold.turns, ...step.do.turns]
}
