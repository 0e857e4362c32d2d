/** A start as the round would deal it, drawn in this browser and kept by nobody, so that a teacher sees what is chosen. */

import { useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { chachaSource, SEED_BYTES } from '../../../engine/chance/chacha-source.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { casesLeaveAStart, drawStart } from '../../../engine/method/draw-start.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import { Button } from '../../ui/button.tsx'
import styles from './sample-start.module.css'
import { useSamplePar } from './use-sample-par.ts'

export function SampleStart({ settings }: { settings: RoundSettings }) {
  const { t } = useTranslation()
  const [seed, setSeed] = useState(drawSeed)
  const { from, to, cases, baseColour } = settings
  const start = useMemo(() => drawSample({ from, to, cases }, seed), [from, to, cases, seed])
  const par = useSamplePar(start, settings)
  return (
    <figure className={styles.sample}>
      {start !== null && (
        <CubePicture
          stickers={stickersOf(start)}
          baseColour={baseColour}
          label={t('desk:plan.sampleLabel')}
          className={styles.picture}
        />
      )}
      <figcaption>
        {t('desk:plan.sample')}
        {par !== null && <b>{t('common:par.proven', { turns: par })}</b>}
        <Button icon="again" onClick={() => setSeed(drawSeed())}>
          {t('desk:plan.another')}
        </Button>
      </figcaption>
    </figure>
  )
}

function drawSample(
  { from, to, cases }: Pick<RoundSettings, 'from' | 'to' | 'cases'>,
  seed: Uint8Array,
): CubePosition | null {
  const span = { from, to }
  const random = chachaSource(seed)
  if (cases === null) return drawStart({ span, random })
  return casesLeaveAStart(span, cases) ? drawStart({ span, cases, random }) : null
}

function drawSeed(): Uint8Array {
  return crypto.getRandomValues(new Uint8Array(SEED_BYTES))
}
