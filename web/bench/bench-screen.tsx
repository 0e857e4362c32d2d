/**
 * The child's screen. Chooses the face for what is the case and hands it what it needs; decides nothing itself. What the
 * teacher shows lies over the face, which stays as it is beneath: no turn, no written letter, no step of a setup is lost.
 */

import { useCallback, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundId } from '../../engine/contest/ids.ts'
import { neverHappens } from '../../engine/result.ts'
import { AwayLine } from '../parts/away-line.tsx'
import { useBenchSettings } from '../parts/bench-page/bench-settings.ts'
import { LookSheet } from '../parts/bench-page/look-sheet.tsx'
import { FollowShowing } from '../parts/showing/follow-showing.tsx'
import { Waiting } from '../parts/waiting.tsx'
import { type BenchFace, benchFace } from './bench-face.ts'
import type { BenchScreenProps, FaceProps } from './bench-props.ts'
import { ChooseRound } from './choose-round.tsx'
import { EndOfRound } from './end-of-round.tsx'
import { OneMessage } from './one-message.tsx'
import { useOwnBest } from './own-best.ts'
import { useOwnChoices } from './own-choices.ts'
import { PlayRound } from './play-round.tsx'
import { SeeShowing } from './see-showing.tsx'
import { SetUpCube } from './set-up-cube.tsx'
import { useShowingInFront } from './showing-put-away.ts'
import { WaitForRound } from './wait-for-round.tsx'
import { WhichCube } from './which-cube.tsx'
import { WriteRound } from './write-round.tsx'

export function BenchScreen(props: BenchScreenProps) {
  const { live, acts, onLeave, serverNowMs, delayMs } = props
  const [liked, change] = useBenchSettings()
  const askForRound = useCallback((round: string) => void acts.chooseRound(round as RoundId), [acts])
  const [own, onChoose] = useOwnChoices(live, askForRound)
  const best = useOwnBest(live.view, live.mine)
  const [choosingLook, setChoosingLook] = useState(false)
  const openLook = useCallback(() => setChoosingLook(true), [])

  const face = benchFace(live, own, serverNowMs)
  const showing = hasSeat(face) ? (live.view?.showing ?? null) : null
  const [follows, putInFront] = useShowingInFront(showing)
  const settings = live.view?.round?.settings
  const page: FaceProps = {
    live,
    acts,
    serverNowMs,
    delayMs,
    // The keys of the keyboard do not turn what is not seen.
    liked: follows ? { ...liked, shortcuts: false } : liked,
    onOpenLook: openLook,
    own,
    onChoose,
    seeShowing: showing === null ? null : <SeeShowing onSee={() => putInFront(true)} />,
  }
  return (
    <>
      <div hidden={follows} style={follows ? undefined : { display: 'contents' }}>
        <Face face={face} page={page} best={best} onLeave={onLeave} />
      </div>
      {follows && showing !== null && (
        <FollowShowing showing={showing} marks={liked.marks} onHide={() => putInFront(false)} />
      )}
      {follows && (
        // The page beneath says it in its own place.
        <AwayLine away={live.status === 'away'} outOfDate={false} />
      )}
      {choosingLook && (
        <LookSheet
          liked={liked}
          onChange={change}
          hints={settings !== undefined && settings.hints > 0}
          clock={settings?.pace !== 'alone'}
          delayMs={delayMs}
          onClose={() => setChoosingLook(false)}
          onLeave={() => {
            setChoosingLook(false)
            onLeave()
          }}
        />
      )}
    </>
  )
}

function hasSeat({ kind }: BenchFace): boolean {
  return kind !== 'connecting' && kind !== 'out-of-date' && kind !== 'gone'
}

type ChosenFaceProps = {
  readonly face: BenchFace
  readonly page: FaceProps
  readonly best: ReturnType<typeof useOwnBest>
  readonly onLeave: () => void
}

function Face({ face, page, best, onLeave }: ChosenFaceProps) {
  const { t } = useTranslation()
  switch (face.kind) {
    case 'connecting':
      return <Waiting words={t('common:connecting')} />
    case 'out-of-date':
      return (
        <OneMessage
          title={t('common:outOfDate')}
          button={t('common:reload')}
          onPress={() => window.location.reload()}
        />
      )
    case 'gone': {
      const [words, onPress] = {
        'taken-over': ['takenOver', page.acts.takeSeatBack] as const,
        removed: ['removed', onLeave] as const,
        'room-closed': ['roomClosed', onLeave] as const,
      }[face.reason]
      return (
        <OneMessage
          title={t(`bench:gone.${words}.title`)}
          sentence={t(`bench:gone.${words}.sentence`)}
          button={t(`bench:gone.${words}.button`)}
          onPress={onPress}
        />
      )
    }
    case 'waiting':
    case 'voided':
      return <WaitForRound {...page} face={face} />
    case 'rounds':
      return <ChooseRound {...page} face={face} />
    case 'which-cube':
      return <WhichCube {...page} face={face} />
    case 'setting-up':
    case 'set-up':
      return <SetUpCube {...page} face={face} />
    case 'playing':
      return <PlayRound {...page} face={face} />
    case 'writing':
      return <WriteRound {...page} face={face} />
    case 'ended':
      return <EndOfRound {...page} face={face} best={best} />
    default:
      return neverHappens(face, 'BenchScreen')
  }
}
