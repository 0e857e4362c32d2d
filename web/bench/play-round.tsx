/** The bench while a round is played: countdown, turning, pause, goal reached. The cube keeps its place through all of them. */

import { useCallback, useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { GoalPicture } from '../cube/goal-picture.tsx'
import { AskStartAgain, TURNS_WORTH_ASKING } from '../parts/bench-page/ask-start-again.tsx'
import { BenchLayout } from '../parts/bench-page/bench-layout.tsx'
import type { BenchSettings } from '../parts/bench-page/bench-settings.ts'
import { CountTurns } from '../parts/bench-page/count-turns.tsx'
import { CubeInWords } from '../parts/bench-page/cube-in-words.tsx'
import { RefusalLine } from '../parts/bench-page/refusal-line.tsx'
import { RoundHead } from '../parts/bench-page/round-head.tsx'
import { SayTurns } from '../parts/bench-page/say-turns.tsx'
import { TurnRibbon } from '../parts/bench-page/turn-ribbon.tsx'
import type { HandActs } from '../parts/hands/hand-acts.ts'
import { Hands } from '../parts/hands/hands.tsx'
import { parName } from '../parts/par-words.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import { spanWords, stageWords } from '../parts/stage-words.ts'
import type { BenchFace } from './bench-face.ts'
import type { BenchScreenProps } from './bench-props.ts'
import { CountDown } from './count-down.tsx'
import { GoalReached } from './goal-reached.tsx'
import { useLongEnough } from './long-enough.ts'
import { RoundClock } from './round-clock.tsx'
import { stateLine } from './state-line.ts'

type PlayRoundProps = Omit<BenchScreenProps, 'onLeave'> & {
  readonly face: Extract<BenchFace, { kind: 'playing' }>
  readonly liked: BenchSettings
  readonly onOpenLook: () => void
}

/** A server nearby has checked the goal long before. */
const CHECKING_MS_UNSAID = 700

export function PlayRound({ live, acts, serverNowMs, face, liked, onOpenLook }: PlayRoundProps) {
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

  const words = stageWords(t, settings.to, settings.baseColour)
  const isOneStage = settings.from === settings.to
  const isTurning = play.phase === 'turning'
  const checksLong = useLongEnough(play.phase === 'checking', CHECKING_MS_UNSAID)
  const goesOn = play.phase === 'turning' || play.phase === 'paused' || play.phase === 'countdown'
  const isReached = play.phase === 'reached' && mine.reached !== null
  const canTryAgain = settings.tries === 'many' && round.clock.phase === 'running'
  const best = view.mine?.best ?? null
  return (
    <BenchLayout
      head={
        <RoundHead
          over={t('bench:roundAndStage', { number: round.number, stage: spanWords(t, settings) })}
          par={
            view.par === null
              ? null
              : { words: parName(t, view.par), briefOver: t('board:round', { number: round.number }) }
          }
          title={words.title}
          sentence={
            isOneStage
              ? words.sentence
              : t('bench:spanSentence', { from: settings.from, to: settings.to, sentence: words.sentence })
          }
          state={stateLine(t, live, play, checksLong)}
          picture={
            <GoalPicture
              stage={settings.to}
              baseColour={settings.baseColour}
              marks={liked.marks}
              label={words.picture}
            />
          }
        />
      }
      clock={liked.showClock ? <RoundClock clock={round.clock} nowMs={serverNowMs} /> : null}
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
        onStuck={acts.askForHelp}
        onOpenLook={onOpenLook}
        insteadOfCube={play.phase === 'countdown' ? <CountDown seconds={play.seconds} /> : null}
        insteadOfTriggers={
          live.refusal !== null ? (
            <RefusalLine words={refusalWords(t, live.refusal)} onDismiss={acts.dismiss} />
          ) : isReached && mine.reached !== null ? (
            <GoalReached
              turns={mine.reached.turns}
              isBest={mine.number > 1 && (best === null || mine.reached.turns <= best.turns)}
              onStartAgain={canTryAgain ? acts.startAgain : null}
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
