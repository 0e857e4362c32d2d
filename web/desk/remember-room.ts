/** The room that this tab was watching, so that a page loaded anew in the middle of a lesson is back where it was. */

import type { RoomId } from '../../engine/contest/ids.ts'

const KEPT_AS = 'fairturn.desk-room'

/** @param id null forgets it */
export function rememberRoom(id: RoomId | null): void {
  try {
    if (id === null) window.sessionStorage.removeItem(KEPT_AS)
    else window.sessionStorage.setItem(KEPT_AS, id)
  } catch {
    // Without storage a page loaded anew shows the list of rooms.
  }
}

export function rememberedRoom(): RoomId | null {
  try {
    return window.sessionStorage.getItem(KEPT_AS) as RoomId | null
  } catch {
    return null
  }
}
