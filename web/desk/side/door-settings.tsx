/** What a student is called in this room, and whether the teacher lets each one in. */

import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import { NAME_WAYS, type NameWay } from '../../../engine/contest/room-entry.ts'
import type { DeskView, Shelf } from '../../../engine/wire/views.ts'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { TickBox } from '../../ui/tick-box.tsx'
import type { RoomActs } from '../desk-acts.ts'
import styles from './door-settings.module.css'

type DoorSettingsProps = {
  readonly view: Pick<DeskView, 'room'>
  readonly rosters: Shelf['rosters']
  readonly acts: Pick<RoomActs, 'setEntry'>
}

export function DoorSettings({ view: { room }, rosters, acts }: DoorSettingsProps) {
  const { t } = useTranslation()
  const id = useId()
  const { entry } = room
  const choose = (names: NameWay) => {
    const rosterId = names === 'roster' ? (entry.rosterId ?? rosters[0]?.rosterId ?? null) : null
    if (names !== 'roster' || rosterId !== null) acts.setEntry({ ...entry, names, rosterId })
  }
  return (
    <section className={styles.door}>
      <SegmentedChoice
        legend={t('desk:door.names')}
        segments={NAME_WAYS.map((way) => ({
          value: way,
          label: t(`desk:door.way.${way}`),
          disabled: way === 'roster' && rosters.length === 0,
        }))}
        value={entry.names}
        onChoose={choose}
      />
      {rosters.length === 0 && <p className={styles.help}>{t('desk:door.noRoster')}</p>}
      {entry.names === 'roster' && (
        <p className={styles.roster}>
          <label htmlFor={id}>{t('desk:door.roster')}</label>
          <select
            id={id}
            value={entry.rosterId ?? ''}
            onChange={(event) => acts.setEntry({ ...entry, rosterId: event.currentTarget.value })}
          >
            {!rosters.some(({ rosterId }) => rosterId === entry.rosterId) && (
              <option value={entry.rosterId ?? ''}>{t('desk:door.rosterChoose')}</option>
            )}
            {rosters.map(({ rosterId, roster }) => (
              <option key={rosterId} value={rosterId}>
                {roster.title === '' ? t('classes:untitled') : roster.title}
              </option>
            ))}
          </select>
        </p>
      )}
      <TickBox checked={entry.approve} onChange={(approve) => acts.setEntry({ ...entry, approve })}>
        {t('desk:door.approve')}
      </TickBox>
    </section>
  )
}
