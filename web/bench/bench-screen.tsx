/** The child's screen. Chooses the face for what is the case and hands it what it needs; decides nothing itself. */

import { useCallback, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { neverHappens } from '../../engine/result.ts'
import { useBenchSettings } from '../parts/bench-page/bench-settings.ts'
import { LookSheet } from '../parts/bench-page/look-sheet.tsx'
import { Waiting } from '../parts/waiting.tsx'
import { benchFace } from './bench-face.ts'
import type { BenchScreenProps } from './bench-props.ts'
import { EndOfRound } from './end-of-round.tsx'
import { OneMessage } from './one-message.tsx'
import { PlayRound } from './play-round.tsx'
import { WaitForRound } from './wait-for-round.tsx'

export function BenchScreen(props: BenchScreenProps) {
  const [liked, change] = useBenchSettings()
  const [choosingLook, setChoosingLook] = useState(false)
  const { onLeave } = props
  const openLook = useCallback(() => setChoosingLook(true), [])
  return (
    <>
      <Face {...props} liked={liked} onOpenLook={openLook} />
      {choosingLook && (
        <LookSheet
          liked={liked}
          onChange={change}
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

type FaceProps = BenchScreenProps & {
  readonly liked: ReturnType<typeof useBenchSettings>[0]
  readonly onOpenLook: () => void
}

function Face({ live, acts, serverNowMs, onLeave, liked, onOpenLook }: FaceProps) {
  const { t } = useTranslation()
  const face = benchFace(live, serverNowMs)
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
        'taken-over': ['takenOver', acts.takeSeatBack] as const,
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
      return <WaitForRound live={live} acts={acts} face={face} liked={liked} onOpenLook={onOpenLook} />
    case 'playing':
      return (
        <PlayRound
          live={live}
          acts={acts}
          serverNowMs={serverNowMs}
          face={face}
          liked={liked}
          onOpenLook={onOpenLook}
        />
      )
    case 'ended':
      return <EndOfRound live={live} face={face} liked={liked} onOpenLook={onOpenLook} />
    default:
      return neverHappens(face, 'BenchScreen')
  }
}
