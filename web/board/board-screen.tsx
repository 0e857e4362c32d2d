/** The board on the projector: a page with a margin on the left, and one column at the right that never moves. */

import { type ReactNode, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { countdownMs } from '../../engine/contest/round-clock.ts'
import { nStagesIn } from '../../engine/method/stages.ts'
import type { BoardView, RoundView } from '../../engine/wire/views.ts'
import { GatherPanel } from '../parts/gather-panel.tsx'
import { FootNotes } from '../parts/lanes/foot-notes.tsx'
import { Lanes } from '../parts/lanes/lanes.tsx'
import { LiveWords } from '../ui/live-words.tsx'
import styles from './board-screen.module.css'
import { BoardTools } from './board-tools.tsx'
import { RoundColumn } from './round-column.tsx'
import { ShownPage } from './shown-page.tsx'
import { summaryWords } from './summary-words.ts'

type BoardScreenProps = { view: BoardView; nowMs: number }

export function BoardScreen({ view, nowMs }: BoardScreenProps) {
  const { t } = useTranslation()
  const [stoodStill, setStoodStill] = useState<BoardView | null>(null)
  const tools = (
    <BoardTools standsStill={stoodStill !== null} onStandStill={(still) => setStoodStill(still ? view : null)} />
  )
  // Another round ends a standstill by itself: nobody wants to look at the last one for ever.
  const shown = stoodStill !== null && stoodStill.round?.id === view.round?.id ? stoodStill : view
  const { room, round } = shown
  return (
    <>
      {shown.showing !== null ? (
        <ShownPage showing={shown.showing} />
      ) : round === null ? (
        <main className={styles.gather}>
          <GatherPanel {...room} names={shown.names} nextRound={shown.nRounds + 1} />
          <div className={styles.gatherTools}>{tools}</div>
        </main>
      ) : (
        <main className={styles.board}>
          <div className={styles.page}>
            <Page view={shown} round={round} nowMs={nowMs} />
          </div>
          {/* The clock is right even while the lanes stand still. */}
          <RoundColumn view={shown} round={view.round ?? round} nowMs={nowMs} tools={tools} />
        </main>
      )}
      {/* What is shown may hide names, so nothing else is said meanwhile. */}
      <LiveWords words={shown.showing === null ? summaryWords(t, shown) : ''} />
    </>
  )
}

function Page({ view, round, nowMs }: { view: BoardView; round: RoundView; nowMs: number }): ReactNode {
  const { t } = useTranslation()
  const { clock, settings } = round
  const toSignalMs = countdownMs(clock, nowMs)
  if (clock.phase === 'ready')
    return (
      <Words
        title={t('board:settingUp.title')}
        sentence={t('board:settingUp.sentence', { count: view.nReady, of: view.nStudents })}
      />
    )
  if (clock.phase === 'void') return <Words title={t('board:voided.title')} sentence={t('board:voided.sentence')} />
  if (toSignalMs > 0) return <Countdown seconds={Math.ceil(toSignalMs / 1000)} />
  if (view.covered) {
    // With "own" the lanes stay covered when the round is over, so nothing else is promised.
    const until = settings.boardSeenBy === 'own' ? 'board:covered.own' : 'board:covered.sentence'
    return <Words title={t('board:covered.title')} sentence={t(until)} isCovered />
  }
  if (view.lanes.length === 0) return <Words title={t('board:nobody.title')} sentence={t('board:nobody.sentence')} />
  return (
    <div className={styles.lanes}>
      <Lanes
        lanes={view.lanes}
        phase={clock.phase === 'ended' ? 'ended' : 'running'}
        nStages={nStagesIn(settings)}
        par={view.par}
        roundKey={round.id}
      />
      <FootNotes lanes={view.lanes} />
    </div>
  )
}

/** Three, two, one: large and still. The figure changes, nothing else does. */
function Countdown({ seconds }: { seconds: number }) {
  const { t } = useTranslation()
  return (
    <div className={styles.squared}>
      <p className={styles.countdown} role="timer" aria-label={t('board:countdown', { count: seconds })}>
        {seconds}
      </p>
    </div>
  )
}

function Words({ title, sentence, isCovered = false }: { title: string; sentence: string; isCovered?: boolean }) {
  return (
    <div className={styles.squared}>
      <div className={styles.words}>
        {isCovered && <i className={styles.cover} />}
        <h2>{title}</h2>
        <p>{sentence}</p>
      </div>
    </div>
  )
}
