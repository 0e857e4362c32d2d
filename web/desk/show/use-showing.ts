/** Shows the class what the desk has in hand: whole when it is another thing, and else how far it has gone. */

import { useEffect, useRef, useState } from 'react'
import type { ShowingAt, Shown } from '../../../engine/wire/shown.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import type { RoomActs } from '../desk-acts.ts'

/**
 * @param shown another object means another thing to show
 * @param isTakenUp the class saw it already when this began
 * @returns whether the class sees it now, and what begins and ends that
 */
export function useShowing(
  view: Pick<DeskView, 'showing'>,
  acts: Pick<RoomActs, 'show' | 'showAt'>,
  shown: Shown | null,
  at: ShowingAt,
  isTakenUp: boolean,
) {
  const [isOurs, setOurs] = useState(isTakenUp)
  const isNothingShown = view.showing === null
  // Stopped here or at another desk: what is shown next is not this one.
  useEffect(() => {
    if (isNothingShown) setOurs(false)
  }, [isNothingShown])
  const isLive = isOurs && view.showing !== null && shown !== null && view.showing.shown.kind === shown.kind
  const sent = useRef<Shown | null>(null)
  useEffect(() => {
    if (!isLive || shown === null) {
      sent.current = null
      return
    }
    if (sent.current === null) {
      // Begun just now, or taken up as the class sees it.
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
      if (shown === null) return
      acts.show(shown, at)
      setOurs(true)
    },
    end: () => acts.show(null),
  }
}
