/** Whoever chose the screen may still take a cube of their own, as long as nothing was turned. */

import { useTranslation } from 'react-i18next'
import { Button } from '../ui/button.tsx'
import type { FaceProps } from './bench-props.ts'
import styles from './other-cube.module.css'

export function OtherCube({ live, own, onChoose }: Pick<FaceProps, 'live' | 'own' | 'onChoose'>) {
  const { t } = useTranslation()
  const { view, mine } = live
  const hasTurned = mine !== null && (mine.number > 1 || mine.steps.length > 0)
  if (view?.round?.settings.cube !== 'either' || own.cube !== 'screen' || hasTurned) return null
  return (
    <div className={styles.other} data-takes-height>
      <Button look="quiet" onClick={() => onChoose({ cube: null, ready: null })}>
        {t('bench:whichCube.other')}
      </Button>
    </div>
  )
}
