/** What the files of this folder have in common: each looks for one thing to say about a segment of an explained try. */

import type { NoteDetails } from '../note.ts'
import type { Segment } from '../segment.ts'
import type { TurnTrack } from '../turn-track.ts'

/** A try and how it was explained. */
export type Explained = { readonly track: TurnTrack; readonly segments: readonly Segment[] }

/** Something to say. */
export type Finding = {
  readonly details: NoteDetails
  /** The turns that it is about: moments before the first and after the last. */
  readonly from: number
  readonly to: number
  /** From where on the way became longer; a moment at which the case was seen. */
  readonly since: number
  /** The first moment at which it can be over. */
  readonly until: number
  /** Turns that it cost when this is plain from the turns alone; else null, and it is worked out. */
  readonly costTurns: number | null
}

/** @param index of the segment @returns what there is to say, if this file has something to say */
export type Finder = (explained: Explained, index: number) => Finding | null

/** @returns a finding about a whole segment */
export function aboutSegment({ from, to }: Segment, details: NoteDetails): Finding {
  return { details, from, to, since: from, until: to, costTurns: null }
}
