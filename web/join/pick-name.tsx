/** The names of the teacher's list. Who is here already is lighter and says so, and can still be picked on another device. */

import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import type { Door } from '../../engine/wire/views.ts'
import { classNames } from '../ui/class-names.ts'
import { FieldWords, type Refused } from './field-words.tsx'
import styles from './pick-name.module.css'

type PickNameProps = {
  readonly pupils: Door['pupils']
  readonly picked: string | null
  readonly refused: Refused | null
  readonly onPick: (pupilId: string) => void
}

export function PickName({ pupils, picked, refused, onPick }: PickNameProps) {
  const { t } = useTranslation()
  const id = useId()
  return (
    <fieldset className={styles.names} aria-describedby={id}>
      <legend>{t('join:pickYourName')}</legend>
      <ul>
        {pupils.map(({ pupilId, name, isHere }) => (
          <li key={pupilId}>
            <label className={classNames(styles.name, isHere && styles.here, picked === pupilId && styles.picked)}>
              <input
                type="radio"
                name={id}
                checked={picked === pupilId}
                onChange={() => onPick(pupilId)}
                aria-invalid={refused?.field === 'name'}
              />
              <span>{name}</span>
              {isHere && <small>{t('join:hereAlready')}</small>}
            </label>
          </li>
        ))}
      </ul>
      {/* Why a name was refused stands at the button, which is in sight however long the list is. */}
      <FieldWords id={id} field="name" refused={null} help={t('join:pickHelp')} />
    </fieldset>
  )
}
