/** After the end: the own place, then the list, ranked as the board ranks it. */

import { useTranslation } from 'react-i18next'
import { type RankedLane, rankBoard } from '../../engine/contest/rank-board.ts'
import { nStagesIn, PARTS_PER_STAGE } from '../../engine/method/stages.ts'
import { GoalPicture } from '../cube/goal-picture.tsx'
import { spanWords, stageWords } from '../parts/stage-words.ts'
import { Button } from '../ui/button.tsx'
import { classNames } from '../ui/class-names.ts'
import { Sign } from '../ui/signs.tsx'
import type { BenchFace } from './bench-face.ts'
import type { FaceProps } from './bench-props.ts'
import styles from './end-of-round.module.css'
import { type OwnTry, tryToReview } from './own-best.ts'
import { OwnReview } from './own-review.tsx'
import { parAtTheEnd } from './par-at-the-end.ts'
import { RankedList } from './ranked-list.tsx'

type EndOfRoundProps = FaceProps & {
  readonly face: Extract<BenchFace, { kind: 'ended' }>
  /** The best try that this page has seen reach the goal. */
  readonly best: OwnTry | null
}

export function EndOfRound({ live, face, liked, onOpenLook, onChoose, seeShowing, best }: EndOfRoundProps) {
  const { t } = useTranslation()
  const { view, round } = face
  const { settings } = round
  const ranked = rankBoard(view.lanes, 'ended')
  const mine = ranked.find((lane) => lane.seatId === view.me.seatId) ?? null
  const words = stageWords(t, settings.to, settings.baseColour)
  const nParts = nStagesIn(settings) * PARTS_PER_STAGE
  // With "own" the teacher keeps the list: a place seen alone would always be the first, so none is named.
  const isListed = settings.boardSeenBy !== 'own'
  const isAlone = settings.pace === 'alone'
  const made = tryToReview(best, mine?.best?.turns ?? null, live.mine)
  const cameTooLate = live.cameTooLate || (live.mine !== null && live.mine.nWaiting > 0)
  return (
    <main className={styles.end} aria-label={t('bench:page')}>
      <header className={styles.head}>
        <GoalPicture
          stage={settings.to}
          baseColour={settings.baseColour}
          marks={liked.marks}
          label={words.picture}
          className={styles.picture}
        />
        <div>
          <p className={styles.over}>
            {t('bench:roundAndStage', { number: round.number, stage: spanWords(t, settings) })} · {words.title}
          </p>
          <h1 className={styles.title}>{t('bench:ended.title')}</h1>
        </div>
      </header>
      <section className={styles.mine} role="status">
        {mine !== null && <OwnResult lane={mine} ranked={ranked} isListed={isListed} nParts={nParts} />}
        {view.par !== null && <p>{parAtTheEnd(t, view.par, mine?.best?.turns ?? null)}</p>}
        {view.handedIn !== null ? (
          <p>
            {t(view.handedIn.reached ? 'bench:ended.handedIn' : 'bench:ended.handedInShort', {
              turns: t('common:turns', { count: view.handedIn.turns }),
            })}
          </p>
        ) : (
          cameTooLate && <p>{t('bench:awayEnded')}</p>
        )}
        {live.status === 'away' && <p>{t('bench:awayWaiting')}</p>}
        {view.room.pretend && <p>{t('common:pretendClass')}</p>}
        {made !== null && <OwnReview made={made} round={round} />}
        {seeShowing}
        {!isAlone && <p className={styles.next}>{t('bench:ended.next')}</p>}
        <div className={classNames(styles.acts, !isAlone && styles.onlyQuiet)}>
          {isAlone && (
            <Button icon="back" onClick={() => onChoose({ pickedRound: null })}>
              {t('bench:rounds.back')}
            </Button>
          )}
          <Button look="quiet" icon="settings" onClick={onOpenLook}>
            {t('bench:tools.look')}
          </Button>
        </div>
      </section>
      {isListed ? (
        <RankedList ranked={ranked} mySeatId={view.me.seatId} nParts={nParts} hasMoments={!isAlone} />
      ) : (
        <p className={styles.nobody}>
          {t('bench:ended.nReached', { count: view.nReached, of: view.nStudents })} {t('bench:ended.nobody')}
        </p>
      )}
    </main>
  )
}

type OwnResultProps = { lane: RankedLane; ranked: readonly RankedLane[]; isListed: boolean; nParts: number }

function OwnResult({ lane, ranked, isListed, nParts }: OwnResultProps) {
  const { t } = useTranslation()
  if (lane.best === null || lane.place === null) {
    return (
      <div className={styles.notReached}>
        <p className={styles.place}>{t('bench:ended.notReached')}</p>
        <p>{t('bench:ended.progress', { count: lane.progress, of: nParts })}</p>
      </div>
    )
  }
  const isShared = ranked.some((other) => other !== lane && other.place === lane.place)
  return (
    <div className={styles.result}>
      <Sign of="reached" className={styles.flag} />
      {isListed && (
        <p className={styles.place}>
          {t(isShared ? 'bench:ended.shared' : 'bench:ended.place', { place: lane.place })}
        </p>
      )}
      <p className={!isListed ? styles.place : undefined}>{t('bench:reached.title', { count: lane.best.turns })}</p>
    </div>
  )
}
