/** A round played on a real cube: the turns are written down and sent, as one whole try. What came of each stands below. */

import { useEffect } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import { WriteSolution } from '../parts/written/write-solution.tsx'
import { Button } from '../ui/button.tsx'
import type { BenchFace } from './bench-face.ts'
import type { FaceProps } from './bench-props.ts'
import { CountDown } from './count-down.tsx'
import { useKept } from './kept-value.ts'
import { useLongEnough } from './long-enough.ts'
import { NudgeLine } from './nudge-line.tsx'
import { OwnCubePage } from './own-cube-page.tsx'
import { SentSolution } from './sent-solution.tsx'
import { useStart } from './set-up-cube.tsx'
import { StartHint } from './start-hint.tsx'
import { stateLine } from './state-line.ts'
import { useNudge } from './use-nudge.ts'
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
  const standing = useNudge(view, mine, play.phase !== 'countdown')

  const isSent = mine.steps.length > 0
  const isReached = mine.reached !== null || mine.reachedHere
  const isLastTry = settings.tries === 'one' && isSent
  const showsSent = isSent && (isLastTry || (isReached && writesAfter !== mine.number))
  const isSending = useLongEnough(mine.nWaiting > 0 && live.status !== 'away', SENDING_MS_UNSAID)
  const setUpAgain = () => {
    acts.sayReady(false)
    onChoose({ ready: false })
  }
  const state = stateLine(t, { live, play, checksLong: isSending, isWriting: true, delayMs })
  return (
    <OwnCubePage
      {...page}
      round={round}
      state={state}
      brief={!showsSent}
      quietRefusal
      nudge={
        <>
          <NudgeLine standing={standing} position={start} baseColour={settings.baseColour} atTheStart />
          {standing?.nudge.kind === 'hint' && (
            <StartHint start={start} level={standing.nudge.level} settings={settings} onPutAway={standing.onPutAway} />
          )}
        </>
      }
    >
      {play.phase === 'countdown' ? (
        <div className={styles.countDown}>
          <CountDown seconds={play.seconds} />
        </div>
      ) : showsSent ? (
        <SentSolution
          mine={mine}
          best={view.mine?.best ?? null}
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
          open={play.phase !== 'paused' && play.phase !== 'time-up' && round.clock.phase === 'running'}
          busy={isSending}
          cameOf={isSent && !isReached ? t('bench:written.notThere', { number: mine.number }) : null}
          refusal={live.refusal === null ? null : refusalWords(t, live.refusal)}
        />
      )}
      {play.phase !== 'countdown' && (
        <>
          <WrittenTries tries={tries} best={view.mine?.best ?? null} />
          <OtherWays settings={settings} mayLeave={!isLastTry} onChoose={onChoose} onSetUp={setUpAgain} />
        </>
      )}
    </OwnCubePage>
  )
}

type OtherWaysProps = Pick<FaceProps, 'onChoose'> & {
  readonly settings: RoundSettings
  /** Whether another try may be made at all. */
  readonly mayLeave: boolean
  readonly onSetUp: () => void
}

/** Back to the setup, or over to the cube on the screen where the round leaves that open. */
function OtherWays({ settings, mayLeave, onChoose, onSetUp }: OtherWaysProps) {
  const { t } = useTranslation()
  if (!mayLeave) return null
  return (
    <div className={styles.acts}>
      <Button look="quiet" onClick={onSetUp}>
        {t('bench:setUp.again')}
      </Button>
      {settings.cube === 'either' && (
        <Button look="quiet" onClick={() => onChoose({ cube: 'screen', ready: null })}>
          {t('bench:whichCube.onScreen')}
        </Button>
      )}
    </div>
  )
}
