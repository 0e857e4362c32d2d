/** Who waits at the door. In sight wherever the teacher is: a child stands outside. */

import { useTranslation } from 'react-i18next'
import type { KnockView } from '../../../engine/wire/views.ts'
import { Button } from '../../ui/button.tsx'
import styles from './knocks.module.css'

type KnocksProps = {
  readonly knocks: readonly KnockView[]
  readonly onAnswer: (knockId: string, letIn: boolean) => void
}

export function Knocks({ knocks, onAnswer }: KnocksProps) {
  const { t } = useTranslation()
  return (
    <section className={styles.knocks} aria-live="polite" hidden={knocks.length === 0}>
      <div className={styles.head}>
        <h2>{t('desk:door.waiting', { count: knocks.length })}</h2>
        {knocks.length > 1 && (
          <Button
            look="quiet"
            onClick={() => {
              for (const { knockId } of knocks) onAnswer(knockId, true)
            }}
          >
            {t('desk:door.letAllIn')}
          </Button>
        )}
      </div>
      <ul>
        {knocks.map(({ knockId, name, moves }) => (
          <li key={knockId}>
            <p>
              <b>{name}</b> {t(moves ? 'desk:door.wantsToMove' : 'desk:door.wantsIn')}
            </p>
            <Button icon="tick" onClick={() => onAnswer(knockId, true)}>
              {t('desk:door.letIn')}
              <span className="visually-hidden"> {name}</span>
            </Button>
            <Button look="quiet" onClick={() => onAnswer(knockId, false)}>
              {t('desk:door.sendAway')}
              <span className="visually-hidden"> {name}</span>
            </Button>
          </li>
        ))}
      </ul>
    </section>
  )
}
