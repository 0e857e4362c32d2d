/** A real cube is brought to the start of the round, and then waits for the signal beside the picture of that start. */

import { useEffect, useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { solvedCube } from '../../engine/cube/cube-position.ts'
import { parseStickers, stickersOf } from '../../engine/cube/stickers.ts'
import { turnOf } from '../../engine/cube/turns.ts'
import type { RoundView } from '../../engine/wire/views.ts'
import { CubePicture } from '../cube/cube-picture.tsx'
import { SetupGuide } from '../parts/written/setup-guide.tsx'
import { Button } from '../ui/button.tsx'
import { Icon } from '../ui/icons.tsx'
import type { BenchFace } from './bench-face.ts'
import type { FaceProps } from './bench-props.ts'
import { useKept } from './kept-value.ts'
import { OwnCubePage } from './own-cube-page.tsx'
import styles from './set-up-cube.module.css'
import { wordsForClockAtSetUp, wordsForNoSetup } from './set-up-cube-words.ts'
import { readKeptNumber } from './written-tries.ts'

type SetUpCubeProps = FaceProps & { readonly face: Extract<BenchFace, { kind: 'setting-up' | 'set-up' }> }

export function SetUpCube({ face, ...page }: SetUpCubeProps) {
  const { t } = useTranslation()
  const { live, acts, liked, onChoose } = page
  const { view, round, kind } = face
  const { baseColour, cube } = round.settings
  const start = useStart(round)
  const setup = useMemo(() => view.setup?.map(turnOf) ?? null, [view.setup])
  // Loading the page again, with a half turned cube in the hands, changes nothing.
  const [nDone, keepDone] = useKept('setup', `${view.me.seatId}.${round.id}`, readKeptNumber)
  const say = (ready: boolean) => {
    if (ready) keepDone(0)
    acts.sayReady(ready)
    onChoose({ ready })
  }
  // Said without a connection, or to a server that has started anew, it is said again.
  const isUnsaid = kind === 'set-up' && live.status === 'seated' && !view.me.ready
  useEffect(() => {
    if (isUnsaid) acts.sayReady(true)
  }, [isUnsaid, acts])
  const isTheOnlyWay = kind === 'setting-up' && view.noSetup
  const onScreen = cube === 'either' && (
    <Button
      look={isTheOnlyWay ? 'accent' : 'quiet'}
      className={isTheOnlyWay ? styles.instead : styles.onScreen}
      onClick={() => onChoose({ cube: 'screen', ready: null })}
    >
      {t('bench:whichCube.onScreen')}
    </Button>
  )
  if (kind === 'set-up') {
    return (
      <OwnCubePage {...page} round={round} state={live.status === 'away' ? t('bench:awayWaiting') : null}>
        <section className={styles.ready} aria-labelledby="set-up">
          <CubePicture
            stickers={stickersOf(start)}
            baseColour={baseColour}
            marks={liked.marks}
            label={t('bench:setUp.picture')}
            className={styles.start}
          />
          <div className={styles.words} role="status">
            <Icon of="tick" />
            <h2 id="set-up">{t('bench:setUp.title')}</h2>
            <p>{t('bench:setUp.sentence')}</p>
          </div>
          <div className={styles.acts}>
            <Button onClick={() => say(false)}>{t('bench:setUp.again')}</Button>
            {onScreen}
          </div>
        </section>
      </OwnCubePage>
    )
  }
  const state = live.status === 'away' ? t('bench:awayWaiting') : wordsForClockAtSetUp(t, view, round)
  return (
    <OwnCubePage {...page} round={round} state={state} brief>
      {setup === null ? (
        <p className={styles.workedOut} role="status">
          {wordsForNoSetup(t, view, round)}
        </p>
      ) : (
        <SetupGuide
          start={start}
          setup={setup}
          baseColour={baseColour}
          marks={liked.marks}
          at={nDone}
          onStep={keepDone}
          onReady={() => say(true)}
        />
      )}
      {onScreen}
    </OwnCubePage>
  )
}

/** @returns the start of a round, which the server has checked */
export function useStart({ start }: Pick<RoundView, 'start'>) {
  return useMemo(() => {
    const read = parseStickers(start)
    return read.ok ? read.value : solvedCube()
  }, [start])
}
