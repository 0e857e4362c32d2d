/** In the room, no round yet: a solved cube to turn as one likes. Also after a round was called off. */

import { useTranslation } from 'react-i18next'
import { BenchLayout } from '../parts/bench-page/bench-layout.tsx'
import { CubeInWords } from '../parts/bench-page/cube-in-words.tsx'
import { RoundHead } from '../parts/bench-page/round-head.tsx'
import { Hands } from '../parts/hands/hands.tsx'
import type { BenchFace } from './bench-face.ts'
import type { FaceProps } from './bench-props.ts'
import { OtherCube } from './other-cube.tsx'
import { usePracticeCube } from './practice-cube.ts'
import { codeInSyllables } from './room-code-words.ts'
import styles from './wait-for-round.module.css'

type WaitForRoundProps = FaceProps & { readonly face: Extract<BenchFace, { kind: 'waiting' | 'voided' }> }

export function WaitForRound({ live, acts, face, liked, onOpenLook, own, onChoose, seeShowing }: WaitForRoundProps) {
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
      note={
        <>
          {seeShowing}
          <OtherCube live={live} own={own} onChoose={onChoose} />
        </>
      }
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
