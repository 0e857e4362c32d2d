/** In a round for real cubes: how many show the start already, or why there is no setup. */

import { useTranslation } from 'react-i18next'
import { turnOf } from '../../engine/cube/turns.ts'
import type { DeskView } from '../../engine/wire/views.ts'
import { writtenTurn } from '../parts/turn-words.ts'
import styles from './real-cubes.module.css'

export function RealCubes({
  view: { round, setup, seats },
}: {
  readonly view: Pick<DeskView, 'round' | 'setup' | 'seats'>
}) {
  const { t } = useTranslation()
  if (round === null || round.settings.cube === 'screen' || round.clock.phase === 'void') return null
  if (setup?.kind === 'none') return <p className={styles.line}>{t('desk:realCubes.none')}</p>
  const nReady = seats.filter(({ ready }) => ready).length
  return (
    <div className={styles.line}>
      <p>
        <b>{nReady}</b> {t('desk:realCubes.ready', { count: seats.length })}
      </p>
      {setup !== null && (
        <p className={styles.setup} dir="ltr">
          {t('desk:realCubes.setup')} <code>{setup.turns.map((name) => writtenTurn(turnOf(name))).join(' ')}</code>
        </p>
      )}
    </div>
  )
}
