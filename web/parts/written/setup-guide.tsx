/**
 * Brings a real cube to the start of a round: the setup turn by turn with a picture after each, pictures of all sides to
 * check by, and one question that shows whether the cube really stands there. Three faces of one screen, one after another.
 *
 * It asks nobody and sends nothing; `onReady` tells that the question was answered.
 */

import { useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import { Button } from '../../ui/button.tsx'
import { CheckPictures } from './check-pictures.tsx'
import { CheckReady } from './check-ready.tsx'
import styles from './setup-guide.module.css'
import { SetupTurns } from './setup-turns.tsx'

export type SetupGuideProps = {
  /** In the hold in which the setup ends. */
  readonly start: CubePosition
  /** Leads from a solved cube held home to the start; face turns and re-holds. */
  readonly setup: readonly Turn[]
  readonly baseColour: Colour
  readonly marks: MarkStyle
  /** Turns of the setup that are done, and what is told when that changes. */
  readonly at: number
  readonly onStep: (at: number) => void
  /** The cube stands at the start, as far as one look at a hidden side can tell. */
  readonly onReady: () => void
}

export function SetupGuide({ start, setup, baseColour, marks, at, onStep, onReady }: SetupGuideProps) {
  const { t } = useTranslation()
  const [face, setFace] = useState<'turns' | 'pictures' | 'question'>('turns')
  const drawing = useMemo(() => ({ baseColour, marks }), [baseColour, marks])
  if (face === 'turns') {
    return (
      <section className={styles.guide} aria-label={t('written:setup.label')}>
        <SetupTurns
          setup={setup}
          at={Math.min(at, setup.length)}
          onStep={onStep}
          onDone={() => setFace('pictures')}
          {...drawing}
        />
      </section>
    )
  }
  if (face === 'pictures') {
    return (
      <section className={styles.guide} aria-label={t('written:setup.label')}>
        <CheckPictures start={start} {...drawing} />
        <div className={styles.acts}>
          <Button onClick={() => setFace('turns')}>{t('written:setup.backToTurns')}</Button>
          <Button look="accent" size="large" onClick={() => setFace('question')}>
            {t('written:setup.ready')}
          </Button>
        </div>
      </section>
    )
  }
  return (
    <section className={styles.guide} aria-label={t('written:setup.label')}>
      <CheckReady start={start} {...drawing} onReady={onReady} onBack={() => setFace('pictures')} />
    </section>
  )
}
