/** The nudge that stands on a bench: the teacher's last one of this round, until the child puts it away. */

import { useCallback, useMemo, useRef, useState } from 'react'
import type { Nudge } from '../../engine/contest/nudges.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { stickersOfPiece } from '../../engine/cube/find-piece.ts'
import type { BenchView } from '../../engine/wire/views.ts'
import type { LocalTry } from '../live/bench-live.ts'
import type { TeacherHint } from '../parts/hints/hint-ladder.tsx'

export type StandingNudge = {
  readonly nudge: Nudge
  /** Where the cube stood when it was first shown: a hint speaks of that. */
  readonly position: CubePosition
  readonly onPutAway: () => void
}

/** A nudge as it came in. */
type SeenNudge = { readonly key: string; readonly position: CubePosition; readonly tryNumber: number }

/**
 * @param isShown not while the start is still hidden: a hint would tell of it
 * @returns null when there is none, or it was put away on this page. A hint goes with the try for which it came.
 */
export function useNudge(view: BenchView, mine: LocalTry, isShown: boolean): StandingNudge | null {
  const [putAway, setPutAway] = useState<string | null>(null)
  const seen = useRef<SeenNudge | null>(null)
  const { round, nudge: last } = view
  const key = round === null || last === null ? '' : `${round.id} ${last.number}`
  const onPutAway = useCallback(() => setPutAway(key), [key])
  if (last === null || key === '' || !isShown) return null
  if (seen.current?.key !== key) seen.current = { key, position: mine.position, tryNumber: mine.number }
  const { position, tryNumber } = seen.current
  const isOver = last.nudge.kind === 'hint' && tryNumber !== mine.number
  if (putAway === key || isOver) return null
  return { nudge: last.nudge, position, onPutAway }
}

/** @returns a hint for the ladder, and the stickers of the piece that is pointed at, wherever it is now */
export function useShownNudge(
  standing: StandingNudge | null,
  position: CubePosition,
): { readonly fromTeacher: TeacherHint | null; readonly ringed: readonly number[] } {
  const nudge = standing?.nudge ?? null
  const level = nudge?.kind === 'hint' ? nudge.level : null
  const piece = nudge?.kind === 'point' ? nudge.piece : null
  const at = standing?.position ?? null
  const onPutAway = standing?.onPutAway
  const fromTeacher = useMemo(
    () => (level === null || at === null || onPutAway === undefined ? null : { position: at, level, onPutAway }),
    [level, at, onPutAway],
  )
  const ringed = useMemo(() => (piece === null ? NOTHING : stickersOfPiece(position, piece)), [piece, position])
  return { fromTeacher, ringed }
}

const NOTHING: readonly number[] = []
