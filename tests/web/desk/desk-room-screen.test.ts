/** What stands on a room's pages at the desk, whichever of them is open. Rules DE: tests/RULES.md. */

import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import type { RoomId } from '../../../engine/contest/ids.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import type { RoomPlace } from '../../../web/desk/place/desk-place.ts'
import { inEnglish } from '../english.ts'
import { aBrowser } from './place/a-browser.ts'

// The desk looks at the browser's history as soon as its code is there.
beforeEach(() => vi.stubGlobal('window', aBrowser().window))
afterEach(() => vi.unstubAllGlobals())

const ROOM = 'room-1' as RoomId
const VIEW = {
  room: { id: ROOM, deadlineMs: null },
  rounds: [],
  round: null,
  seats: [],
  cells: [],
  lanes: [],
  knocks: [],
  showing: null,
} as unknown as DeskView

test('[DE18] a refusal is seen beside a review, too', async () => {
  const t = await inEnglish()
  const { DeskRoomScreen } = await import('../../../web/desk/desk-room-screen.tsx')
  const place = { kind: 'review', roomId: ROOM } as const satisfies RoomPlace
  const refusal = { code: 'server/going-away' } as const
  const shelf = { plans: [], rosters: [] }
  const page = renderToStaticMarkup(
    createElement(DeskRoomScreen, { place, view: VIEW, shelf, nowMs: 0, refusal, acts: {} as never }),
  )
  expect(page).toContain(t('refusals:server/going-away'))
})
