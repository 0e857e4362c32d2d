/** The route of the desk: signed out, the list of rooms, or the room that is watched. */

import { useEffect } from 'react'
import { useTranslation } from 'react-i18next'
import { beginDesk, deskActs, useDesk } from '../live/desk-live.ts'
import { useServerNow } from '../live/server-clock.ts'
import { AwayLine } from '../parts/away-line.tsx'
import { Waiting } from '../parts/waiting.tsx'
import { FaultBoundary } from '../ui/fault-boundary.tsx'
import { DeskHomeScreen } from './desk-home-screen.tsx'
import { DeskRoomScreen } from './desk-room-screen.tsx'
import { SignedOut } from './signed-out.tsx'

export default function Desk() {
  const { t } = useTranslation()
  const { status, home, view, refusal, outOfDate } = useDesk()
  const nowMs = useServerNow()
  useEffect(beginDesk, [])

  if (status === 'signed-out') return <SignedOut reason={null} />
  return (
    <>
      {view !== null ? (
        <FaultBoundary key={view.room.id}>
          <DeskRoomScreen view={view} nowMs={nowMs} refusal={refusal} acts={deskActs} />
        </FaultBoundary>
      ) : home !== null ? (
        <DeskHomeScreen home={home} refusal={refusal} openRoom={deskActs.openRoom} watchRoom={deskActs.watchRoom} />
      ) : (
        <Waiting words={t('common:connecting')} />
      )}
      <AwayLine away={status === 'away'} outOfDate={outOfDate} />
    </>
  )
}
