/** In the room, no round yet: a solved cube to turn as one likes. Also after a round was called off. */

import { useTranslation } from 'react-i18next'
import { BenchLayout } from '../parts/bench-page/bench-layout.tsx'
import type { BenchSettings } from '../parts/bench-page/bench-settings.ts'
import { CubeInWords } from '../parts/bench-page/cube-in-words.tsx'
import { RoundHead } from '../parts/bench-page/round-head.tsx'
import { Hands } from '../parts/hands/hands.tsx'
import type { BenchFace } from './bench-face.ts'
import type { BenchScreenProps } from './bench-props.ts'
import { usePracticeCube } from './practice-cube.ts'
import { codeInSyllables } from './room-code-words.ts'
import styles from './wait-for-round.module.css'

type WaitForRoundProps = Pick<BenchScreenProps, 'live' | 'acts'> & {
  readonly face: Extract<BenchFace, { kind: 'waiting' | 'voided' }>
  readonly liked: BenchSettings
  readonly onOpenLook: () => void
}

export function WaitForRound({ live, acts, face, liked, onOpenLook }: WaitForRoundProps) {
  const { t } = useTranslation()
  const practice = usePracticeCube()
  const { view, kind } = face
  const baseColour = view.round?.settings.baseColour ?? 'white'
  const hasTurned = practice.cube.standing.length > 0
  return (
    <BenchLayout
      head={
        <RoundHead
          over={
            <>
              {t('bench:waiting.room', { code: codeInSyllables(view.room.code) })}
              {kind === 'voided' && ` · ${view.me.name}`}
            </>
          }
          title={kind === 'voided' ? t('bench:voided.title') : t('bench:waiting.title', { name: view.me.name })}
          sentence={kind === 'voided' ? t('bench:voided.sentence') : t('bench:waiting.sentence')}
          state={live.status === 'away' ? t('bench:awayWaiting') : null}
        />
      }
      clock={null}
      line={<p className={styles.how}>{t('bench:waiting.how')}</p>}
    >
      <Hands
        cube={practice.cube}
        baseColour={baseColour}
        marks={liked.marks}
        acts={practice.acts}
        canTurn
        canTakeBack={hasTurned}
        canStartAgain={hasTurned}
        shortcuts={liked.shortcuts}
        stuck={view.me.asksForHelp}
        onStuck={acts.askForHelp}
        onOpenLook={onOpenLook}
      />
      <CubeInWords position={practice.cube.position} baseColour={baseColour} settings={null} seen={liked.cubeInWords} />
    </BenchLayout>
  )
}
