/** Names as text on one side, and what is read of them on the other, while it is typed. */

import { useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { chachaSource, SEED_BYTES } from '../../../engine/chance/chacha-source.ts'
import { friendlyName } from '../../../engine/contest/friendly-names.ts'
import { withChanges } from '../../../engine/contest/rosters/change-roster-text.ts'
import { ROSTER_PUPILS_MAX } from '../../../engine/contest/rosters/limits.ts'
import type { RosterReading } from '../../../engine/contest/rosters/read-roster.ts'
import type { ColumnChoice } from '../../../engine/contest/rosters/roster-columns.ts'
import { nameKey } from '../../../engine/contest/student-name.ts'
import { Button } from '../../ui/button.tsx'
import { Notice } from '../../ui/notice.tsx'
import { OpenFile } from '../plans/open-file.tsx'
import styles from './add-names.module.css'
import { ChooseColumn } from './choose-column.tsx'
import { decodeTextFile, LIST_FILE_BYTES_MAX } from './decode-text-file.ts'
import { ReadLines } from './read-lines.tsx'

type AddNamesProps = {
  text: string
  reading: RosterReading
  /** The class has names already. */
  isMore: boolean
  inClass: readonly string[]
  onText: (text: string) => void
  onColumn: (column: ColumnChoice | null) => void
}

const N_MADE_UP = 24

export function AddNames({ text, reading, isMore, inClass, onText, onColumn }: AddNamesProps) {
  const { t } = useTranslation()
  const ids = { field: useId(), help: useId(), count: useId() }
  const [count, setCount] = useState(String(N_MADE_UP))
  const [isTooLarge, setIsTooLarge] = useState(false)
  const append = (more: string) => onText(text.trim() === '' ? more : `${text.replace(/\s+$/, '')}\n${more}`)
  const readFile = async (file: File) => {
    setIsTooLarge(file.size > LIST_FILE_BYTES_MAX)
    if (file.size > LIST_FILE_BYTES_MAX) return
    onColumn(null)
    append(decodeTextFile(await file.arrayBuffer()))
  }
  const makeUp = () => {
    const nWanted = Math.min(Math.max(Math.round(Number(count)) || 0, 0), ROSTER_PUPILS_MAX)
    append(madeUpNames(nWanted, [...inClass, ...reading.names.map(({ name }) => name)]).join('\n'))
  }
  return (
    <section className={styles.add}>
      <div className={styles.typed}>
        <h3>
          <label htmlFor={ids.field}>{t(isMore ? 'classes:add.titleMore' : 'classes:add.title')}</label>
        </h3>
        <p id={ids.help}>{t('classes:add.help')}</p>
        <textarea
          id={ids.field}
          className={styles.field}
          rows={isMore ? 6 : 14}
          value={text}
          spellCheck={false}
          autoComplete="off"
          aria-describedby={ids.help}
          onChange={(event) => onText(event.currentTarget.value)}
        />
        <div className={styles.ways}>
          <OpenFile accept=".csv,.txt,.tsv,text/csv,text/plain" onOpen={(file) => void readFile(file)}>
            {t('classes:add.file')}
          </OpenFile>
          <div className={styles.madeUp}>
            <label htmlFor={ids.count}>{t('classes:add.madeUpCount')}</label>
            <input
              id={ids.count}
              inputMode="numeric"
              value={count}
              onChange={(event) => setCount(event.currentTarget.value)}
            />
            <Button onClick={makeUp}>{t('classes:add.madeUp')}</Button>
          </div>
        </div>
        <Notice>{isTooLarge && t('classes:add.fileTooLarge')}</Notice>
        <p className={styles.privacy}>{t('classes:add.privacy')}</p>
      </div>
      <div className={styles.read}>
        {reading.columns !== null && reading.column !== null && (
          <ChooseColumn columns={reading.columns} column={reading.column} onChoose={onColumn} />
        )}
        <ReadLines reading={reading} onChange={(changes) => onText(withChanges(text, changes))} />
      </div>
    </section>
  )
}

function madeUpNames(nWanted: number, taken: readonly string[]): string[] {
  const random = chachaSource(crypto.getRandomValues(new Uint8Array(SEED_BYTES)))
  const keys = new Set(taken.map(nameKey))
  return Array.from({ length: nWanted }, () => {
    const name = friendlyName(random, (candidate) => keys.has(nameKey(candidate)))
    keys.add(nameKey(name))
    return name
  })
}
