/** The turn pad around whatever stands in its middle: six strips of three, where the six layers are. */

import { memo, type ReactNode } from 'react'
import { useTranslation } from 'react-i18next'
import type { Face } from '../../../engine/cube/faces.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import { classNames } from '../../ui/class-names.ts'
import { ArrowPicture, LayerPicture } from './pad-pictures.tsx'
import { PAD } from './pad-plan.ts'
import { TurnKey } from './turn-key.tsx'
import styles from './turn-pad.module.css'

type TurnPadProps = {
  readonly off: boolean
  readonly halfNext: boolean
  readonly onTurn: (turn: Turn) => void
  readonly onPoint: (turn: Turn | null) => void
  readonly children: ReactNode
}

const PLACES: Readonly<Record<Face, string>> = {
  U: styles.up,
  L: styles.left,
  F: styles.front,
  B: styles.back,
  R: styles.right,
  D: styles.down,
}

export const TurnPad = memo(function TurnPad({ off, halfNext, onTurn, onPoint, children }: TurnPadProps) {
  const { t } = useTranslation()
  const common = { off, onTurn, onPoint }
  return (
    // The cube does not mirror in languages that run from right to left, so neither does its pad.
    <section className={styles.pad} dir="ltr" aria-label={t('bench:pad.label')}>
      {children}
      {PAD.map(({ face, first, half, last }) => (
        <div key={face} className={classNames(styles.strip, PLACES[face])}>
          <TurnKey turn={first.turn} picture={<ArrowPicture arrow={first.arrow} />} {...common} />
          <TurnKey turn={half} picture={<LayerPicture face={face} />} quiet armed={halfNext && !off} {...common} />
          <TurnKey turn={last.turn} picture={<ArrowPicture arrow={last.arrow} />} {...common} />
        </div>
      ))}
      <p className={styles.halfNext} role="status">
        {halfNext && !off && <span>{t('bench:pad.half')}</span>}
      </p>
    </section>
  )
})
