/** The solutions that were sent so far, the newest first, with what came of each. Draws nothing before the first. */

import { useTranslation } from 'react-i18next'
import type { Reached } from '../../engine/contest/round-state.ts'
import { Sign } from '../ui/signs.tsx'
import type { WrittenTry } from './written-tries.ts'
import styles from './written-tries-list.module.css'

type WrittenTriesProps = { readonly tries: readonly WrittenTry[]; readonly best: Reached | null }

export function WrittenTries({ tries, best }: WrittenTriesProps) {
  const { t } = useTranslation()
  if (tries.length === 0) return null
  return (
    <section className={styles.tries}>
      <h2>
        {t('bench:written.tries')}
        {best !== null && <span> · {t('bench:written.best', { count: best.turns })}</span>}
      </h2>
      <ol reversed>
        {[...tries].reverse().map(({ number, turns, reached }) => (
          <li key={number}>
            <span>{t('bench:written.try', { number })}</span>
            <b>{t('common:turns', { count: turns })}</b>
            <span className={styles.came}>
              {reached && <Sign of="reached" className={styles.flag} />}
              {t(reached ? 'bench:written.reached' : 'bench:written.notReached')}
            </span>
          </li>
        ))}
      </ol>
    </section>
  )
}
