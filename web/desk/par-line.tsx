/** Par for the teacher, always; and whether the class sees it while the round runs. */

import { useTranslation } from 'react-i18next'
import type { DeskView } from '../../engine/wire/views.ts'
import { parWords } from '../parts/par-words.ts'
import { Button } from '../ui/button.tsx'
import type { RoomActs } from './desk-acts.ts'
import styles from './par-line.module.css'

type ParLineProps = { view: Pick<DeskView, 'par' | 'parShown' | 'round'>; acts: Pick<RoomActs, 'showPar'> }

export function ParLine({ view: { par, parShown, round }, acts }: ParLineProps) {
  const { t } = useTranslation()
  if (par === null) return <p className={styles.workedOut}>{t('desk:par.workedOut')}</p>
  const phase = round?.clock.phase
  return (
    <div className={styles.line}>
      <p className={styles.par}>{parWords(t, par)}</p>
      {(phase === 'running' || phase === 'paused') && (
        <Button look="quiet" icon={parShown ? 'hide' : 'show'} onClick={() => acts.showPar(!parShown)}>
          {t(parShown ? 'desk:par.hide' : 'desk:par.show')}
        </Button>
      )}
    </div>
  )
}
