/** One press fills the room with simulated students, and another sends them home. Never mixed with real records. */

import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import { isLastLayerStage } from '../../../engine/method/cases.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import { Button } from '../../ui/button.tsx'
import styles from './pretend-class.module.css'

type PretendClassProps = { view: DeskView; onSeat: (seated: boolean) => void }

export function PretendClass({ view, onSeat }: PretendClassProps) {
  const { t } = useTranslation()
  const helpId = useId()
  const isHere = view.seats.some((seat) => seat.pretend)
  const mayCome = isLastLayerStage(view.settings.from)
  const help = isHere ? 'desk:side.pretendHere' : mayCome ? 'desk:side.pretendHelp' : 'desk:side.pretendStage'
  return (
    <div className={styles.pretend}>
      <Button
        look="quiet"
        icon={isHere ? 'cross' : 'plus'}
        // Still reached by the keyboard, so that the reason is heard.
        aria-disabled={!isHere && !mayCome}
        aria-describedby={helpId}
        onClick={() => {
          if (isHere || mayCome) onSeat(!isHere)
        }}
      >
        {t(isHere ? 'desk:side.pretendSend' : 'desk:side.pretend')}
      </Button>
      <p id={helpId} className={styles.help}>
        {t(help)}
      </p>
    </div>
  )
}
