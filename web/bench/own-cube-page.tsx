/**
 * The page of a child with a cube in the hand, and of the choices before it: the goal and the clock at one side or above,
 * what is to be done beside it, the few tools below. Scrolls where it has to; nothing on it moves while a cube is turned.
 */

import type { ReactNode } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundView } from '../../engine/wire/views.ts'
import { GoalPicture } from '../cube/goal-picture.tsx'
import { RefusalLine } from '../parts/bench-page/refusal-line.tsx'
import { BenchTools, type ToolName } from '../parts/hands/bench-tools.tsx'
import { refusalWords } from '../parts/refusal-words.ts'
import { spanWords, stageWords } from '../parts/stage-words.ts'
import { classNames } from '../ui/class-names.ts'
import type { FaceProps } from './bench-props.ts'
import styles from './own-cube-page.module.css'
import { RoundClock } from './round-clock.tsx'

type OwnCubePageProps = FaceProps & {
  readonly round: RoundView
  /** A line about what holds just now; null while all is as usual. */
  readonly state: string | null
  /** Where the page has much to show, a phone shows the goal in one line. */
  readonly brief?: boolean
  /** Said by the content itself, where it is about what was refused. */
  readonly quietRefusal?: boolean
  /** What the teacher sends. */
  readonly nudge?: ReactNode
  readonly children: ReactNode
}

const NOT_ON_PAPER: readonly ToolName[] = ['reHold', 'takeBack', 'startAgain']

export function OwnCubePage(props: OwnCubePageProps) {
  const { live, acts, serverNowMs, liked, onOpenLook, onChoose, seeShowing, round, state, children } = props
  const { brief = false, quietRefusal = false, nudge = null } = props
  const { t } = useTranslation()
  const { settings, clock } = round
  const words = stageWords(t, settings.to, settings.baseColour)
  const hasClock = liked.showClock && settings.pace === 'together' && clock.phase !== 'ready'
  const isTakeHome = live.view !== null && live.view.room.deadlineMs !== null
  const isStuck = live.view?.me.asksForHelp === true
  const onUse = (tool: ToolName) => {
    if (tool === 'look') onOpenLook()
    if (tool === 'stuck') acts.askForHelp(!isStuck)
    if (tool === 'choose') onChoose({ pickedRound: null })
  }
  return (
    <main className={classNames(styles.page, brief && styles.brief)} aria-label={t('bench:page')}>
      <header className={styles.head}>
        <div className={styles.picture}>
          <GoalPicture stage={settings.to} baseColour={settings.baseColour} marks={liked.marks} label={words.picture} />
        </div>
        <div className={styles.words}>
          <p className={styles.over}>
            {t('bench:roundAndStage', { number: round.number, stage: spanWords(t, settings) })}
          </p>
          <h1 className={styles.title}>{words.title}</h1>
          <p className={styles.sentence}>{words.sentence}</p>
        </div>
        {hasClock && (
          <div className={styles.clock}>
            <RoundClock clock={clock} nowMs={serverNowMs} />
          </div>
        )}
      </header>
      <div className={styles.body}>
        {seeShowing}
        {nudge}
        <p className={styles.state} role="status">
          {state}
        </p>
        {live.refusal !== null && !quietRefusal && (
          <div className={styles.refusal}>
            <RefusalLine words={refusalWords(t, live.refusal)} onDismiss={acts.dismiss} />
          </div>
        )}
        {children}
      </div>
      <BenchTools
        onUse={onUse}
        off={[]}
        reHolding={false}
        stuck={isStuck}
        leftOut={isTakeHome ? [...NOT_ON_PAPER, 'stuck'] : [...NOT_ON_PAPER, 'choose']}
        chooseWords={t('bench:rounds.tool')}
      />
    </main>
  )
}
