/**
 * What this desk shows its class. The server does not keep it: started again, it has forgotten, and the class would look at
 * nothing. So the desk that showed it says it once more when it is back, unless it was stopped there or at another desk: a
 * server that has stopped a showing counts it, one that has forgotten it counts none.
 */

import type { RoomId } from '../../engine/contest/ids.ts'
import type { MessageName, Sent } from '../../engine/wire/from-browser.ts'
import { goesOnWith } from '../../engine/wire/goes-on-with.ts'
import type { ShowingAt, Shown } from '../../engine/wire/shown.ts'
import type { DeskView } from '../../engine/wire/views.ts'

type Parts = {
  /** The watched room. */
  readonly view: () => DeskView | null
  readonly setView: (view: DeskView) => void
  /** @returns whether the server granted it */
  readonly say: <Name extends MessageName>(name: Name, message: Sent<Name>) => Promise<boolean>
}

export type DeskShowing = {
  /** Shows the class something, or nothing any more. */
  show(shown: Shown | null, at?: ShowingAt): void
  /** How far it goes; shown here at once, and sent as often as a screen can follow. */
  showAt(at: ShowingAt): void
  /** The connection is new: what is shown may be forgotten there. */
  onConnected(): void
  /** To be called with each whole view from the server. @returns the view as the desk has it */
  onView(view: DeskView): DeskView
}

/** Before the first turn, at the first way, nothing pointed at. */
const SHOWING_BEGINS: ShowingAt = { at: 0, chosen: 0, pointer: null }

/** The showing goes out at most ten times a second, the last of it always. */
const SHOWING_EVERY_MS = 100

type OwnShowing = {
  readonly roomId: RoomId
  readonly shown: Shown
  readonly at: ShowingAt
  /** The server has taken it: the class sees it, or did before a restart. */
  readonly isSeen: boolean
}

export function deskShowing({ view: viewNow, setView, say }: Parts): DeskShowing {
  /** What this desk shows, in which room; null when it shows nothing. */
  let own: OwnShowing | null = null
  /** Whole showings on their way: views that come meanwhile may be older. */
  let nOnTheirWay = 0
  /** No view has come since the connection is there. */
  let cameBack = false
  let next: { readonly roomId: RoomId; readonly at: ShowingAt } | null = null

  async function sayWhole(roomId: RoomId, shown: Shown | null, at: ShowingAt): Promise<void> {
    nOnTheirWay++
    const granted = await say('show:whole', { roomId, shown, at })
    nOnTheirWay--
    if (granted && shown !== null && own?.roomId === roomId) own = { ...own, isSeen: true }
  }

  function sendAt(roomId: RoomId, at: ShowingAt): void {
    const isOnItsWay = next !== null
    next = { roomId, at }
    if (isOnItsWay) return
    setTimeout(() => {
      const last = next
      next = null
      if (last !== null) void say('show:at', last)
    }, SHOWING_EVERY_MS)
  }

  return {
    show(shown, at = SHOWING_BEGINS) {
      const view = viewNow()
      if (view === null) return
      // What was on its way says how far the last one had gone.
      next = null
      const roomId = view.room.id
      const before = own?.roomId === roomId ? own : null
      if (before === null) cameBack = false
      own = shown === null ? null : { roomId, shown, at, isSeen: before?.isSeen ?? false }
      setView(shown === null ? { ...view, showing: null } : shows(view, shown, at))
      void sayWhole(roomId, shown, at)
    },

    showAt(at) {
      const view = viewNow()
      if (view === null || view.showing === null) return
      if (own?.roomId === view.room.id) own = { ...own, at }
      setView({ ...view, showing: { ...view.showing, at } })
      sendAt(view.room.id, at)
    },

    onConnected() {
      cameBack = true
    },

    onView(view) {
      if (own?.roomId !== view.room.id) return view
      const isFirst = cameBack
      cameBack = false
      const { showing, nShowings } = view
      const { roomId, shown, at, isSeen } = own
      const isOwn = showing !== null && isSame(showing.shown, shown)
      // Forgotten, or seen by the class as it was when the connection was lost. What never came through is not shown later.
      if (isFirst && (isOwn ? !isAsFar(showing, own) : showing === null && nShowings === 0 && isSeen)) {
        void sayWhole(roomId, shown, at)
        return shows(view, shown, at)
      }
      if (isOwn) {
        own = { ...own, isSeen: true }
        return view
      }
      // The view was sent before the server heard of it.
      if (nOnTheirWay > 0) return shows(view, shown, at)
      // Refused; or stopped, or something else is shown, at another desk.
      own = null
      return view
    },
  }
}

/** @returns the view when the class sees this */
function shows(view: DeskView, shown: Shown, at: ShowingAt): DeskView {
  const { showing } = view
  const goesOn = showing !== null && goesOnWith(showing.shown, shown)
  return { ...view, showing: { version: (showing?.version ?? 0) + (goesOn ? 0 : 1), shown, at } }
}

/** The same cube, however far it is turned, or the same review. */
function isSame(one: Shown, other: Shown): boolean {
  return goesOnWith(one, other) || written(one) === written(other)
}

function isAsFar(one: { shown: Shown; at: ShowingAt }, other: { shown: Shown; at: ShowingAt }): boolean {
  return written([one.shown, one.at]) === written([other.shown, other.at])
}

/** As text, whatever order the keys are in: the server writes them in its own. */
function written(value: unknown): string {
  return JSON.stringify(value, (_key, each: unknown) =>
    typeof each === 'object' && each !== null && !Array.isArray(each)
      ? Object.fromEntries(Object.entries(each).sort(([a], [b]) => (a < b ? -1 : 1)))
      : each,
  )
}
