/** A round played on a real cube: the turns are written down and sent, as one whole try. What came of each stands below. */

import { useEffect } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import type { TaughtHint } from '../parts/hints/hint-of-try.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import { WriteSolution } from '../parts/written/write-solution.tsx'
import type { HintsOfWriting } from '../parts/written/writing-hint.tsx'
import { Button } from '../ui/button.tsx'
import type { BenchFace } from './bench-face.ts'
import type { FaceProps } from './bench-props.ts'
import { CountDown } from './count-down.tsx'
import { useKept } from './kept-value.ts'
import { useLongEnough } from './long-enough.ts'
import { NudgeLines } from './nudge-lines.tsx'
import { OwnCubePage } from './own-cube-page.tsx'
import { SentSolution } from './sent-solution.tsx'
import { useStart } from './set-up-cube.tsx'
import { StartHint, StartHintAway } from './start-hint.tsx'
import { stateLine } from './state-line.ts'
import { type ShownNudges, useNudges } from './use-nudges.ts'
import { useWrittenHints } from './use-written-hints.ts'
import styles from './write-round.module.css'
import { readKeptNumber, readKeptText, readWrittenTries, withWrittenTry } from './written-tries.ts'
import { WrittenTries } from './written-tries-list.tsx'

type WriteRoundProps = FaceProps & { readonly face: Extract<BenchFace, { kind: 'playing' | 'writing' }> }

/** A server nearby has taken the turns long before. */
const SENDING_MS_UNSAID = 300

export function WriteRound({ face, ...page }: WriteRoundProps) {
  const { t } = useTranslation()
  const { live, acts, liked, onChoose, delayMs } = page
  const { view, round, mine, play } = face
  const { settings } = round
  const start = useStart(round)
  const of = `${view.me.seatId}.${round.id}`
  const [text, keepText] = useKept('text', of, readKeptText)
  const [tries, keepTries] = useKept('tries', of, readWrittenTries)
  const [writesAfter, keepWritesAfter] = useKept('another', of, readKeptNumber)
  useEffect(() => {
    const next = withWrittenTry(tries, mine)
    if (next !== tries) keepTries(next)
  }, [tries, mine, keepTries])
  const nudges = useNudges(view, mine, play.phase !== 'countdown')
  const hints = useWrittenHints(of, settings, mine)

  const { isSent, isReached, isShort, isLastTry, isOpen } = howFar(face)
  const showsSent = isSent && (isLastTry || (isReached && writesAfter !== mine.number))
  const isSending = useLongEnough(mine.nWaiting > 0 && live.status !== 'away', SENDING_MS_UNSAID)
  const setUpAgain = () => {
    acts.sayReady(false)
    onChoose({ ready: false })
  }
  const goToScreen = () => {
    hints.takeAlong(acts)
    onChoose({ cube: 'screen', ready: null })
  }
  const state = stateLine(t, { live, play, checksLong: isSending, isWriting: true, delayMs })
  return (
    <OwnCubePage
      {...page}
      round={round}
      state={state}
      brief={!showsSent}
      quietRefusal
      nudge={<TeacherSays nudges={nudges} start={start} settings={settings} hasLadder={hints.ofThisTry !== null} />}
    >
      {play.phase === 'countdown' ? (
        <div className={styles.countDown}>
          <CountDown seconds={play.seconds} />
        </div>
      ) : showsSent ? (
        <SentSolution
          mine={mine}
          best={view.mine?.best ?? null}
          hintCost={settings.hintCost}
          onAnother={
            isLastTry || round.clock.phase !== 'running'
              ? null
              : () => {
                  keepText('')
                  keepWritesAfter(mine.number)
                }
          }
          isAlone={settings.pace === 'alone'}
        />
      ) : (
        <WriteSolution
          // After a try that reached the goal the field is empty; after another one the text stays to be put right.
          key={writesAfter}
          start={start}
          span={settings}
          baseColour={settings.baseColour}
          marks={liked.marks}
          firstText={text}
          onWrite={keepText}
          onSend={acts.sendWritten}
          hints={withTaught(hints.ofThisTry, nudges)}
          open={isOpen}
          busy={isSending}
          cameOf={isShort ? t('bench:written.notThere', { number: mine.number }) : null}
          refusal={live.refusal === null ? null : refusalWords(t, live.refusal)}
        />
      )}
      {play.phase !== 'countdown' && (
        <>
          <WrittenTries tries={tries} best={view.mine?.best ?? null} />
          {!isLastTry && (
            <OtherWays
              onSetUp={setUpAgain}
              // What was asked for goes along, and only a round that runs takes it.
              onScreen={settings.cube === 'either' && (isOpen || hints.asked.length === 0) ? goToScreen : null}
            />
          )}
        </>
      )}
    </OwnCubePage>
  )
}

type TeacherSaysProps = {
  readonly nudges: ShownNudges
  readonly start: CubePosition
  readonly settings: RoundSettings
  /** Hints can be asked for: one that was put away is among those beside the writing. */
  readonly hasLadder: boolean
}

function TeacherSays({ nudges, start, settings, hasLadder }: TeacherSaysProps) {
  const putAway = nudges.hint === null && !hasLadder ? nudges.teacherHint(highestTaught(nudges.taught)?.number) : null
  return (
    <>
      <NudgeLines nudges={nudges} position={start} baseColour={settings.baseColour} atTheStart />
      {nudges.hint !== null && (
        <StartHint start={start} level={nudges.hint.level} settings={settings} onPutAway={nudges.hint.onPutAway} />
      )}
      {putAway !== null && <StartHintAway onTakeOut={putAway.onTakeOut} />}
    </>
  )
}

/** What the teacher sent for the start is known beside the writing, too. */
function withTaught(hints: HintsOfWriting | null, { taught, hint }: ShownNudges): HintsOfWriting | null {
  const highest = highestTaught(taught)
  if (hints === null || highest === null) return hints
  return { ...hints, taught: { level: highest.level, onTakeOut: () => hint?.onPutAway() } }
}

/** The highest rung that the teacher has sent, and of equal ones the last. */
function highestTaught(taught: readonly TaughtHint[]): TaughtHint | null {
  return taught.reduce<TaughtHint | null>(
    (best, hint) => (best === null || hint.level >= best.level ? hint : best),
    null,
  )
}

/** How far this child is, and whether the round takes steps now. */
function howFar({ mine, play, round: { settings, clock } }: WriteRoundProps['face']) {
  const isSent = mine.steps.length > 0
  const isReached = mine.reached !== null || mine.reachedHere
  return {
    isSent,
    isReached,
    /** The last try went out and missed the goal. */
    isShort: isSent && !isReached,
    isLastTry: settings.tries === 'one' && isSent,
    isOpen: play.phase !== 'paused' && play.phase !== 'time-up' && clock.phase === 'running',
  }
}

type OtherWaysProps = {
  readonly onSetUp: () => void
  /** Null where the round does not leave it open. */
  readonly onScreen: (() => void) | null
}

/** Back to the setup, or over to the cube on the screen. */
function OtherWays({ onSetUp, onScreen }: OtherWaysProps) {
  const { t } = useTranslation()
  return (
    <div className={styles.acts}>
      <Button look="quiet" onClick={onSetUp}>
        {t('bench:setUp.again')}
      </Button>
      {onScreen !== null && (
        <Button look="quiet" onClick={onScreen}>
          {t('bench:whichCube.onScreen')}
        </Button>
      )}
    </div>
  )
}
