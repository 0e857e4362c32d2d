/** A teacher's classes, and the one that is open. */

import { useEffect, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { ClassRoster } from '../../../engine/contest/rosters/class-roster.ts'
import { Button } from '../../ui/button.tsx'
import { Icon } from '../../ui/icons.tsx'
import type { ClassPlace } from '../place/desk-place.ts'
import { ListFrame } from '../shelf/list-frame.tsx'
import rowStyles from '../shelf/rows.module.css'
import styles from './class-rosters.module.css'
import { EditClass } from './edit-class.tsx'
import { type KeptClass, openClass } from './open-class.ts'

type ClassRostersProps = {
  classes: readonly KeptClass[]
  /** The class that is open; null for the list. */
  open: ClassPlace | null
  /** Another value is another class, or the same opened again. */
  openKey: number
  onOpen: (open: ClassPlace) => void
  /** @param asks whether unsaved work is asked about */
  onLeave: (asks: boolean) => void
  /** What is open is on the server, and is left unless it was left before. */
  onKept: (open: ClassPlace) => void
  /** @param classId null for a new one @returns under what it is kept; null when it is not */
  onKeep: (roster: ClassRoster, classId: string | null) => Promise<string | null>
  onRemove: (classId: string) => void
}

const N_NAMES_SHOWN = 8

export function ClassRosters(props: ClassRostersProps) {
  const { classes, open, openKey, onOpen, onLeave, onKept, onKeep, onRemove } = props
  const { t, i18n } = useTranslation()
  const [comesBack, setComesBack] = useState(false)
  useEffect(() => {
    if (open !== null) setComesBack(true)
  }, [open])
  const titleOf = ({ title }: Pick<ClassRoster, 'title'>) => (title === '' ? t('classes:untitled') : title)
  const inList = new Intl.ListFormat(i18n.language, { type: 'unit', style: 'short' })
  const last = useRef<ReturnType<typeof openClass>>(null)
  const opened = openClass(open, classes, last.current)
  last.current = opened

  if (opened !== null) {
    const { classId } = opened
    return (
      <EditClass
        key={openKey}
        roster={opened.roster}
        onKeep={async (changed) => {
          const keptAs = await onKeep(changed, classId)
          if (keptAs === null) return
          onKept({ kind: 'class', classId: keptAs })
        }}
        onRemove={
          classId === null
            ? null
            : () => {
                onRemove(classId)
                onLeave(false)
              }
        }
        onLeave={() => onLeave(true)}
      />
    )
  }
  return (
    <ListFrame
      title={t('classes:title')}
      comesBack={comesBack}
      acts={
        <Button icon="plus" onClick={() => onOpen({ kind: 'class', classId: null })}>
          {t('classes:newClass')}
        </Button>
      }
    >
      <p className={styles.help}>{t('classes:sentence')}</p>
      {classes.length === 0 ? (
        <p className={rowStyles.none}>{t('classes:none')}</p>
      ) : (
        <ul className={rowStyles.rows}>
          {classes.map(({ classId, title, pupils }) => {
            const count = t('classes:pupils', { count: pupils.length })
            const names = pupils.slice(0, N_NAMES_SHOWN).map(({ name }) => name)
            return (
              <li key={classId}>
                <button
                  type="button"
                  className={styles.row}
                  aria-label={`${t('classes:open', { title: titleOf({ title }) })}. ${count}`}
                  onClick={() => onOpen({ kind: 'class', classId })}
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
    </ListFrame>
  )
}
