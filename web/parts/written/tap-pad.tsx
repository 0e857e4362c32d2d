/** Compact keys for writing turns: letters, endings, the two triggers, and one that takes the last turn away. */

import { useTranslation } from 'react-i18next'
import { TriggerBar } from '../ribbon/trigger-bar.tsx'
import { withPrimes } from '../turn-words.ts'
import styles from './tap-pad.module.css'
import { PAD_ENDINGS, PAD_LETTERS, type PadKey } from './tap-pad-text.ts'

export function TapPad({ onKey }: { readonly onKey: (key: PadKey) => void }) {
  const { t } = useTranslation()
  return (
    <section className={styles.pad} dir="ltr" aria-label={t('written:pad.label')}>
      {PAD_LETTERS.map((letter) => (
        <button key={letter} type="button" className={styles.key} onClick={() => onKey(letter)}>
          {letter}
        </button>
      ))}
      {PAD_ENDINGS.map((ending) => (
        <button
          key={ending}
          type="button"
          className={styles.ending}
          aria-label={t(`written:pad.${ENDING_WORDS[ending]}`)}
          onClick={() => onKey(ending)}
        >
          {withPrimes(ending)}
        </button>
      ))}
      <button type="button" className={styles.erase} onClick={() => onKey('erase')}>
        <svg className={styles.icon} viewBox="0 0 24 24" aria-hidden="true">
          <path d="M9 5h11v14H9l-6-7zM12 9.500l5 5M17 9.500l-5 5" />
        </svg>
        <span>{t('written:pad.erase')}</span>
      </button>
      {(['left', 'right'] as const).map((side) => (
        <button key={side} type="button" className={styles.trigger} onClick={() => onKey(side)}>
          <span>{t(`bench:triggers.${side}`)}</span>
          <TriggerBar side={side} />
        </button>
      ))}
    </section>
  )
}

const ENDING_WORDS = { "'": 'back', '2': 'half', w: 'wide' } as const
