/** The desk's place in this browser, for its pages. */

import { useEffect, useState, useSyncExternalStore } from 'react'
import { type DeskEntry, placeHistory } from './place-history.ts'

/** Made when the desk's code is loaded, which is when its address is open. */
export const places = placeHistory(window)

export function useDeskEntry(): DeskEntry {
  return useSyncExternalStore(places.subscribe, places.entry)
}

/**
 * Holds the desk while there is unsaved work: its own Back, the browser's, and another page of the desk are asked about
 * first. Closing or reloading the page is asked about by the browser, in its own words.
 */
export function useAskToLeave(hasChanged: boolean) {
  // In a list of one, for React calls a function that is put in as it stands.
  const [goOn, setGoOn] = useState<readonly [() => void] | null>(null)
  useEffect(() => {
    if (!hasChanged) return
    const letGo = places.hold((leaves) => setGoOn([leaves]))
    const warn = (event: BeforeUnloadEvent) => event.preventDefault()
    window.addEventListener('beforeunload', warn)
    return () => {
      letGo()
      window.removeEventListener('beforeunload', warn)
    }
  }, [hasChanged])
  return {
    /** Whether the question stands. */
    asks: goOn !== null,
    leave: () => goOn?.[0](),
    stay: () => setGoOn(null),
  }
}
