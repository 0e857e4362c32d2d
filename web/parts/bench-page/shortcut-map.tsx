/** The map of the keyboard, in words. The letters are the turns' own. */

import { useTranslation } from 'react-i18next'
import styles from './shortcut-map.module.css'

/** @param hints whether hints can be asked for, so that their key is there */
export function ShortcutMap({ hints }: { hints: boolean }) {
  const { t } = useTranslation()
  const rows: readonly (readonly [keys: string, does: string])[] = [
    ['U R F D L B', t('bench:map.faces')],
    [t('bench:map.shift'), t('bench:map.back')],
    ['2', t('bench:map.half')],
    ['1 3', t('bench:map.triggers')],
    ['X Y Z', t('bench:map.reHolds')],
    ['M E S', t('bench:map.slices')],
    [t('bench:map.backspace'), t('bench:map.takeBack')],
    [t('bench:map.arrows'), t('bench:map.around')],
    ['0', t('bench:map.front')],
    [t('bench:map.escape'), t('bench:map.drop')],
    ...(hints ? ([['H', t('hints:map')]] as const) : []),
  ]
  return (
    <dl className={styles.map}>
      {rows.map(([keys, does]) => (
        <div key={does} className={styles.row}>
          <dt>{keys}</dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  )
}
