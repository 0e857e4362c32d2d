/** The route of the desk: signed out, the list of rooms, or the room that is watched. */

import { useEffect } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoomId } from '../../engine/contest/ids.ts'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import { beginDesk, deskActs, useDesk } from '../live/desk-live.ts'
import { useServerNow } from '../live/server-clock.ts'
import { AwayLine } from '../parts/away-line.tsx'
import { Waiting } from '../parts/waiting.tsx'
import { FaultBoundary } from '../ui/fault-boundary.tsx'
import type { RoomActs } from './desk-acts.ts'
import { DeskHomeScreen } from './desk-home-screen.tsx'
import { DeskRoomScreen } from './desk-room-screen.tsx'
import { rememberedRoom, rememberRoom } from './remember-room.ts'
import { SignedOut } from './signed-out.tsx'

const roomActs: RoomActs = {
  ...deskActs,
  stopWatching: () => {
    rememberRoom(null)
    deskActs.stopWatching()
  },
  closeRoom: () => {
    rememberRoom(null)
    deskActs.closeRoom()
  },
}

function watchRoom(id: RoomId): void {
  rememberRoom(id)
  deskActs.watchRoom(id)
}

async function openRoom(): Promise<void> {
  rememberRoom(await deskActs.openRoom())
}

const SHELF_ACTS = {
  keepPlan: deskActs.keepPlan,
  removePlan: deskActs.removePlan,
  keepRoster: deskActs.keepRoster,
  removeRoster: deskActs.removeRoster,
  /** Opens a room that follows the plan. */
  followPlan: async (plan: LessonPlan) => {
    await openRoom()
    deskActs.followPlan(plan)
  },
}

export default function Desk() {
  const { t } = useTranslation()
  const { status, home, shelf, view, refusal, outOfDate } = useDesk()
  const nowMs = useServerNow()
  useEffect(beginDesk, [])

  const remembered = rememberedRoom()
  const comesBack =
    view === null && refusal === null && home?.rooms.some((room) => room.id === remembered) ? remembered : null
  useEffect(() => {
    if (comesBack !== null) deskActs.watchRoom(comesBack)
  }, [comesBack])

  // Closed in another tab: there is nothing more to do here.
  const isClosed = view?.room.closed === true
  useEffect(() => {
    if (isClosed) roomActs.stopWatching()
  }, [isClosed])

  if (status === 'signed-out') return <SignedOut reason={null} />
  return (
    <>
      {view !== null ? (
        <FaultBoundary key={view.room.id}>
          <DeskRoomScreen view={view} shelf={shelf} nowMs={nowMs} refusal={refusal} acts={roomActs} />
        </FaultBoundary>
      ) : home !== null && comesBack === null ? (
        <DeskHomeScreen
          home={home}
          shelf={shelf}
          refusal={refusal}
          openRoom={openRoom}
          watchRoom={watchRoom}
          shelfActs={SHELF_ACTS}
        />
      ) : (
        <Waiting words={t('common:connecting')} />
      )}
      <AwayLine away={status === 'away'} outOfDate={outOfDate} />
    </>
  )
}
