/** Makes a room one to take home: all rounds of its plan open at once, until a day that the teacher chooses. */

import { useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { Button } from '../../ui/button.tsx'
import styles from './choose-plan.module.css'

type TakeHomeProps = {
  readonly plan: LessonPlan
  readonly nowMs: number
  readonly onOpen: (rounds: readonly RoundSettings[], deadlineMs: number) => void
}

const DAY_MS = 24 * 60 * 60_000
const DAYS_AT_FIRST = 7
/** A deadline in the night helps nobody. */
const HOUR_AT_FIRST = 18

export function TakeHome({ plan, nowMs, onOpen }: TakeHomeProps) {
  const { t } = useTranslation()
  const id = useId()
  const [when, setWhen] = useState(() => {
    const day = new Date(nowMs + DAYS_AT_FIRST * DAY_MS)
    day.setHours(HOUR_AT_FIRST, 0, 0, 0)
    return localDateTime(day)
  })
  const rounds = plan.parts.flatMap((part) => (part.kind === 'round' ? [part.settings] : []))
  if (rounds.length === 0) return <p>{t('desk:takeHome.noRounds')}</p>
  return (
    <form
      className={styles.home}
      onSubmit={(event) => {
        event.preventDefault()
        const deadlineMs = new Date(when).getTime()
        if (Number.isFinite(deadlineMs)) onOpen(rounds, deadlineMs)
      }}
    >
      <p>{t('desk:takeHome.sentence')}</p>
      <label htmlFor={id}>{t('desk:takeHome.deadline')}</label>
      <input
        id={id}
        type="datetime-local"
        required
        value={when}
        min={localDateTime(new Date(nowMs))}
        onChange={(event) => setWhen(event.currentTarget.value)}
      />
      <Button type="submit">{t('desk:takeHome.open')}</Button>
    </form>
  )
}

/** As a field for date and time wants it, in the clock of this computer. */
function localDateTime(date: Date): string {
  const two = (value: number) => String(value).padStart(2, '0')
  const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`
  return `${day}T${two(date.getHours())}:${two(date.getMinutes())}`
}
