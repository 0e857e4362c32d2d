/** A room at the desk: planning the next round, watching the one that is on, showing the class something, looking back. */

import { useLayoutEffect, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundId, SeatId } from '../../engine/contest/ids.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { DeskView, Shelf } from '../../engine/wire/views.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import { Button } from '../ui/button.tsx'
import { classNames } from '../ui/class-names.ts'
import { Notice } from '../ui/notice.tsx'
import { Sheet } from '../ui/sheet.tsx'
import type { RoomActs } from './desk-acts.ts'
import styles from './desk-room-screen.module.css'
import type { RoomPlace } from './place/desk-place.ts'
import { places } from './place/use-desk-place.ts'
import { PlanRound } from './plan/plan-round.tsx'
import { LessonLine } from './plans/lesson-line.tsx'
import { RoomHead } from './room-head.tsx'
import { nextPart, roomPhase } from './room-phase.ts'
import { Demonstrate } from './show/demonstrate.tsx'
import type { GivenTurns } from './show/demonstration-source.ts'
import { Review } from './show/review.tsx'
import { ChoosePlan } from './side/choose-plan.tsx'
import { CloseRoom } from './side/close-room.tsx'
import { DoorSettings } from './side/door-settings.tsx'
import { Knocks } from './side/knocks.tsx'
import { LetIn } from './side/let-in.tsx'
import { PretendClass } from './side/pretend-class.tsx'
import { WhoIsHere } from './side/who-is-here.tsx'
import { TakeHomeRounds } from './take-home/take-home-rounds.tsx'
import { StudentSheet } from './wall/student-sheet.tsx'
import { studentStates } from './wall/wall-students.ts'
import { WatchRound } from './watch-round.tsx'

type DeskRoomScreenProps = {
  readonly place: RoomPlace
  readonly view: DeskView
  readonly shelf: Shelf
  readonly nowMs: number
  readonly refusal: Refusal | null
  readonly acts: RoomActs
}

export function DeskRoomScreen({ place, view, shelf, nowMs, refusal, acts }: DeskRoomScreenProps) {
  const { t } = useTranslation()
  const [opensSettings, setOpensSettings] = useState(false)
  const [openSeat, setOpenSeat] = useState<SeatId | null>(null)
  const [showsRoom, setShowsRoom] = useState(false)
  // Turns of a student, to be shown: not in the history, which a browser writes down.
  const [given, setGiven] = useState<GivenTurns | null>(null)
  const phase = roomPhase(view, opensSettings)
  const isTakeHome = view.room.deadlineMs !== null
  // Another screen begins at its top, wherever the last one was scrolled to.
  const screen = place.kind === 'room' ? phase : place.kind
  // biome-ignore lint/correctness/useExhaustiveDependencies: another screen is why it scrolls.
  useLayoutEffect(() => {
    window.scrollTo(0, 0)
  }, [screen])
  const student =
    openSeat === null ? undefined : studentStates(view, nowMs).find(({ seat }) => seat.seatId === openSeat)
  // What the plan has now stands in the bar, as the next thing to press.
  const inTheBar = phase === 'playing' || isTakeHome ? null : nextPart(view)
  const hasEnded = view.rounds.some((each) => each.phase === 'ended')
  const open = (kind: 'demonstrate' | 'review', turns: GivenTurns | null = null) => {
    setGiven(turns)
    places.goTo({ kind, roomId: view.room.id })
  }
  const back = () => places.leaveTo({ kind: 'room', roomId: view.room.id })
  const tools = (
    <>
      {inTheBar !== 'demonstrate' && (
        <Button look="quiet" icon="projector" onClick={() => open('demonstrate')}>
          {t('desk:lesson.demonstrate')}
        </Button>
      )}
      {hasEnded && inTheBar !== 'review' && (
        <Button look="quiet" icon="again" onClick={() => open('review')}>
          {t('desk:lesson.review')}
        </Button>
      )}
    </>
  )
  const refused = (
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
  )
  if (place.kind !== 'room') {
    return (
      <div className={styles.tool}>
        <Knocks knocks={view.knocks} onAnswer={acts.answerKnock} />
        {refused}
        {place.kind === 'demonstrate' ? (
          <Demonstrate view={view} acts={acts} given={given} onBack={back} />
        ) : (
          <Review view={view} acts={acts} onBack={back} />
        )}
      </div>
    )
  }
  const door = <DoorSettings view={view} rosters={shelf.rosters} acts={acts} />
  return (
    <div className={classNames(styles.desk, phase !== 'planning' && styles.watching)}>
      <RoomHead
        view={view}
        phase={phase}
        nowMs={nowMs}
        acts={acts}
        onPlan={setOpensSettings}
        onPart={open}
        onShowRoom={() => setShowsRoom(true)}
      />
      <Knocks knocks={view.knocks} onAnswer={acts.answerKnock} />
      {view.plan !== null && !isTakeHome && (
        <div className={styles.lesson}>
          <LessonLine
            plan={view.plan.plan}
            at={view.plan.at}
            onGo={(at) => {
              acts.goToPart(at)
              const part = view.plan?.plan.parts[at]
              if (part === undefined || phase === 'playing') return
              setOpensSettings(part.kind === 'round')
              if (part.kind !== 'round') open(part.kind === 'example' ? 'demonstrate' : 'review')
            }}
          />
        </div>
      )}
      {isTakeHome && <TakeHomeRounds view={view} onLookAt={(id: RoundId) => acts.lookAtRound(id)} />}
      <Notice>{view.savingPaused && t('desk:room.savingPaused')}</Notice>
      {refused}
      <Notice>
        {view.showing !== null && (
          <>
            {t('desk:lesson.classSees')}
            <Button look="quiet" onClick={() => acts.show(null)}>
              {t('desk:lesson.stopShowing')}
            </Button>
          </>
        )}
      </Notice>
      {phase === 'planning' ? (
        <main className={styles.planning}>
          <PlanRound settings={view.settings} onChange={acts.set} />
          <aside className={styles.side}>
            <LetIn view={view} acts={acts} />
            {(inTheBar !== 'demonstrate' || hasEnded) && <div className={styles.tools}>{tools}</div>}
            {door}
            <ChoosePlan view={view} nowMs={nowMs} plans={shelf.plans} acts={acts} />
            <WhoIsHere seats={view.seats} onOpen={setOpenSeat} />
            <PretendClass view={view} onSeat={acts.pretendClass} />
            <CloseRoom code={view.room.code} roundIsOn={false} onClose={acts.closeRoom} />
          </aside>
        </main>
      ) : (
        <WatchRound
          view={view}
          nowMs={nowMs}
          acts={acts}
          tools={tools}
          onSeat={setOpenSeat}
          onDemonstrate={(name, { turns }) => open('demonstrate', { name, turns })}
        />
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
          {door}
          {phase === 'ended' && <PretendClass view={view} onSeat={acts.pretendClass} />}
          <CloseRoom code={view.room.code} roundIsOn={phase === 'playing' && !isTakeHome} onClose={acts.closeRoom} />
        </Sheet>
      )}
    </div>
  )
}
