/** A round under way or over: the class on its sheet, and the lanes as everybody sees them. Narrow desks show one at a time. */

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
import styles from './watch-round.module.css'

type Half = 'class' | 'board'

export function WatchRound({ view, onOpen }: { view: DeskView; onOpen: (id: SeatId) => void }) {
  const { t } = useTranslation()
  const [half, setHalf] = useState<Half>('class')
  const { round } = view
  const isEnded = round?.clock.phase === 'ended'
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
      <div className={classNames(styles.class, half === 'class' && styles.chosen)}>
        {view.seats.some((seat) => seat.pretend) && (
          <p className={styles.pretend}>
            <PretendMark />
          </p>
        )}
        <ClassSheet view={view} onOpen={onOpen} />
      </div>
      <div className={classNames(styles.lanes, half === 'board' && styles.chosen)}>
        {round !== null && round.clock.phase !== 'void' && (
          <Lanes
            lanes={view.lanes}
            phase={isEnded ? 'ended' : 'running'}
            nStages={nStagesIn(round.settings)}
            roundKey={round.id}
          />
        )}
        {round?.clock.phase === 'void' && <p className={styles.void}>{t('board:voided.sentence')}</p>}
      </div>
    </main>
  )
}
