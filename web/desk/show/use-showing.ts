/** Shows the class what the desk has in hand: whole when it is another thing, and else how far it has gone. */

import { useEffect, useRef } from 'react'
import type { ShowingAt, Shown } from '../../../engine/wire/shown.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import type { RoomActs } from '../desk-acts.ts'

/**
 * @param shown another object means another thing to show
 * @returns whether the class sees it now, and what begins and ends that
 */
export function useShowing(
  view: Pick<DeskView, 'showing'>,
  acts: Pick<RoomActs, 'show' | 'showAt'>,
  shown: Shown | null,
  at: ShowingAt,
) {
  const isLive = view.showing !== null && shown !== null && view.showing.shown.kind === shown.kind
  const sent = useRef<Shown | null>(null)
  useEffect(() => {
    if (!isLive || shown === null) {
      sent.current = null
      return
    }
    if (sent.current === null) {
      // Begun just now, or found as it was after a reload.
      sent.current = shown
      return
    }
    if (sent.current !== shown) acts.show(shown, at)
    else acts.showAt(at)
    sent.current = shown
  }, [isLive, shown, at, acts])
  return {
    isLive,
    begin: () => {
      if (shown !== null) acts.show(shown, at)
    },
    end: () => acts.show(null),
  }
}
