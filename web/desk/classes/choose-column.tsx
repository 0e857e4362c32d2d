/** Which column of a table has the names, shown by what stands in it. */

import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import type { ColumnChoice, RosterColumns } from '../../../engine/contest/rosters/roster-columns.ts'
import styles from './choose-column.module.css'

type ChooseColumnProps = { columns: RosterColumns; column: ColumnChoice; onChoose: (column: ColumnChoice) => void }

export function ChooseColumn({ columns, column, onChoose }: ChooseColumnProps) {
  const { t, i18n } = useTranslation()
  const name = useId()
  const inList = new Intl.ListFormat(i18n.language, { type: 'unit', style: 'short' })
  const choices: ColumnChoice[] = [...columns.samples.keys(), 'all']
  return (
    <fieldset className={styles.columns}>
      <legend>{t('classes:add.column')}</legend>
      {choices.map((choice) => (
        <label key={choice} className={styles.column}>
          <input type="radio" name={name} checked={column === choice} onChange={() => onChoose(choice)} />
          {choice === 'all' ? (
            <b>{t('classes:add.columnAll')}</b>
          ) : (
            <span>
              <b>{columns.titles?.[choice] || t('classes:add.columnNumber', { number: choice + 1 })}</b>{' '}
              {inList.format(columns.samples[choice].filter((sample) => sample !== ''))}
            </span>
          )}
        </label>
      ))}
    </fieldset>
  )
}
