/** What a teacher can do with the round now. At most one button is the next thing to press. */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { DeskView } from '../../engine/wire/views.ts'
import { AskFirst } from '../ui/ask-first.tsx'
import { Button } from '../ui/button.tsx'
import type { RoomActs } from './desk-acts.ts'
import { nextPart, type RoomPhase } from './room-phase.ts'
import styles from './round-acts.module.css'
import { MINUTE_MS } from './time-limits.ts'

type RoundActsProps = {
  view: DeskView
  phase: RoomPhase
  acts: RoomActs
  onPlan: (plan: boolean) => void
  /** Opens what the plan has next, where that is no round. */
  onPart: (kind: 'demonstrate' | 'review') => void
}

export function RoundActs({ view, phase, acts, onPlan, onPart }: RoundActsProps) {
  const { t } = useTranslation()
  const hasRealCubes = view.settings.cube !== 'screen'
  const part = nextPart(view)
  const start = (
    <Button
      look={part === null ? 'accent' : 'plain'}
      icon="play"
      className={part === null ? styles.next : undefined}
      onClick={() => {
        onPlan(false)
        if (hasRealCubes) acts.deal()
        else acts.start()
      }}
    >
      {startWords(t, view)}
    </Button>
  )
  // In a take-home room every round is open by itself, until the deadline.
  if (view.room.deadlineMs !== null) return null
  if (view.round?.clock.phase === 'ready') return <ReadyActs view={view} acts={acts} />
  if (phase === 'playing') return <PlayingActs view={view} acts={acts} />
  if (phase === 'planning') {
    return (
      <>
        {view.round !== null && (
          <Button look="quiet" onClick={() => onPlan(false)}>
            {t('desk:acts.backToRound', { number: view.round.number })}
          </Button>
        )}
        {start}
        {part !== null && <PartAct kind={part} onPart={onPart} />}
      </>
    )
  }
  return (
    <>
      {view.round?.clock.phase === 'ended' && <VoidRound onVoid={acts.voidRound} />}
      <Button icon="settings" onClick={() => onPlan(true)}>
        {t('desk:acts.settings')}
      </Button>
      {start}
      {part !== null && <PartAct kind={part} onPart={onPart} />}
    </>
  )
}

function PartAct({ kind, onPart }: { kind: 'demonstrate' | 'review'; onPart: RoundActsProps['onPart'] }) {
  const { t } = useTranslation()
  return (
    <Button
      look="accent"
      icon={kind === 'demonstrate' ? 'projector' : 'again'}
      className={styles.next}
      onClick={() => onPart(kind)}
    >
      {t(`desk:lesson.${kind}`)}
    </Button>
  )
}

function startWords(t: ReturnType<typeof useTranslation>['t'], { nRounds, settings }: DeskView): string {
  if (settings.cube !== 'screen') return t('desk:realCubes.deal', { number: nRounds + 1 })
  return nRounds === 0 ? t('desk:acts.start') : t('desk:acts.startRound', { number: nRounds + 1 })
}

/** Dealt, and the real cubes are being brought to the start. */
function ReadyActs({ view, acts }: { view: DeskView; acts: RoomActs }) {
  const { t } = useTranslation()
  return (
    <>
      <VoidRound onVoid={acts.voidRound} />
      <Button look="accent" icon="play" className={styles.next} onClick={acts.giveSignal}>
        {t('desk:realCubes.signal', { number: view.nRounds })}
      </Button>
    </>
  )
}

function PlayingActs({ view, acts }: { view: DeskView; acts: RoomActs }) {
  const { t } = useTranslation()
  const [asksToEnd, setAsksToEnd] = useState(false)
  const clock = view.round?.clock
  const isPaused = clock?.phase === 'paused'
  const hasLimit = view.round !== null && view.round.settings.timeLimitMs !== null
  return (
    <>
      {isPaused ? (
        <Button look="accent" icon="play" onClick={acts.resume}>
          {t('desk:acts.resume')}
        </Button>
      ) : (
        <Button icon="pause" onClick={acts.pause}>
          {t('desk:acts.pause')}
        </Button>
      )}
      {hasLimit && (
        <Button icon="plus" onClick={() => acts.addTime(MINUTE_MS)}>
          {t('desk:acts.addMinute')}
        </Button>
      )}
      <Button icon="stop" onClick={() => setAsksToEnd(true)}>
        {t('desk:acts.end')}
      </Button>
      <VoidRound onVoid={acts.voidRound} />
      {asksToEnd && (
        <AskFirst
          title={t('desk:acts.endAsk.title')}
          sentence={t('desk:acts.endAsk.sentence')}
          yes={t('desk:acts.endAsk.yes')}
          onYes={acts.end}
          onClose={() => setAsksToEnd(false)}
        />
      )}
    </>
  )
}

function VoidRound({ onVoid }: { onVoid: () => void }) {
  const { t } = useTranslation()
  const [asks, setAsks] = useState(false)
  return (
    <>
      <Button look="quiet" onClick={() => setAsks(true)}>
        {t('desk:acts.void')}
      </Button>
      {asks && (
        <AskFirst
          title={t('desk:acts.voidAsk.title')}
          sentence={t('desk:acts.voidAsk.sentence')}
          yes={t('desk:acts.voidAsk.yes')}
          onYes={onVoid}
          onClose={() => setAsks(false)}
        />
      )}
    </>
  )
}
