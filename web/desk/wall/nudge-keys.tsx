/** Help for one student, or for all: the rungs of the hint ladder, and sentences from a short list. Nothing gives the answer away. */

import { useTranslation } from 'react-i18next'
import { NUDGE_WORDS, type Nudge } from '../../../engine/contest/nudges.ts'
import { HINT_LEVELS } from '../../../engine/method/way/hint-level.ts'
import { Button } from '../../ui/button.tsx'
import { Icon } from '../../ui/icons.tsx'
import styles from './nudge-keys.module.css'

type NudgeKeysProps = {
  readonly onNudge: (nudge: Nudge) => void
  /** The last one that was sent here, to say so; null for none. */
  readonly sent: Nudge | null
}

export function NudgeKeys({ onNudge, sent }: NudgeKeysProps) {
  const { t } = useTranslation()
  return (
    <section className={styles.nudges}>
      <h3>{t('desk:nudge.title')}</h3>
      <div className={styles.hints}>
        {HINT_LEVELS.map((level) => (
          <Button key={level} onClick={() => onNudge({ kind: 'hint', level })}>
            {t('desk:nudge.hint', { level })}
          </Button>
        ))}
      </div>
      <ul className={styles.words}>
        {NUDGE_WORDS.map((words) => (
          <li key={words}>
            <button type="button" onClick={() => onNudge({ kind: 'words', words })}>
              {t(`common:nudge.${words}`)}
              <Icon of="onward" />
            </button>
          </li>
        ))}
      </ul>
      <p className={styles.sent} role="status">
        {sent !== null && t('desk:nudge.sent')}
      </p>
    </section>
  )
}
