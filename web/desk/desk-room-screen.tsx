/** The room at the desk: planning a round, watching it, and looking at how it ended. */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { SeatId } from '../../engine/contest/ids.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { DeskView } from '../../engine/wire/views.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import { Button } from '../ui/button.tsx'
import { classNames } from '../ui/class-names.ts'
import { Notice } from '../ui/notice.tsx'
import { Sheet } from '../ui/sheet.tsx'
import { studentStates } from './class/class-state.ts'
import { StudentSheet } from './class/student-sheet.tsx'
import type { RoomActs } from './desk-acts.ts'
import styles from './desk-room-screen.module.css'
import { PlanRound } from './plan/plan-round.tsx'
import { RoomHead } from './room-head.tsx'
import { roomPhase } from './room-phase.ts'
import { CloseRoom } from './side/close-room.tsx'
import { LetIn } from './side/let-in.tsx'
import { PretendClass } from './side/pretend-class.tsx'
import { WhoIsHere } from './side/who-is-here.tsx'
import { WatchRound } from './watch-round.tsx'

type DeskRoomScreenProps = { view: DeskView; nowMs: number; refusal: Refusal | null; acts: RoomActs }

export function DeskRoomScreen({ view, nowMs, refusal, acts }: DeskRoomScreenProps) {
  const { t } = useTranslation()
  const [opensSettings, setOpensSettings] = useState(false)
  const [openSeat, setOpenSeat] = useState<SeatId | null>(null)
  const [showsRoom, setShowsRoom] = useState(false)
  const phase = roomPhase(view, opensSettings)
  const student = openSeat === null ? undefined : studentStates(view).find(({ seat }) => seat.seatId === openSeat)
  return (
    <div className={classNames(styles.desk, phase !== 'planning' && styles.watching)}>
      <RoomHead
        view={view}
        phase={phase}
        nowMs={nowMs}
        acts={acts}
        onPlan={setOpensSettings}
        onShowRoom={() => setShowsRoom(true)}
      />
      <Notice>{view.savingPaused && t('desk:room.savingPaused')}</Notice>
      <Notice>
        {refusal !== null && (
          <>
            {refusalWords(t, refusal)}
            <Button look="quiet" onClick={acts.dismiss}>
              {t('desk:room.dismiss')}
            </Button>
          </>
        )}
      </Notice>
      {phase === 'planning' ? (
        <main className={styles.planning}>
          <PlanRound settings={view.settings} onChange={acts.set} />
          <aside className={styles.side}>
            <LetIn view={view} acts={acts} />
            <WhoIsHere seats={view.seats} onOpen={setOpenSeat} />
            <PretendClass view={view} onSeat={acts.pretendClass} />
            <CloseRoom code={view.room.code} roundIsOn={false} onClose={acts.closeRoom} />
          </aside>
        </main>
      ) : (
        <WatchRound view={view} acts={acts} onOpen={setOpenSeat} />
      )}
      {student !== undefined && (
        <StudentSheet
          key={student.seat.seatId}
          student={student}
          otherNames={view.seats.filter(({ seatId }) => seatId !== openSeat).map(({ name }) => name)}
          onRename={acts.renameSeat}
          onRemove={acts.removeSeat}
          onClose={() => setOpenSeat(null)}
        />
      )}
      {showsRoom && (
        <Sheet title={t('desk:side.title')} onClose={() => setShowsRoom(false)}>
          <LetIn view={view} acts={acts} />
          {phase === 'ended' && <PretendClass view={view} onSeat={acts.pretendClass} />}
          <CloseRoom code={view.room.code} roundIsOn={phase === 'playing'} onClose={acts.closeRoom} />
        </Sheet>
      )}
    </div>
  )
}
