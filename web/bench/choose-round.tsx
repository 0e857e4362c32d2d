/**
 * A take-home room: its rounds, each with its goal and how far it is, until when the room is open, and one press to play one.
 * After the deadline the same list tells how each of them went.
 */

import { useTranslation } from 'react-i18next'
import type { RoundId } from '../../engine/contest/ids.ts'
import type { RoundInList } from '../../engine/wire/views.ts'
import { GoalPicture } from '../cube/goal-picture.tsx'
import { RefusalLine } from '../parts/bench-page/refusal-line.tsx'
import { refusalWords } from '../parts/refusal-words.ts'
import { spanWords, stageWords } from '../parts/stage-words.ts'
import { Button } from '../ui/button.tsx'
import { classNames } from '../ui/class-names.ts'
import { Icon } from '../ui/icons.tsx'
import { Sign } from '../ui/signs.tsx'
import type { BenchFace } from './bench-face.ts'
import type { FaceProps } from './bench-props.ts'
import styles from './choose-round.module.css'
import { nextToPlay, roundIsOver, roundState, withOwnBest } from './round-list.ts'

type ChooseRoundProps = FaceProps & { readonly face: Extract<BenchFace, { kind: 'rounds' }> }

export function ChooseRound({ face: { view }, live, acts, liked, onOpenLook, onChoose, seeShowing }: ChooseRoundProps) {
  const { t, i18n } = useTranslation()
  const { room, me } = view
  const rounds = withOwnBest(view)
  const choose = async (id: RoundId) => {
    // Told even when it is the one at hand: else the server goes on to the next as soon as its goal is reached.
    await acts.chooseRound(id)
    onChoose({ pickedRound: id })
  }
  const isOver = rounds.length > 0 && rounds.every(roundIsOver)
  const next = isOver ? null : nextToPlay(rounds)
  const nReached = rounds.filter(({ bestTurns }) => bestTurns !== null).length
  const when = new Intl.DateTimeFormat(i18n.language, {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    hour: 'numeric',
    minute: '2-digit',
  }).format(room.deadlineMs ?? 0)
  return (
    <main className={styles.page} aria-label={t('bench:page')}>
      <header className={styles.head}>
        <div>
          <p className={styles.over}>{t('bench:rounds.over', { name: me.name })}</p>
          <h1>{t(isOver ? 'bench:rounds.titleOver' : 'bench:rounds.title')}</h1>
          <p>
            {t(isOver ? 'bench:rounds.closed' : 'bench:rounds.until', { when })}{' '}
            {t('bench:rounds.nReached', { count: nReached, of: rounds.length })}
          </p>
        </div>
        <Button look="quiet" icon="settings" onClick={onOpenLook}>
          {t('bench:tools.look')}
        </Button>
      </header>
      {seeShowing}
      <p className={styles.state} role="status">
        {live.status === 'away' && t('bench:awayWaiting')}
      </p>
      {live.refusal !== null && (
        <div className={styles.refusal}>
          <RefusalLine words={refusalWords(t, live.refusal)} onDismiss={acts.dismiss} />
        </div>
      )}
      <ol className={styles.rounds}>
        {rounds.map((round) => (
          <li key={round.id}>
            <Row
              round={round}
              begun={view.round?.id === round.id && view.mine !== null && view.mine.steps.length > 0}
              isNext={round.id === next?.id}
              marks={liked.marks}
              onPlay={() => void choose(round.id)}
            />
          </li>
        ))}
      </ol>
    </main>
  )
}

type RowProps = {
  readonly round: RoundInList
  readonly begun: boolean
  readonly isNext: boolean
  readonly marks: ChooseRoundProps['liked']['marks']
  readonly onPlay: () => void
}

function Row({ round, begun, isNext, marks, onPlay }: RowProps) {
  const { t } = useTranslation()
  const { number, settings, bestTurns } = round
  const words = stageWords(t, settings.to, settings.baseColour)
  const state = roundState(round, begun)
  return (
    <button type="button" className={classNames(styles.round, isNext && styles.next)} onClick={onPlay}>
      <GoalPicture
        stage={settings.to}
        baseColour={settings.baseColour}
        marks={marks}
        label=""
        className={styles.picture}
      />
      <span className={styles.words}>
        <span className={styles.over}>{t('bench:roundAndStage', { number, stage: spanWords(t, settings) })}</span>
        <b>{words.title}</b>
        <span className={styles.came}>
          {state === 'reached' && <Sign of="reached" className={styles.flag} />}
          {state === 'reached'
            ? t('bench:reached.title', { count: bestTurns ?? 0 })
            : t(`bench:rounds.state.${roundIsOver(round) ? 'over' : state}`)}
        </span>
      </span>
      <span className={styles.go}>
        {t(`bench:rounds.go.${roundIsOver(round) ? 'over' : state}`)}
        <Icon of="onward" />
      </span>
    </button>
  )
}
