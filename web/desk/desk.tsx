/** The route of the desk: signed out, its first pages, or a room. Which of them, the browser's history says. */

import { useEffect } from 'react'
import { useTranslation } from 'react-i18next'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import { beginDesk, deskActs, useDesk } from '../live/desk-live.ts'
import type { OpenedTakeHome, TakeHomeWish } from '../live/open-take-home.ts'
import { useServerNow } from '../live/server-clock.ts'
import { AwayLine } from '../parts/away-line.tsx'
import { Waiting } from '../parts/waiting.tsx'
import { FaultBoundary } from '../ui/fault-boundary.tsx'
import type { RoomActs } from './desk-acts.ts'
import { DeskHomeScreen } from './desk-home-screen.tsx'
import { DeskRoomScreen } from './desk-room-screen.tsx'
import { isInRoom, ROOMS } from './place/desk-place.ts'
import { places, useDeskEntry } from './place/use-desk-place.ts'
import { SignedOut } from './signed-out.tsx'

const roomActs: RoomActs = {
  ...deskActs,
  leaveRoom: () => places.leaveTo(ROOMS),
  newTakeHome,
}

/** @returns whether there is a room now */
async function openRoom(): Promise<boolean> {
  const roomId = await deskActs.openRoom()
  // A plan that is being changed has left its changes in its place.
  if (roomId !== null) places.goTo({ kind: 'room', roomId }, { asks: false })
  return roomId !== null
}

async function newTakeHome(wish: TakeHomeWish): Promise<OpenedTakeHome> {
  const opened = await deskActs.openTakeHome(wish)
  if ('roomId' in opened) places.goTo({ kind: 'room', roomId: opened.roomId })
  return opened
}

const HOME_ACTS = {
  keepPlan: deskActs.keepPlan,
  removePlan: deskActs.removePlan,
  keepRoster: deskActs.keepRoster,
  removeRoster: deskActs.removeRoster,
  openRoom,
  newTakeHome,
  /** Opens a room that follows the plan. */
  followPlan: async (plan: LessonPlan) => {
    if (await openRoom()) deskActs.followPlan(plan)
  },
}

export default function Desk() {
  const { t } = useTranslation()
  const { status, home, shelf, view, gone, refusal, outOfDate } = useDesk()
  const { place, number } = useDeskEntry()
  const nowMs = useServerNow()
  useEffect(beginDesk, [])

  const roomId = isInRoom(place) ? place.roomId : null
  useEffect(() => {
    if (roomId === null) deskActs.stopWatching()
    else deskActs.watchRoom(roomId)
  }, [roomId])

  const isHere = roomId !== null && view?.room.id === roomId
  // Closed here, in another tab, or long ago: there is nothing more to do there, on whichever of its pages the desk is.
  const closed = isHere && view.room.closed ? place : null
  const isGone = roomId !== null && gone === roomId
  useEffect(() => {
    if (closed !== null) places.leaveTo(ROOMS)
    if (isGone) places.put(ROOMS)
  }, [closed, isGone])

  if (status === 'signed-out') return <SignedOut reason={null} />
  return (
    <>
      {isHere && isInRoom(place) ? (
        <FaultBoundary key={view.room.id}>
          <DeskRoomScreen place={place} view={view} shelf={shelf} nowMs={nowMs} refusal={refusal} acts={roomActs} />
        </FaultBoundary>
      ) : home !== null && !isInRoom(place) ? (
        <DeskHomeScreen
          place={place}
          placeKey={number}
          home={home}
          shelf={shelf}
          nowMs={nowMs}
          refusal={refusal}
          acts={HOME_ACTS}
        />
      ) : (
        <Waiting words={t('common:connecting')} />
      )}
      <AwayLine away={status === 'away'} outOfDate={outOfDate} />
    </>
  )
}
