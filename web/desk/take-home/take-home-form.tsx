/** Until when a room is open for taking home: a day that the teacher chooses. */

import { type ReactNode, useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { Button } from '../../ui/button.tsx'
import styles from './take-home-form.module.css'

type TakeHomeFormProps = {
  readonly nRounds: number
  readonly nowMs: number
  /** What the button does. */
  readonly open: string
  readonly isBusy?: boolean
  /** What more is to be said or chosen. */
  readonly children?: ReactNode
  readonly onOpen: (deadlineMs: number) => void
}

const DAY_MS = 24 * 60 * 60_000
const DAYS_AT_FIRST = 7
/** A deadline in the night helps nobody. */
const HOUR_AT_FIRST = 18

export function TakeHomeForm({ nRounds, nowMs, open, isBusy = false, children, onOpen }: TakeHomeFormProps) {
  const { t } = useTranslation()
  const id = useId()
  const [when, setWhen] = useState(() => {
    const day = new Date(nowMs + DAYS_AT_FIRST * DAY_MS)
    day.setHours(HOUR_AT_FIRST, 0, 0, 0)
    return localDateTime(day)
  })
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault()
        const deadlineMs = new Date(when).getTime()
        if (Number.isFinite(deadlineMs) && nRounds > 0 && !isBusy) onOpen(deadlineMs)
      }}
    >
      {children}
      {nRounds === 0 ? (
        <p>{t('desk:takeHome.noRounds')}</p>
      ) : (
        <>
          <label htmlFor={id}>{t('desk:takeHome.deadline')}</label>
          <input
            id={id}
            type="datetime-local"
            required
            value={when}
            min={localDateTime(new Date(nowMs))}
            onChange={(event) => setWhen(event.currentTarget.value)}
          />
          <Button type="submit" aria-disabled={isBusy}>
            {open}
          </Button>
        </>
      )}
    </form>
  )
}

/** As a field for date and time wants it, in the clock of this computer. */
function localDateTime(date: Date): string {
  const two = (value: number) => String(value).padStart(2, '0')
  const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`
  return `${day}T${two(date.getHours())}:${two(date.getMinutes())}`
}
