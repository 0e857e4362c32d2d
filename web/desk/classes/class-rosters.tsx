/** A teacher's classes, and the one that is open. */

import { type ReactNode, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { ClassRoster, Pupil } from '../../../engine/contest/rosters/class-roster.ts'
import { Button } from '../../ui/button.tsx'
import { Icon } from '../../ui/icons.tsx'
import { useArrivalFocus } from '../plans/use-arrival-focus.ts'
import styles from './class-rosters.module.css'
import { EditClass } from './edit-class.tsx'

type ClassRostersProps = {
  classes: readonly { readonly classId: string; readonly title: string; readonly pupils: readonly Pupil[] }[]
  /** @param classId null for a new one */
  onKeep: (roster: ClassRoster, classId: string | null) => void
  onRemove: (classId: string) => void
}

const N_NAMES_SHOWN = 8
const NOBODY: ClassRoster = { title: '', pupils: [] }

export function ClassRosters({ classes, onKeep, onRemove }: ClassRostersProps) {
  const { t, i18n } = useTranslation()
  const [open, setOpen] = useState<{ classId: string | null; roster: ClassRoster } | null>(null)
  const [comesBack, setComesBack] = useState(false)
  const leave = () => {
    setOpen(null)
    setComesBack(true)
  }
  const titleOf = ({ title }: Pick<ClassRoster, 'title'>) => (title === '' ? t('classes:untitled') : title)
  const inList = new Intl.ListFormat(i18n.language, { type: 'unit', style: 'short' })

  if (open !== null) {
    const { classId, roster } = open
    return (
      <EditClass
        roster={roster}
        onKeep={(kept) => {
          onKeep(kept, classId)
          leave()
        }}
        onRemove={
          classId === null
            ? null
            : () => {
                onRemove(classId)
                leave()
              }
        }
        onLeave={leave}
      />
    )
  }
  return (
    <ArrivalSection comesBack={comesBack}>
      <header className={styles.head}>
        <h2 id="classes">{t('classes:title')}</h2>
        <Button icon="plus" onClick={() => setOpen({ classId: null, roster: NOBODY })}>
          {t('classes:newClass')}
        </Button>
      </header>
      <p className={styles.help}>{t('classes:sentence')}</p>
      {classes.length === 0 ? (
        <p className={styles.none}>{t('classes:none')}</p>
      ) : (
        <ul className={styles.rows}>
          {classes.map(({ classId, title, pupils }) => {
            const count = t('classes:pupils', { count: pupils.length })
            const names = pupils.slice(0, N_NAMES_SHOWN).map(({ name }) => name)
            return (
              <li key={classId}>
                <button
                  type="button"
                  className={styles.row}
                  aria-label={`${t('classes:open', { title: titleOf({ title }) })}. ${count}`}
                  onClick={() => setOpen({ classId, roster: { title, pupils } })}
                >
                  <b>{titleOf({ title })}</b>
                  <span className={styles.count}>{count}</span>
                  <span className={styles.names}>
                    {inList.format(names)}
                    {pupils.length > N_NAMES_SHOWN && ' …'}
                  </span>
                  <Icon of="onward" />
                </button>
              </li>
            )
          })}
        </ul>
      )}
    </ArrivalSection>
  )
}

function ArrivalSection({ comesBack, children }: { comesBack: boolean; children: ReactNode }) {
  const section = useArrivalFocus<HTMLElement>(comesBack)
  return (
    <section ref={section} tabIndex={-1} className={styles.classes} aria-labelledby="classes">
      {children}
    </section>
  )
}
