/** Six re-holds as pictures and letters. Stays open while a child tries them; they cost nothing. */

import { useTranslation } from 'react-i18next'
import type { Turn } from '../../../engine/cube/turns.ts'
import { ReHoldPicture } from './pad-pictures.tsx'
import { RE_HOLDS } from './pad-plan.ts'
import styles from './re-hold-pad.module.css'
import { TurnKey } from './turn-key.tsx'

export function ReHoldPad({ off, onTurn }: { off: boolean; onTurn: (turn: Turn) => void }) {
  const { t } = useTranslation()
  return (
    <section className={styles.pad} dir="ltr" aria-label={t('bench:reHoldPad.label')} data-re-hold-keys>
      {RE_HOLDS.map((reHold) => (
        <TurnKey key={reHold} turn={reHold} picture={<ReHoldPicture reHold={reHold} />} off={off} onTurn={onTurn} />
      ))}
    </section>
  )
}
