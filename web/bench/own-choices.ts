/** What a child has chosen for the round: which of the rounds at home, which cube, and whether the real one is ready. */

import { useCallback, useEffect } from 'react'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { BenchView } from '../../engine/wire/views.ts'
import type { BenchLive, LocalTry } from '../live/bench-live.ts'
import { useKept } from './kept-value.ts'
import { usePickedRound } from './picked-round.ts'

export type OwnChoices = {
  /** In a take-home room: the round that was picked from the list; null while the list is open. */
  readonly pickedRound: string | null
  /** Where a round leaves it open; null until it is chosen. */
  readonly cube: 'own' | 'screen' | null
  /** Whether the own cube shows the start; null: as the server has it. */
  readonly ready: boolean | null
}

/**
 * @param askForRound called with the picked round where the server is at another one: Back or Forward of the browser has led
 *   there, or the server was started again and knows of rounds with turns only
 * @returns the choices for its round, and what changes some of them
 */
export function useOwnChoices(
  { view, status }: Pick<BenchLive, 'view' | 'status'>,
  askForRound: (round: string) => void,
): readonly [OwnChoices, (change: Partial<OwnChoices>) => void] {
  const seat = view?.me.seatId ?? ''
  const [pickedRound, pickRound] = usePickedRound(seat)
  const isElsewhere = status === 'seated' && view !== null && isAtAnother(view, pickedRound)
  useEffect(() => {
    if (isElsewhere && pickedRound !== null) askForRound(pickedRound)
  }, [isElsewhere, pickedRound, askForRound])
  const [hand, keepHand] = useKept('hand', `${seat}.${view?.round?.id ?? ''}`, readHand)
  const change = useCallback(
    ({ pickedRound: picked, ...other }: Partial<OwnChoices>) => {
      if (picked !== undefined) pickRound(picked)
      if (Object.keys(other).length > 0) keepHand({ ...hand, ...other })
    },
    [hand, keepHand, pickRound],
  )
  return [{ pickedRound, ...hand }, change]
}

function isAtAnother({ round, rounds }: BenchView, picked: string | null): boolean {
  return picked !== round?.id && rounds.some(({ id }) => id === picked)
}

/** @returns which cube this child plays the round with; null while it is open to choose */
export function cubeInHand(
  settings: Pick<RoundSettings, 'cube'>,
  own: OwnChoices,
  { me }: Pick<BenchView, 'me'>,
  mine: Pick<LocalTry, 'steps'> | null,
): 'own' | 'screen' | null {
  if (settings.cube === 'screen') return 'screen'
  if (settings.cube === 'real') return 'own'
  if (own.cube !== null) return own.cube
  if (me.ready) return 'own'
  return mine !== null && mine.steps.length > 0 ? 'screen' : null
}

/** @returns whether the own cube shows the start, as far as is known; who has sent a solution has had it there */
export function isCubeReady(
  own: OwnChoices,
  { me }: Pick<BenchView, 'me'>,
  mine: Pick<LocalTry, 'steps'> | null,
): boolean {
  return own.ready ?? (me.ready || (mine !== null && mine.steps.length > 0))
}

/** Reads what was kept of a round; what makes no sense counts as not chosen. */
export function readHand(kept: unknown): Pick<OwnChoices, 'cube' | 'ready'> {
  const { cube, ready } = (typeof kept === 'object' && kept !== null ? kept : {}) as Partial<OwnChoices>
  return {
    cube: cube === 'own' || cube === 'screen' ? cube : null,
    ready: typeof ready === 'boolean' ? ready : null,
  }
}
