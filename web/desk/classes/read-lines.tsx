/** What was read of the text, in its order: names, and what was not taken, with the reason beside it and often a way out. */

import type { TFunction } from 'i18next'
import { useRef } from 'react'
import { useTranslation } from 'react-i18next'
import type { TextChange } from '../../../engine/contest/rosters/change-roster-text.ts'
import type { RosterFault, RosterReading } from '../../../engine/contest/rosters/read-roster.ts'
import { Button } from '../../ui/button.tsx'
import { classNames } from '../../ui/class-names.ts'
import { Icon } from '../../ui/icons.tsx'
import styles from './read-lines.module.css'

type ReadLinesProps = { reading: RosterReading; onChange: (changes: readonly TextChange[]) => void }

export function ReadLines({ reading, onChange }: ReadLinesProps) {
  const { t } = useTranslation()
  const { names, faults } = reading
  const section = useRef<HTMLElement>(null)
  const change = (changes: readonly TextChange[]) => {
    onChange(changes)
    // The button that was pressed goes away with its fault.
    section.current?.focus()
  }
  const entries = [...names, ...faults].sort((one, other) => one.from - other.from)
  const shorter = names.flatMap(({ from, to, shorter: by }) => (by === null ? [] : [{ from, to, by }]))
  return (
    <section ref={section} tabIndex={-1} className={styles.read} aria-label={t('classes:add.read')}>
      <h3>{t('classes:add.read')}</h3>
      <p className={styles.summary} role="status">
        {entries.length === 0 ? t('classes:add.nothing') : summaryWords(t, names.length, faults.length)}
      </p>
      {shorter.length > 0 && (
        <div className={styles.advice}>
          <p>{t('classes:add.fullNames', { count: shorter.length })}</p>
          <Button onClick={() => change(shorter)}>{t('classes:add.shorten')}</Button>
        </div>
      )}
      <ol className={styles.lines}>
        {entries.map((entry) => (
          <li key={entry.from} className={classNames(styles.line, 'code' in entry && styles.fault)}>
            <span className={styles.number}>
              <span className="visually-hidden">{t('classes:add.line', { line: entry.line })}</span>
              <span aria-hidden="true">{entry.line}</span>
            </span>
            {'code' in entry ? (
              <Fault fault={entry} onChange={change} />
            ) : (
              <>
                <Icon of="tick" />
                <b>{entry.name}</b>
              </>
            )}
          </li>
        ))}
      </ol>
    </section>
  )
}

function Fault({ fault, onChange }: { fault: RosterFault; onChange: ReadLinesProps['onChange'] }) {
  const { t } = useTranslation()
  const offer = 'offer' in fault ? fault.offer : null
  return (
    <>
      <Icon of="cross" />
      <div>
        <b>{fault.written}</b>
        <p>{faultWords(t, fault)}</p>
        {offer !== null && (
          <Button onClick={() => onChange([{ from: fault.from, to: fault.to, by: offer }])}>
            {t('classes:add.useOffer', { offer })}
          </Button>
        )}
      </div>
    </>
  )
}

function faultWords(t: TFunction, fault: RosterFault): string {
  if (fault.code === 'roster/twice' && fault.firstLine === null) return t('classes:inClassAlready')
  return t(`classes:fault.${fault.code}`, { ...fault })
}

function summaryWords(t: TFunction, nNames: number, nFaults: number): string {
  const names = t('classes:pupils', { count: nNames })
  return nFaults === 0 ? t('classes:add.summary', { names }) : t('classes:add.summaryFaults', { names, count: nFaults })
}
