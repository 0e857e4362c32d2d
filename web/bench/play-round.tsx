/** The bench while a round is played: countdown, turning, pause, goal reached. The cube keeps its place through all of them. */

import { useCallback, useMemo, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { AskStartAgain, TURNS_WORTH_ASKING } from '../parts/bench-page/ask-start-again.tsx'
import { BenchLayout } from '../parts/bench-page/bench-layout.tsx'
import { CountTurns } from '../parts/bench-page/count-turns.tsx'
import { CubeInWords } from '../parts/bench-page/cube-in-words.tsx'
import { RefusalLine } from '../parts/bench-page/refusal-line.tsx'
import { SayTurns } from '../parts/bench-page/say-turns.tsx'
import { TurnRibbon } from '../parts/bench-page/turn-ribbon.tsx'
import type { HandActs } from '../parts/hands/hand-acts.ts'
import { Hands } from '../parts/hands/hands.tsx'
import { HintLadder } from '../parts/hints/hint-ladder.tsx'
import { useHintOfTry, useStepUnderWay } from '../parts/hints/use-hint-of-try.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import type { BenchFace } from './bench-face.ts'
import type { FaceProps } from './bench-props.ts'
import { CountDown } from './count-down.tsx'
import { GoalReached } from './goal-reached.tsx'
import { useLongEnough } from './long-enough.ts'
import { NudgeLines } from './nudge-lines.tsx'
import { OtherCube } from './other-cube.tsx'
import { PlayHead } from './play-head.tsx'
import { RoundClock } from './round-clock.tsx'
import { useStart } from './set-up-cube.tsx'
import { stateLine } from './state-line.ts'
import { useNudges } from './use-nudges.ts'

type PlayRoundProps = FaceProps & { readonly face: Extract<BenchFace, { kind: 'playing' | 'writing' }> }

/** A server nearby has checked the goal long before. */
const CHECKING_MS_UNSAID = 700

export function PlayRound(props: PlayRoundProps) {
  const { live, acts, serverNowMs, face, liked, onOpenLook, own, onChoose, seeShowing, delayMs } = props
  const { t } = useTranslation()
  const { view, round, mine, play } = face
  const { settings } = round
  const [asking, setAsking] = useState(false)
  const cube = useMemo(
    () => ({ tryNumber: mine.number, standing: mine.standing, position: mine.position }),
    [mine.number, mine.standing, mine.position],
  )

  const isWorthAsking = mine.reached === null && mine.turns >= TURNS_WORTH_ASKING
  const startAgain = useCallback(() => (isWorthAsking ? setAsking(true) : acts.startAgain()), [acts, isWorthAsking])
  const handActs = useMemo(
    (): HandActs => ({ turn: acts.turn, takeBack: acts.takeBack, startAgain }),
    [acts, startAgain],
  )

  const hintButton = useRef<HTMLButtonElement>(null)
  const pressHint = useCallback(() => hintButton.current?.click(), [])
  const nudges = useNudges(view, mine, play.phase !== 'countdown')
  const start = useStart(round)
  const shown = useHintOfTry(start, mine.steps, nudges.taught, settings)
  const begun = useStepUnderWay(start, mine.standing, settings)
  const isAlone = settings.pace === 'alone'
  const pickRound = useCallback(() => onChoose({ pickedRound: null }), [onChoose])

  const isTurning = play.phase === 'turning'
  const checksLong = useLongEnough(play.phase === 'checking', CHECKING_MS_UNSAID)
  const goesOn = play.phase === 'turning' || play.phase === 'paused' || play.phase === 'countdown'
  const isReached = play.phase === 'reached' && mine.reached !== null
  const canTryAgain = settings.tries === 'many' && round.clock.phase === 'running'
  const best = view.mine?.best ?? null
  return (
    <BenchLayout
      head={
        <HintLadder
          // Another try is another ladder.
          key={`${round.id} ${mine.number}`}
          position={mine.position}
          begun={begun}
          span={settings}
          baseColour={settings.baseColour}
          marks={liked.marks}
          levelMax={isReached ? 0 : settings.hints}
          cost={settings.hintCost}
          shown={shown}
          onAsk={acts.askForHint}
          canAsk={isTurning}
          hasClock
          fromTeacher={nudges.teacherHint(shown?.taught)}
          button={hintButton}
        >
          <PlayHead view={view} round={round} liked={liked} state={stateLine(t, { live, play, checksLong, delayMs })} />
        </HintLadder>
      }
      clock={liked.showClock && !isAlone ? <RoundClock clock={round.clock} nowMs={serverNowMs} /> : null}
      note={
        <>
          {seeShowing}
          <NudgeLines nudges={nudges} position={mine.position} baseColour={settings.baseColour} />
          <OtherCube live={live} own={own} onChoose={onChoose} />
        </>
      }
      line={
        <>
          <TurnRibbon turns={mine.standing} reached={isReached} goesOn={goesOn} />
          <CountTurns turns={mine.turns} best={best?.turns ?? null} />
        </>
      }
    >
      <Hands
        cube={cube}
        baseColour={settings.baseColour}
        marks={liked.marks}
        acts={handActs}
        canTurn={isTurning}
        canTakeBack={isTurning && settings.takeBack && mine.standing.length > 0}
        canStartAgain={isTurning && canTryAgain && mine.steps.length > 0}
        shortcuts={liked.shortcuts}
        stuck={view.me.asksForHelp}
        onStuck={isAlone ? null : acts.askForHelp}
        onOpenLook={onOpenLook}
        {...(isAlone ? { onChoose: pickRound, chooseWords: t('bench:rounds.tool') } : {})}
        onHint={pressHint}
        ringed={nudges.ringed}
        insteadOfCube={play.phase === 'countdown' ? <CountDown seconds={play.seconds} /> : null}
        insteadOfTriggers={
          live.refusal !== null ? (
            <RefusalLine words={refusalWords(t, live.refusal)} onDismiss={acts.dismiss} />
          ) : isReached && mine.reached !== null ? (
            <GoalReached
              turns={mine.reached.turns}
              isBest={mine.number > 1 && (best === null || mine.reached.turns <= best.turns)}
              onStartAgain={canTryAgain ? acts.startAgain : null}
              isAlone={isAlone}
            />
          ) : null
        }
      />
      {play.phase !== 'countdown' && (
        <CubeInWords
          position={mine.position}
          baseColour={settings.baseColour}
          settings={settings}
          seen={liked.cubeInWords}
        />
      )}
      <SayTurns mine={mine} settings={settings} countingDown={play.phase === 'countdown'} />
      {asking && (
        <AskStartAgain
          turns={mine.turns}
          nHints={mine.hints.length}
          hintCost={settings.hintCost}
          hasList
          hasBest={best !== null}
          onClose={() => setAsking(false)}
          onAgain={() => {
            setAsking(false)
            acts.startAgain()
          }}
        />
      )}
    </BenchLayout>
  )
}
