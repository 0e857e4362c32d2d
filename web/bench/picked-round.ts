/**
 * Which round of a take-home room was picked from the list: a mark on the entry of the browser's history. So Back brings the
 * list, Forward the round, and loading the page again changes nothing.
 */

import { useCallback, useEffect, useState } from 'react'

/** @param seat whose round it is: what another child picked on this device counts for nothing @returns null: the list is open */
export function pickedOnEntry(state: unknown, seat: string): string | null {
  const picked = typeof state === 'object' && state !== null ? (state as Partial<Record<string, unknown>>)[MARK] : null
  if (typeof picked !== 'object' || picked === null) return null
  const { seat: whose, round } = picked as { readonly seat?: unknown; readonly round?: unknown }
  return whose === seat && typeof round === 'string' ? round : null
}

/** @returns the round that is picked, and what picks one, or with null opens the list again */
export function usePickedRound(seat: string): readonly [string | null, (picked: string | null) => void] {
  const [entry, setEntry] = useState<unknown>(() => history.state)
  useEffect(() => {
    const onLeaf = ({ state }: PopStateEvent) => setEntry(state)
    window.addEventListener('popstate', onLeaf)
    return () => window.removeEventListener('popstate', onLeaf)
  }, [])
  const pick = useCallback(
    (round: string | null) => {
      const isOnList = pickedOnEntry(history.state, seat) === null
      if (round === null) {
        // Below a round lies the list from which it was picked.
        if (!isOnList) history.back()
        return
      }
      const next = { [MARK]: { seat, round } }
      // The server was at another round than the entry says: the list stood there, and its entry becomes the round.
      if (isOnList) history.pushState(next, '')
      else history.replaceState(next, '')
      setEntry(next)
    },
    [seat],
  )
  return [pickedOnEntry(entry, seat), pick]
}

const MARK = 'fairturn.round'
