/** Par in the still column: covered by hatching until it is shown. It takes the same room in all its states. */

import { useTranslation } from 'react-i18next'
import type { ParView } from '../../engine/wire/views.ts'
import styles from './par-fact.module.css'

type ParFactProps = { par: ParView | null; isOver: boolean; className: string | undefined }

export function ParFact({ par, isOver, className }: ParFactProps) {
  const { t } = useTranslation()
  if (par === null) {
    // Over, and still not worked out: there is nothing under the cover.
    if (isOver) return <div className={className} />
    return (
      <div className={className}>
        <i className={styles.cover} />
        <p>{t('board:par.covered')}</p>
      </div>
    )
  }
  return (
    <dl className={className}>
      <div className={styles.par}>
        <dt>{t(par.proven ? 'board:par.name' : 'board:par.bestKnown')}</dt>
        <dd className={styles.figure}>
          <b>{par.turns}</b> {!par.proven && <small>{t('common:par.atLeast', { turns: par.lowerBound })}</small>}
        </dd>
      </div>
    </dl>
  )
}
