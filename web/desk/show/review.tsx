/**
 * The review: any solutions of a round under one another, beside the lesson way and the shortest. The teacher chooses whose,
 * plays and scrubs; the class may follow, names may be hidden. Beside it, what cost most over all rounds of the room.
 */

import { useCallback, useEffect, useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundId } from '../../../engine/contest/ids.ts'
import { nStagesIn } from '../../../engine/method/stages.ts'
import { SHOWN_WAYS_MAX } from '../../../engine/wire/limits.ts'
import type { ShowingAt, ShownReview } from '../../../engine/wire/shown.ts'
import type { DeskView, ReviewView } from '../../../engine/wire/views.ts'
import { PretendMark } from '../../parts/pretend-mark.tsx'
import { PlayKeys } from '../../parts/showing/play-keys.tsx'
import { ReviewFace } from '../../parts/showing/review-face.tsx'
import { spanWords } from '../../parts/stage-words.ts'
import { Waiting } from '../../parts/waiting.tsx'
import { Button } from '../../ui/button.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { TickBox } from '../../ui/tick-box.tsx'
import type { RoomActs } from '../desk-acts.ts'
import { hasPretenders } from '../room-phase.ts'
import { ChooseWays } from './choose-ways.tsx'
import styles from './review.module.css'
import { defaultChoice, takenUpChoice, type WaysChoice, waysToShow } from './review-ways.ts'
import { useShowing } from './use-showing.ts'
import { WhatCostMost } from './what-cost-most.tsx'

type ReviewProps = {
  readonly view: DeskView
  readonly acts: Pick<RoomActs, 'show' | 'showAt' | 'review'>
  readonly onBack: () => void
}

const BEGINS: ShowingAt = { at: 0, chosen: 0, pointer: null }

export function Review({ view, acts, onBack }: ReviewProps) {
  const { t } = useTranslation()
  const ended = view.rounds.filter(({ phase }) => phase === 'ended')
  const [wishedRound, setRound] = useState<RoundId | null>(() => roundShown(view))
  const roundId = ended.some(({ id }) => id === wishedRound) ? wishedRound : (ended.at(-1)?.id ?? null)
  const [face, setFace] = useState<'ribbons' | 'costs'>('ribbons')
  const review = useReview(roundId, acts)
  return (
    <main className={styles.review}>
      <div className={styles.bar}>
        <h1>{t('showing:review.title')}</h1>
        {ended.length > 1 && face === 'ribbons' && (
          <select
            aria-label={t('showing:review.title')}
            value={roundId ?? ''}
            onChange={(event) => setRound(event.currentTarget.value as RoundId)}
          >
            {ended.map(({ id, number, settings }) => (
              <option key={id} value={id}>
                {t('showing:review.roundAndStage', { number, stage: spanWords(t, settings) })}
              </option>
            ))}
          </select>
        )}
        <SegmentedChoice
          legend={t('showing:review.title')}
          quietLegend
          segments={[
            { value: 'ribbons', label: t('showing:review.ribbons') },
            { value: 'costs', label: t('showing:review.costs') },
          ]}
          value={face}
          onChoose={setFace}
        />
        {review !== null && face === 'ribbons' && hasPretenders(view, review.solutions) && <PretendMark />}
        <Button look="quiet" icon="back" onClick={onBack} className={styles.back}>
          {t('showing:demonstrate.back')}
        </Button>
      </div>
      {face === 'costs' ? (
        <WhatCostMost rounds={ended} review={acts.review} />
      ) : roundId === null ? (
        <p>{t('showing:review.nobody')}</p>
      ) : review === null ? (
        <Waiting words={t('showing:review.loading')} />
      ) : (
        <Ribbons key={review.round.id} view={view} review={review} acts={acts} />
      )}
    </main>
  )
}

function Ribbons({ view, review, acts }: { view: DeskView; review: ReviewView; acts: ReviewProps['acts'] }) {
  const { t } = useTranslation()
  // What the class sees of this round goes on.
  const [begun] = useState(() => {
    const taken = view.showing === null ? null : takenUpChoice(review, view.showing.shown)
    return taken === null || view.showing === null ? null : { ...taken, at: view.showing.at }
  })
  const [choice, setChoice] = useState<WaysChoice>(begun?.choice ?? (() => defaultChoice(review)))
  const [hidesNames, setHidesNames] = useState(begun?.hidesNames ?? false)
  const [at, setAt] = useState<ShowingAt>(begun?.at ?? BEGINS)
  const ways = useMemo(() => waysToShow(review, choice, hidesNames), [review, choice, hidesNames])
  const shown = useMemo((): ShownReview | null => {
    if (ways.length === 0) return null
    const { round } = review
    const { from, to, baseColour } = round.settings
    return { kind: 'review', roundNumber: round.number, from, to, start: round.start, baseColour, ways }
  }, [review, ways])
  const chosen = Math.min(at.chosen, Math.max(0, ways.length - 1))
  const nTurns = ways[chosen]?.turns.length ?? 0
  const within = useMemo(() => ({ at: Math.min(at.at, nTurns), chosen, pointer: null }), [at.at, nTurns, chosen])
  const { isLive, begin, end } = useShowing(view, acts, shown, within, begun !== null)
  const choose = useCallback((way: number, turns: number) => setAt({ at: turns, chosen: way, pointer: null }), [])
  const go = useCallback((turns: number) => setAt((before) => ({ ...before, at: turns })), [])
  if (review.solutions.length === 0 && ways.length === 0) return <p>{t('showing:review.nobody')}</p>
  return (
    <div className={styles.ribbons}>
      <ChooseWays
        review={review}
        choice={choice}
        nMax={SHOWN_WAYS_MAX}
        onChange={(next) => {
          setChoice(next)
          setAt(BEGINS)
        }}
      />
      <div className={styles.face}>
        <div className={styles.ticks}>
          <TickBox checked={isLive} onChange={(ticked) => (ticked ? begin() : end())}>
            {t('showing:review.follow')}
          </TickBox>
          <TickBox checked={hidesNames} onChange={setHidesNames}>
            {t('showing:review.anonymous')}
          </TickBox>
          {nStagesIn(review.round.settings) > 0 && review.par !== null && (
            <p className={styles.par}>
              {t(review.par.proven ? 'common:par.proven' : 'common:par.bestKnown', review.par)}
            </p>
          )}
        </div>
        {shown !== null && (
          <ReviewFace shown={shown} at={within} marks="plain" onChoose={choose}>
            <PlayKeys turns={ways[chosen]?.turns ?? []} at={within.at} onGo={go} />
          </ReviewFace>
        )}
      </div>
    </div>
  )
}

/** @returns the round whose review the class sees */
function roundShown({ showing, rounds }: DeskView): RoundId | null {
  const shown = showing?.shown
  if (shown?.kind !== 'review') return null
  return rounds.find(({ number }) => number === shown.roundNumber)?.id ?? null
}

/** The solutions of a round, asked for once. */
function useReview(roundId: RoundId | null, acts: ReviewProps['acts']): ReviewView | null {
  const [review, setReview] = useState<ReviewView | null>(null)
  useEffect(() => {
    if (roundId === null) return
    let isOld = false
    void acts.review(roundId).then((answer) => {
      if (!isOld) setReview(answer)
    })
    return () => {
      isOld = true
    }
  }, [roundId, acts])
  return review?.round.id === roundId ? review : null
}
