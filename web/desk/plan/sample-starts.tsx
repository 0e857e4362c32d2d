/** Three starts as the round would deal them, each with its par, so that a teacher sees what is chosen. */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { SEED_BYTES } from '../../../engine/chance/chacha-source.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import { Button } from '../../ui/button.tsx'
import styles from './sample-starts.module.css'
import type { ParTablesState } from './use-par-tables.ts'
import { useSampleStarts } from './use-sample-starts.ts'

type SampleStartsProps = { settings: RoundSettings; pars: ParTablesState; onAnyPar: () => void }

export function SampleStarts({ settings, pars, onAnyPar }: SampleStartsProps) {
  const { t } = useTranslation()
  const [seed, setSeed] = useState(drawSeed)
  const samples = useSampleStarts(settings, pars.tables, seed)
  if (samples.state === 'none') {
    return (
      <div className={styles.none} role="status">
        <p>{t('desk:plan.sampleNone')}</p>
        <Button onClick={onAnyPar}>{t('desk:plan.sampleAnyPar')}</Button>
      </div>
    )
  }
  return (
    <section className={styles.samples} aria-label={t('desk:plan.samples')} aria-busy={samples.state === 'drawing'}>
      <p className={styles.words}>{t('desk:plan.samples')}</p>
      <ol className={styles.row}>
        {samples.starts.map(({ start, par }, index) => (
          // A sample has no name of its own: it is the first, the second or the third.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above.
          <li key={index}>
            <figure>
              <CubePicture
                stickers={stickersOf(start)}
                baseColour={settings.baseColour}
                label={t('desk:plan.sampleLabel', { number: index + 1 })}
                className={styles.picture}
              />
              {par !== null && <figcaption>{t('common:par.proven', { turns: par })}</figcaption>}
            </figure>
          </li>
        ))}
      </ol>
      <Button icon="again" onClick={() => setSeed(drawSeed())}>
        {t('desk:plan.others')}
      </Button>
    </section>
  )
}

function drawSeed(): Uint8Array {
  return crypto.getRandomValues(new Uint8Array(SEED_BYTES))
}
