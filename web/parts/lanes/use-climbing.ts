/** Slides rows from where they were to where they are, after the page has put them there (first, last, invert, play). */

import { type RefCallback, useLayoutEffect, useRef } from 'react'
import { wantsStillness } from '../../ui/reduced-motion.ts'
import { CLIMB_MS } from './use-shown-order.ts'

const EASE_SETTLE = 'cubic-bezier(.2, .8, .2, 1)'

/** @returns gives each row its ref; rows are of equal height, so no place has to be measured */
export function useClimbing(order: readonly string[], rowPx: number): (id: string) => RefCallback<HTMLElement> {
  const rows = useRef(new Map<string, HTMLElement>())
  const places = useRef(new Map<string, number>())

  useLayoutEffect(() => {
    const before = places.current
    places.current = new Map(order.map((id, index) => [id, index]))
    if (wantsStillness()) return
    for (const [index, id] of order.entries()) {
      const was = before.get(id)
      if (was === undefined || was === index) continue
      const fromPx = (was - index) * rowPx
      rows.current.get(id)?.animate([{ transform: `translateY(${fromPx}px)` }, { transform: 'none' }], {
        duration: CLIMB_MS,
        easing: EASE_SETTLE,
      })
    }
  }, [order, rowPx])

  return (id) => (row) => {
    if (row === null) rows.current.delete(id)
    else rows.current.set(id, row)
  }
}
