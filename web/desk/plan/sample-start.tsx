/** A start as the round would deal it, drawn in this browser and kept by nobody, so that a teacher sees what is chosen. */

import { useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { chachaSource, SEED_BYTES } from '../../../engine/chance/chacha-source.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { casesLeaveAStart, drawStart } from '../../../engine/method/draw-start.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import { Button } from '../../ui/button.tsx'
import styles from './sample-start.module.css'

export function SampleStart({ settings }: { settings: RoundSettings }) {
  const { t } = useTranslation()
  const [seed, setSeed] = useState(drawSeed)
  const { from, to, cases, baseColour } = settings
  const stickers = useMemo(() => sampleStickers({ from, to, cases }, seed), [from, to, cases, seed])
  return (
    <figure className={styles.sample}>
      {stickers !== null && (
        <CubePicture
          stickers={stickers}
          baseColour={baseColour}
          label={t('desk:plan.sampleLabel')}
          className={styles.picture}
        />
      )}
      <figcaption>
        {t('desk:plan.sample')}
        <Button icon="again" onClick={() => setSeed(drawSeed())}>
          {t('desk:plan.another')}
        </Button>
      </figcaption>
    </figure>
  )
}

function sampleStickers(
  { from, to, cases }: Pick<RoundSettings, 'from' | 'to' | 'cases'>,
  seed: Uint8Array,
): Uint8Array | null {
  const span = { from, to }
  const random = chachaSource(seed)
  if (cases === null) return stickersOf(drawStart({ span, random }))
  return casesLeaveAStart(span, cases) ? stickersOf(drawStart({ span, cases, random })) : null
}

function drawSeed(): Uint8Array {
  return crypto.getRandomValues(new Uint8Array(SEED_BYTES))
}
