/**
 * A round under way or over: the wall with every cube, the lanes as everybody sees them, or the ways through the start; and
 * beside them the student that was chosen. Narrow desks show the student in a sheet.
 */

import { type ReactNode, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { SeatId } from '../../engine/contest/ids.ts'
import { nStagesIn } from '../../engine/method/stages.ts'
import type { DeskView, TryLook } from '../../engine/wire/views.ts'
import { FootNotes } from '../parts/lanes/foot-notes.tsx'
import { Lanes } from '../parts/lanes/lanes.tsx'
import { PretendMark } from '../parts/pretend-mark.tsx'
import { Button } from '../ui/button.tsx'
import { useIsWide } from '../ui/is-wide.ts'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { Sheet } from '../ui/sheet.tsx'
import type { RoomActs } from './desk-acts.ts'
import { ParLine } from './par-line.tsx'
import { RealCubes } from './real-cubes.tsx'
import { classSeesPar, hasPretenders } from './room-phase.ts'
import { NudgeKeys } from './wall/nudge-keys.tsx'
import { StudentPanel } from './wall/student-panel.tsx'
import { Wall } from './wall/wall.tsx'
import { studentStates } from './wall/wall-students.ts'
import styles from './watch-round.module.css'
import { WaysThrough } from './ways/ways-through.tsx'

type Face = 'wall' | 'board' | 'ways'
type WatchRoundProps = {
  readonly view: DeskView
  readonly nowMs: number
  readonly acts: Pick<RoomActs, 'showPar' | 'lookAt' | 'nudge'>
  /** What leads elsewhere: demonstration and review. */
  readonly tools: ReactNode
  /** Name and seat of a student. */
  readonly onSeat: (id: SeatId) => void
  readonly onDemonstrate: (name: string, look: TryLook) => void
}

export function WatchRound({ view, nowMs, acts, tools, onSeat, onDemonstrate }: WatchRoundProps) {
  const { t } = useTranslation()
  const isWide = useIsWide()
  const [face, setFace] = useState<Face>('wall')
  const [chosen, setChosen] = useState<SeatId | null>(null)
  const [nudgesAll, setNudgesAll] = useState(false)
  const { round } = view
  const counts = round !== null && round.clock.phase !== 'void'
  const isEnded = round?.clock.phase === 'ended'
  const isPlayed = round?.clock.phase === 'running' || round?.clock.phase === 'paused'
  const students = studentStates(view, nowMs)
  const student = students.find(({ seat }) => seat.seatId === chosen)
  const panel = student !== undefined && round !== null && (
    <StudentPanel
      key={student.seat.seatId}
      student={student}
      round={round}
      lookAt={acts.lookAt}
      onNudge={acts.nudge}
      onDemonstrate={(look) => onDemonstrate(student.seat.name, look)}
      onSeat={() => onSeat(student.seat.seatId)}
    />
  )
  const choose = (id: SeatId) => setChosen((before) => (before === id ? null : id))
  return (
    <main className={styles.round}>
      <div className={styles.over}>
        <SegmentedChoice
          legend={t('desk:wall.view')}
          quietLegend
          segments={[
            { value: 'wall', label: t('desk:wall.title') },
            { value: 'board', label: t('desk:wall.board') },
            { value: 'ways', label: t('desk:wall.ways'), disabled: !counts },
          ]}
          value={face}
          onChoose={setFace}
        />
        {counts && <ParLine view={view} acts={acts} />}
        <RealCubes view={view} />
        {hasPretenders(view, view.lanes) && <PretendMark />}
        {isPlayed && (
          <Button look="quiet" onClick={() => setNudgesAll(true)}>
            {t('desk:wall.nudgeAll')}
          </Button>
        )}
        <div className={styles.tools}>{tools}</div>
      </div>
      <div className={styles.face}>
        {face === 'wall' && <Wall round={round} students={students} chosen={chosen} onChoose={choose} />}
        {face === 'ways' && counts && (
          <WaysThrough
            start={round.start}
            par={view.par}
            ways={view.ways}
            baseColour={round.settings.baseColour}
            isOpen
            // It is told when it opens, too; only folding it leads back to the wall.
            onOpen={(open) => {
              if (!open) setFace('wall')
            }}
          />
        )}
        {face === 'board' && counts && (
          <>
            <Lanes
              lanes={view.lanes}
              phase={isEnded ? 'ended' : 'running'}
              nStages={nStagesIn(round.settings)}
              par={classSeesPar(view) ? view.par : null}
              roundKey={round.id}
            />
            <FootNotes lanes={view.lanes} />
          </>
        )}
        {face === 'board' && round?.clock.phase === 'void' && (
          <p className={styles.void}>{t('board:voided.sentence')}</p>
        )}
      </div>
      {isWide && panel && student !== undefined && (
        <aside className={styles.panel} aria-label={student.seat.name}>
          <div className={styles.panelHead}>
            <h2>{student.seat.name}</h2>
            <Button look="quiet" icon="cross" onClick={() => setChosen(null)}>
              {t('desk:panel.close')}
            </Button>
          </div>
          {panel}
        </aside>
      )}
      {!isWide && panel && student !== undefined && (
        <Sheet title={student.seat.name} onClose={() => setChosen(null)}>
          {panel}
        </Sheet>
      )}
      {nudgesAll && (
        <Sheet title={t('desk:wall.nudgeAllTitle')} onClose={() => setNudgesAll(false)}>
          <NudgeKeys
            sent={null}
            onNudge={(nudge) => {
              acts.nudge('all', nudge)
              setNudgesAll(false)
            }}
          />
        </Sheet>
      )}
    </main>
  )
}
