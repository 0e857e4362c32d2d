/** After the end: the own place, then the list, ranked as the board ranks it. */

import { useTranslation } from 'react-i18next'
import { type RankedLane, rankBoard } from '../../engine/contest/rank-board.ts'
import { nStagesIn, PARTS_PER_STAGE } from '../../engine/method/stages.ts'
import { GoalPicture } from '../cube/goal-picture.tsx'
import type { BenchSettings } from '../parts/bench-page/bench-settings.ts'
import { spanWords, stageWords } from '../parts/stage-words.ts'
import { Button } from '../ui/button.tsx'
import { Sign } from '../ui/signs.tsx'
import type { BenchFace } from './bench-face.ts'
import type { BenchScreenProps } from './bench-props.ts'
import styles from './end-of-round.module.css'
import { parAtTheEnd } from './par-at-the-end.ts'
import { RankedList } from './ranked-list.tsx'

type EndOfRoundProps = Pick<BenchScreenProps, 'live'> & {
  readonly face: Extract<BenchFace, { kind: 'ended' }>
  readonly liked: BenchSettings
  readonly onOpenLook: () => void
}

export function EndOfRound({ live, face, liked, onOpenLook }: EndOfRoundProps) {
  const { t } = useTranslation()
  const { view, round } = face
  const { settings } = round
  const ranked = rankBoard(view.lanes, 'ended')
  const mine = ranked.find((lane) => lane.seatId === view.me.seatId) ?? null
  const words = stageWords(t, settings.to, settings.baseColour)
  const nParts = nStagesIn(settings) * PARTS_PER_STAGE
  // With "own" the teacher keeps the list: a place seen alone would always be the first, so none is named.
  const isListed = settings.boardSeenBy !== 'own'
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
        {cameTooLate && <p>{t('bench:awayEnded')}</p>}
        {live.status === 'away' && <p>{t('bench:awayWaiting')}</p>}
        {view.room.pretend && <p>{t('common:pretendClass')}</p>}
        <p className={styles.next}>{t('bench:ended.next')}</p>
        <Button look="quiet" icon="settings" onClick={onOpenLook}>
          {t('bench:tools.look')}
        </Button>
      </section>
      {isListed ? (
        <RankedList ranked={ranked} mySeatId={view.me.seatId} nParts={nParts} />
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
