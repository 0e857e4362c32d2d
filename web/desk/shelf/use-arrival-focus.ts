/** Takes the focus to a part of the page that has taken the place of another, so that keyboard and screen reader follow. */

import { type RefObject, useEffect, useRef } from 'react'

/** @param arrives false where the page begins with this part, and the focus is left alone */
export function useArrivalFocus<Part extends HTMLElement>(arrives = true): RefObject<Part | null> {
  const part = useRef<Part>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: only on arriving.
  useEffect(() => {
    if (!arrives) return
    // The browser would scroll the part to the top edge, and cut the head of the page in two.
    part.current?.focus({ preventScroll: true })
    window.scrollTo(0, 0)
  }, [])
  return part
}
