/** The nudges that stand on a bench: the teacher's last ones of this round, each until the child puts it away. */

import { useCallback, useEffect, useMemo } from 'react'
import { stickersOfPiece } from '../../engine/cube/find-piece.ts'
import type { HintLevel } from '../../engine/method/way/hint-level.ts'
import type { BenchView } from '../../engine/wire/views.ts'
import type { LocalTry } from '../live/bench-live.ts'
import type { TeacherHint } from '../parts/hints/hint-ladder.tsx'
import type { TaughtHint } from '../parts/hints/hint-of-try.ts'
import { useKept } from './kept-value.ts'
import { readSeenHints, withSeenHint } from './seen-hints.ts'
import { readPutAway, type StandingNudges, standingNudges } from './standing-nudges.ts'

export type ShownNudges = {
  /** The last hint, until it is put away; only announced, for the ladder shows it. */
  readonly hint: { readonly level: HintLevel; readonly onPutAway: () => void } | null
  /** All hints that were sent in this try, put away or not: for the ladder, to which they belong like those asked for. */
  readonly taught: readonly TaughtHint[]
  /** What the ladder needs beside a hint that the teacher sent, by its number; null for one that was asked for. */
  readonly teacherHint: (number: number | null | undefined) => TeacherHint | null
  readonly lines: StandingNudges['lines']
  /** Stickers of the piece that is pointed at, wherever it is now. */
  readonly ringed: readonly number[]
  /** Puts one away by its number; the others stay. */
  readonly onPutAway: (number: number) => void
}

/**
 * @param isShown not while the start is still hidden: a hint would tell of it
 * @returns what has not been put away on this page, and the hints of this try. A hint goes with the try for which it came.
 */
export function useNudges(view: BenchView, mine: LocalTry, isShown: boolean): ShownNudges {
  const { round, nudges, me } = view
  const of = `${me.seatId}.${round?.id ?? ''}`
  const [putAway, keepPutAway] = useKept('putAway', of, readPutAway)
  const [seen, keepSeen] = useKept('taught', of, readSeenHints)
  const onPutAway = useCallback(
    (number: number) => {
      if (!putAway.includes(number)) keepPutAway([...putAway, number])
    },
    [putAway, keepPutAway],
  )
  const standing = useMemo(
    () => (isShown ? standingNudges(nudges, putAway) : NOTHING_STANDS),
    [nudges, putAway, isShown],
  )

  const last = isShown ? nudges.hint : null
  const { number: tryNumber, steps } = mine
  const nSteps = steps.length
  // A hint belongs to where the cube stood when it was first shown.
  const known = useMemo(() => withSeenHint(seen, last, { tryNumber, nSteps }), [seen, last, tryNumber, nSteps])
  useEffect(() => {
    if (known !== seen) keepSeen(known)
  }, [known, seen, keepSeen])
  const taught = useMemo(
    () => (isShown ? known.filter((hint) => hint.tryNumber === tryNumber) : NOTHING_TAUGHT),
    [known, tryNumber, isShown],
  )

  const number = standing.hint?.number ?? null
  const level = standing.hint?.nudge.level ?? null
  const isOver = number !== null && !taught.some((hint) => hint.number === number)
  useEffect(() => {
    if (isOver && number !== null) onPutAway(number)
  }, [isOver, number, onPutAway])
  const hint = number === null || level === null || isOver ? null : { level, onPutAway: () => onPutAway(number) }
  const teacherHint: ShownNudges['teacherHint'] = (by) =>
    by === null || by === undefined
      ? null
      : {
          isAway: putAway.includes(by),
          onPutAway: () => onPutAway(by),
          onTakeOut: () => keepPutAway(putAway.filter((each) => each !== by)),
        }

  const pointer = standing.lines.find(({ nudge }) => nudge.kind === 'point')?.nudge ?? null
  const piece = pointer?.kind === 'point' ? pointer.piece : null
  const ringed = useMemo(
    () => (piece === null ? NO_STICKERS : stickersOfPiece(mine.position, piece)),
    [piece, mine.position],
  )
  return { hint, taught, teacherHint, lines: standing.lines, ringed, onPutAway }
}

const NOTHING_STANDS: StandingNudges = { hint: null, lines: [] }
const NOTHING_TAUGHT: readonly TaughtHint[] = []
const NO_STICKERS: readonly number[] = []
