/** Whether a box has to scroll, so that it can take the focus of a keyboard exactly then; its end is brought into view. */

import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

/** @returns what the box is to be given, and whether it scrolls; the newest words stand at the end of it */
export function useScrolls<Box extends HTMLElement>(): readonly [RefObject<Box | null>, boolean] {
  const box = useRef<Box>(null)
  const [scrolls, setScrolls] = useState(false)
  useLayoutEffect(() => {
    const element = box.current
    if (element === null) return
    let heights = ''
    const watch = new ResizeObserver(() => {
      const { scrollHeight, clientHeight } = element
      setScrolls(scrollHeight > clientHeight + 1)
      if (heights !== `${scrollHeight} ${clientHeight}`) element.scrollTo({ top: scrollHeight })
      heights = `${scrollHeight} ${clientHeight}`
    })
    // Its own size follows the page, that of what is in it the words.
    for (const each of [element, ...element.children]) watch.observe(each)
    return () => watch.disconnect()
  }, [])
  return [box, scrolls]
}
