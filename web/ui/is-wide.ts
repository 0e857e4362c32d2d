/** Whether there is room for a column beside what a screen is about. The same width as in the style sheets of the desk. */

import { useSyncExternalStore } from 'react'

const WIDE = '(min-width: 64.01rem)'

export function useIsWide(): boolean {
  return useSyncExternalStore(
    (onChange) => {
      const media = window.matchMedia(WIDE)
      media.addEventListener('change', onChange)
      return () => media.removeEventListener('change', onChange)
    },
    () => window.matchMedia(WIDE).matches,
  )
}
