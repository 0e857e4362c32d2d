/** A teacher's classes, and the one that is open. */

import { useEffect, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { ClassRoster, Pupil } from '../../../engine/contest/rosters/class-roster.ts'
import { Button } from '../../ui/button.tsx'
import { Icon } from '../../ui/icons.tsx'
import type { ClassPlace } from '../place/desk-place.ts'
import { ListFrame } from '../shelf/list-frame.tsx'
import rowStyles from '../shelf/rows.module.css'
import styles from './class-rosters.module.css'
import { EditClass } from './edit-class.tsx'

type ClassRostersProps = {
  classes: readonly { readonly classId: string; readonly title: string; readonly pupils: readonly Pupil[] }[]
  /** The class that is open; null for the list. */
  open: ClassPlace | null
  /** Another value is another class, or the same opened again. */
  openKey: number
  onOpen: (open: ClassPlace) => void
  /** What is open is known otherwise now. */
  onChangeOpen: (open: ClassPlace) => void
  /** @param kept its changes are on the server, and nothing has to be asked */
  onLeave: (kept: boolean) => void
  /** @param classId null for a new one @returns under what it is kept; null when it is not */
  onKeep: (roster: ClassRoster, classId: string | null) => Promise<string | null>
  onRemove: (classId: string) => void
}

const N_NAMES_SHOWN = 8
const NOBODY: ClassRoster = { title: '', pupils: [] }

export function ClassRosters(props: ClassRostersProps) {
  const { classes, open, openKey, onOpen, onChangeOpen, onLeave, onKeep, onRemove } = props
  const { t, i18n } = useTranslation()
  const [comesBack, setComesBack] = useState(false)
  useEffect(() => {
    if (open !== null) setComesBack(true)
  }, [open])
  const titleOf = ({ title }: Pick<ClassRoster, 'title'>) => (title === '' ? t('classes:untitled') : title)
  const inList = new Intl.ListFormat(i18n.language, { type: 'unit', style: 'short' })
  const roster = open === null ? undefined : rosterOf(open, classes)

  if (open !== null && roster !== undefined) {
    const { classId } = open
    return (
      <EditClass
        key={openKey}
        roster={roster}
        onKeep={async (changed) => {
          const keptAs = await onKeep(changed, classId)
          if (keptAs === null) return
          onChangeOpen({ kind: 'class', classId: keptAs })
          onLeave(true)
        }}
        onRemove={
          classId === null
            ? null
            : () => {
                onRemove(classId)
                onLeave(true)
              }
        }
        onLeave={() => onLeave(false)}
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

function rosterOf({ classId }: ClassPlace, classes: ClassRostersProps['classes']): ClassRoster | undefined {
  return classId === null ? NOBODY : classes.find((each) => each.classId === classId)
}
