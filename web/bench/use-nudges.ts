/** The nudges that stand on a bench: the teacher's last ones of this round, each until the child puts it away. */

import { useCallback, useEffect, useMemo, useRef } from 'react'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { stickersOfPiece } from '../../engine/cube/find-piece.ts'
import type { BenchView } from '../../engine/wire/views.ts'
import type { LocalTry } from '../live/bench-live.ts'
import type { TeacherHint } from '../parts/hints/hint-ladder.tsx'
import { useKept } from './kept-value.ts'
import { readPutAway, type StandingNudges, standingNudges } from './standing-nudges.ts'

export type ShownNudges = {
  /** For the ladder: with the position at which the cube stood when it was first shown. */
  readonly hint: TeacherHint | null
  readonly lines: StandingNudges['lines']
  /** Stickers of the piece that is pointed at, wherever it is now. */
  readonly ringed: readonly number[]
  /** Puts one away by its number; the others stay. */
  readonly onPutAway: (number: number) => void
}

/** A hint as it came in. */
type SeenHint = { readonly key: string; readonly position: CubePosition; readonly tryNumber: number }

/**
 * @param isShown not while the start is still hidden: a hint would tell of it
 * @returns what has not been put away on this page. A hint goes with the try for which it came.
 */
export function useNudges(view: BenchView, mine: LocalTry, isShown: boolean): ShownNudges {
  const { round, nudges, me } = view
  const of = `${me.seatId}.${round?.id ?? ''}`
  const [putAway, keepPutAway] = useKept('putAway', of, readPutAway)
  const onPutAway = useCallback((number: number) => keepPutAway([...putAway, number]), [putAway, keepPutAway])
  const standing = useMemo(
    () => (isShown ? standingNudges(nudges, putAway) : NOTHING_STANDS),
    [nudges, putAway, isShown],
  )

  const seen = useRef<SeenHint | null>(null)
  const number = standing.hint?.number ?? null
  const level = standing.hint?.nudge.level ?? null
  const key = `${of} ${number}`
  if (number !== null && seen.current?.key !== key)
    seen.current = { key, position: mine.position, tryNumber: mine.number }
  const isOver = number !== null && seen.current?.tryNumber !== mine.number
  useEffect(() => {
    if (isOver && number !== null) onPutAway(number)
  }, [isOver, number, onPutAway])
  const at = seen.current?.position ?? null
  const hint = useMemo(
    () =>
      number === null || level === null || at === null || isOver
        ? null
        : { position: at, level, onPutAway: () => onPutAway(number) },
    [number, level, at, isOver, onPutAway],
  )

  const pointer = standing.lines.find(({ nudge }) => nudge.kind === 'point')?.nudge ?? null
  const piece = pointer?.kind === 'point' ? pointer.piece : null
  const ringed = useMemo(
    () => (piece === null ? NO_STICKERS : stickersOfPiece(mine.position, piece)),
    [piece, mine.position],
  )
  return { hint, lines: standing.lines, ringed, onPutAway }
}

const NOTHING_STANDS: StandingNudges = { hint: null, lines: [] }
const NO_STICKERS: readonly number[] = []
