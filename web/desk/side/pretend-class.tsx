/** One press fills the room with simulated students, and another sends them home. Never mixed with real records. */

import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import type { DeskView } from '../../../engine/wire/views.ts'
import { Button } from '../../ui/button.tsx'
import styles from './pretend-class.module.css'

type PretendClassProps = { view: DeskView; onSeat: (seated: boolean) => void }

export function PretendClass({ view, onSeat }: PretendClassProps) {
  const { t } = useTranslation()
  const helpId = useId()
  const isHere = view.seats.some((seat) => seat.pretend)
  return (
    <div className={styles.pretend}>
      <Button look="quiet" icon={isHere ? 'cross' : 'plus'} aria-describedby={helpId} onClick={() => onSeat(!isHere)}>
        {t(isHere ? 'desk:side.pretendSend' : 'desk:side.pretend')}
      </Button>
      <p id={helpId} className={styles.help}>
        {t(isHere ? 'desk:side.pretendHere' : 'desk:side.pretendHelp')}
      </p>
    </div>
  )
}
