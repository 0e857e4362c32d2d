/**
 * A round under way or over: par, the ways through the start, the class on its sheet, and the lanes as everybody sees them.
 * Narrow desks show the class or the lanes.
 */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { SeatId } from '../../engine/contest/ids.ts'
import { nStagesIn } from '../../engine/method/stages.ts'
import type { DeskView } from '../../engine/wire/views.ts'
import { Lanes } from '../parts/lanes/lanes.tsx'
import { PretendMark } from '../parts/pretend-mark.tsx'
import { classNames } from '../ui/class-names.ts'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { ClassSheet } from './class/class-sheet.tsx'
import type { RoomActs } from './desk-acts.ts'
import { ParLine } from './par-line.tsx'
import { classSeesPar } from './room-phase.ts'
import styles from './watch-round.module.css'
import { WaysThrough } from './ways/ways-through.tsx'

type Half = 'class' | 'board'
type WatchRoundProps = { view: DeskView; acts: Pick<RoomActs, 'showPar'>; onOpen: (id: SeatId) => void }

export function WatchRound({ view, acts, onOpen }: WatchRoundProps) {
  const { t } = useTranslation()
  const [half, setHalf] = useState<Half>('class')
  const { round } = view
  const counts = round !== null && round.clock.phase !== 'void'
  const isEnded = round?.clock.phase === 'ended'
  // Open once the round is over, folded while it runs; the teacher's own wish counts until that changes.
  const foldedFor = `${round?.id} ${isEnded}`
  const [wish, setWish] = useState({ foldedFor, isOpen: isEnded })
  const isOpen = wish.foldedFor === foldedFor ? wish.isOpen : isEnded
  return (
    <main className={styles.round}>
      <div className={styles.choose}>
        <SegmentedChoice
          legend={t('desk:classSheet.view')}
          quietLegend
          segments={[
            { value: 'class', label: t('desk:classSheet.title') },
            { value: 'board', label: t('desk:classSheet.board') },
          ]}
          value={half}
          onChoose={setHalf}
        />
      </div>
      <div className={styles.over}>
        {counts && <ParLine view={view} acts={acts} />}
        {view.seats.some((seat) => seat.pretend) && (
          <p className={styles.pretend}>
            <PretendMark />
          </p>
        )}
      </div>
      <div className={classNames(styles.class, isOpen && styles.open, half === 'class' && styles.chosen)}>
        {counts && (
          <WaysThrough
            start={round.start}
            par={view.par}
            ways={view.ways}
            baseColour={round.settings.baseColour}
            isOpen={isOpen}
            onOpen={(open) => setWish({ foldedFor, isOpen: open })}
          />
        )}
        <ClassSheet view={view} onOpen={onOpen} />
      </div>
      <div className={classNames(styles.lanes, half === 'board' && styles.chosen)}>
        {counts && (
          <Lanes
            lanes={view.lanes}
            phase={isEnded ? 'ended' : 'running'}
            nStages={nStagesIn(round.settings)}
            par={classSeesPar(view) ? view.par : null}
            roundKey={round.id}
          />
        )}
        {round?.clock.phase === 'void' && <p className={styles.void}>{t('board:voided.sentence')}</p>}
      </div>
    </main>
  )
}
