/** The bench of solo practice: turning, hints, take back, start again, and what follows when the goal is reached. */

import { useCallback, useMemo, useReducer, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { hintStep, TAKE_BACK } from '../../engine/contest/steps.ts'
import type { HintLevel } from '../../engine/method/way/hint-level.ts'
import { GoalPicture } from '../cube/goal-picture.tsx'
import { AskStartAgain, TURNS_WORTH_ASKING } from '../parts/bench-page/ask-start-again.tsx'
import { BenchLayout } from '../parts/bench-page/bench-layout.tsx'
import { useBenchSettings } from '../parts/bench-page/bench-settings.ts'
import { CountTurns } from '../parts/bench-page/count-turns.tsx'
import { CubeInWords } from '../parts/bench-page/cube-in-words.tsx'
import { LookSheet } from '../parts/bench-page/look-sheet.tsx'
import { RefusalLine } from '../parts/bench-page/refusal-line.tsx'
import { RoundHead } from '../parts/bench-page/round-head.tsx'
import { SayTurns } from '../parts/bench-page/say-turns.tsx'
import { TurnRibbon } from '../parts/bench-page/turn-ribbon.tsx'
import type { HandActs } from '../parts/hands/hand-acts.ts'
import { Hands } from '../parts/hands/hands.tsx'
import { HintLadder } from '../parts/hints/hint-ladder.tsx'
import type { TaughtHint } from '../parts/hints/hint-of-try.ts'
import { useHintOfTry, useStepUnderWay } from '../parts/hints/use-hint-of-try.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import { spanWords, stageWords } from '../parts/stage-words.ts'
import { useBreakNote } from './break-note.ts'
import { type PracticeGame, playPractice } from './practice-game.ts'
import { PracticeNext } from './practice-next.tsx'
import { PracticeResult } from './practice-result.tsx'
import { roundOf } from './practice-settings.ts'
import { usePar } from './use-par.ts'

type PlayPracticeProps = {
  readonly first: PracticeGame
  readonly newSeed: () => Uint8Array
  /** Back to the choice of stage and case. */
  readonly onChoose: () => void
}

export function PlayPractice({ first, newSeed, onChoose }: PlayPracticeProps) {
  const { t } = useTranslation()
  const [game, play] = useReducer(playPractice, first)
  const [liked, changeLiked] = useBenchSettings()
  const [open, setOpen] = useState<'look' | 'start-again' | null>(null)
  const [isBreakDue, rested] = useBreakNote()
  const hintButton = useRef<HTMLButtonElement>(null)
  const { settings, current, best } = game
  const round = useMemo(() => roundOf(settings), [settings])
  const par = usePar(game.start, settings.stage)
  const shown = useHintOfTry(game.start, current.steps, NOBODY_TEACHES, round)
  const begun = useStepUnderWay(game.start, current.standing, round)
  const cube = useMemo(
    () => ({ tryNumber: current.number, standing: current.standing, position: current.position }),
    [current.number, current.standing, current.position],
  )

  const isReached = current.reached !== null
  const isWorthAsking = !isReached && current.turns >= TURNS_WORTH_ASKING
  const again = useCallback(() => play({ kind: 'start-again' }), [])
  const acts = useMemo(
    (): HandActs => ({
      turn: (steps) => play({ kind: 'steps', steps }),
      takeBack: () => play({ kind: 'steps', steps: [TAKE_BACK] }),
      startAgain: () => (isWorthAsking ? setOpen('start-again') : again()),
    }),
    [again, isWorthAsking],
  )
  const another = () => play({ kind: 'another-start', seed: newSeed() })
  const pressHint = useCallback(() => hintButton.current?.click(), [])
  const openLook = useCallback(() => setOpen('look'), [])

  const words = stageWords(t, settings.stage, settings.baseColour)
  const picture = (
    <GoalPicture stage={settings.stage} baseColour={settings.baseColour} marks={liked.marks} label={words.picture} />
  )
  const over = settings.caseId === null ? spanWords(t, round) : t(`desk:case.${settings.caseId}`)
  const head = (
    <RoundHead
      over={t('practice:over', { what: over })}
      title={words.title}
      sentence={words.sentence}
      picture={picture}
    />
  )
  return (
    <BenchLayout
      head={
        !isReached ? (
          <HintLadder
            // Another try, or another start, is another ladder.
            key={`${game.start.join()} ${current.number}`}
            position={current.position}
            begun={begun}
            span={round}
            baseColour={settings.baseColour}
            marks={liked.marks}
            levelMax={settings.hints}
            cost={round.hintCost}
            shown={shown}
            onAsk={(level: HintLevel) => play({ kind: 'steps', steps: [hintStep(level)] })}
            canAsk
            button={hintButton}
          >
            {head}
          </HintLadder>
        ) : (
          <PracticeResult made={current} start={game.start} settings={settings} par={par}>
            {head}
          </PracticeResult>
        )
      }
      clock={null}
      line={
        <>
          <TurnRibbon turns={current.standing} reached={isReached} goesOn={!isReached} />
          <CountTurns turns={current.turns} best={best} />
        </>
      }
    >
      <Hands
        cube={cube}
        baseColour={settings.baseColour}
        marks={liked.marks}
        acts={acts}
        canTurn={!isReached}
        canTakeBack={!isReached && current.standing.length > 0}
        canStartAgain={!isReached && current.steps.length > 0}
        shortcuts={liked.shortcuts}
        stuck={false}
        onStuck={null}
        onOpenLook={openLook}
        onHint={pressHint}
        onChoose={onChoose}
        insteadOfTriggers={
          game.refusal !== null ? (
            <RefusalLine words={refusalWords(t, game.refusal)} onDismiss={() => play({ kind: 'dismiss' })} />
          ) : isReached ? (
            <PracticeNext onAgain={again} onAnother={another} />
          ) : isBreakDue ? (
            <RefusalLine words={t('practice:rest')} onDismiss={rested} />
          ) : null
        }
      />
      <CubeInWords
        position={current.position}
        baseColour={settings.baseColour}
        settings={round}
        seen={liked.cubeInWords}
      />
      <SayTurns mine={current} settings={round} countingDown={false} />
      {open === 'start-again' && (
        <AskStartAgain
          turns={current.turns}
          nHints={current.hints.length}
          hintCost={round.hintCost}
          hasList={false}
          hasBest={best !== null}
          onClose={() => setOpen(null)}
          onAgain={() => {
            setOpen(null)
            again()
          }}
        />
      )}
      {open === 'look' && (
        <LookSheet
          liked={liked}
          onChange={changeLiked}
          onLeave={null}
          hints={settings.hints > 0}
          clock={false}
          onClose={() => setOpen(null)}
        />
      )}
    </BenchLayout>
  )
}

const NOBODY_TEACHES: readonly TaughtHint[] = []
