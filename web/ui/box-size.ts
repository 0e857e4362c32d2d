/** The size of an element, followed as it changes, for drawings that are laid out in whole pixels. */

import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

export type BoxSize = { readonly widthPx: number; readonly heightPx: number }

export function useBoxSize<Box extends HTMLElement>(): readonly [RefObject<Box | null>, BoxSize | null] {
  const box = useRef<Box>(null)
  const [size, setSize] = useState<BoxSize | null>(null)
  useLayoutEffect(() => {
    const element = box.current
    if (element === null) return
    const measure = () => {
      const { clientWidth, clientHeight } = element
      setSize((last) =>
        last?.widthPx === clientWidth && last.heightPx === clientHeight
          ? last
          : { widthPx: clientWidth, heightPx: clientHeight },
      )
    }
    measure()
    const watch = new ResizeObserver(measure)
    watch.observe(element)
    return () => watch.disconnect()
  }, [])
  return [box, size]
}
