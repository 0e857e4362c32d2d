/** A name of one's own: typed, or a friendly one that the page makes. */

import { type RefObject, useId } from 'react'
import { useTranslation } from 'react-i18next'
import { Button } from '../ui/button.tsx'
import styles from './come-in-screen.module.css'
import { FieldWords, type Refused } from './field-words.tsx'

type TypeNameProps = {
  readonly field: RefObject<HTMLInputElement | null>
  readonly name: string
  readonly refused: Refused | null
  readonly onChange: (name: string) => void
  readonly onAnother: () => void
}

export function TypeName({ field, name, refused, onChange, onAnother }: TypeNameProps) {
  const { t } = useTranslation()
  const ids = { name: useId(), help: useId() }
  return (
    <div className={styles.part}>
      <label className={styles.label} htmlFor={ids.name}>
        {t('join:whoAreYou')}
      </label>
      <input
        ref={field}
        id={ids.name}
        className={styles.nameField}
        value={name}
        autoComplete="off"
        autoCapitalize="words"
        spellCheck={false}
        enterKeyHint="go"
        aria-invalid={refused?.field === 'name'}
        aria-describedby={ids.help}
        onFocus={(event) => event.currentTarget.select()}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
      <div className={styles.underName}>
        <FieldWords id={ids.help} field="name" refused={refused} help={t('join:nameHelp')} />
        <Button look="quiet" icon="again" onClick={onAnother}>
          {t('join:anotherName')}
        </Button>
      </div>
    </div>
  )
}
