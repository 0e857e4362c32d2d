/** How long the clock runs: a few usual lengths, none, or the teacher's own. */

import { useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { formatMinutes, isOffered, MINUTE_MS, OFFERED_MINUTES, readMinutes } from '../time-limits.ts'
import styles from './choose-time.module.css'

type ChooseTimeProps = { settings: RoundSettings; onChange: (settings: RoundSettings) => void }

const NONE = 'none'
const OWN = 'own'

export function ChooseTime({ settings, onChange }: ChooseTimeProps) {
  const { t } = useTranslation()
  const ownId = useId()
  const { timeLimitMs } = settings
  const [typesOwn, setTypesOwn] = useState(false)
  const hasOwn = timeLimitMs !== null && (typesOwn || !isOffered(timeLimitMs))
  const chosen = timeLimitMs === null ? NONE : hasOwn ? OWN : String(timeLimitMs / MINUTE_MS)
  const segments = [
    ...OFFERED_MINUTES.map((count) => ({ value: String(count), label: t('desk:plan.minutesShort', { count }) })),
    { value: NONE, label: t('desk:plan.noClock') },
    { value: OWN, label: t('desk:plan.ownTime') },
  ]
  return (
    <div className={styles.time}>
      <SegmentedChoice
        legend={t('desk:plan.time')}
        segments={segments}
        value={chosen}
        onChoose={(value) => {
          setTypesOwn(value === OWN)
          if (value === OWN) onChange({ ...settings, timeLimitMs: timeLimitMs ?? 5 * MINUTE_MS })
          else onChange({ ...settings, timeLimitMs: value === NONE ? null : Number(value) * MINUTE_MS })
        }}
      />
      {hasOwn && (
        <div className={styles.own}>
          <label htmlFor={ownId}>{t('desk:plan.ownMinutes')}</label>
          <OwnMinutes
            id={ownId}
            key={timeLimitMs}
            timeLimitMs={timeLimitMs}
            onRead={(ms) => onChange({ ...settings, timeLimitMs: ms })}
          />
        </div>
      )}
    </div>
  )
}

/** Typed minutes count when the field is left or Enter is pressed; half a number is no wish yet. */
function OwnMinutes({ id, timeLimitMs, onRead }: { id: string; timeLimitMs: number; onRead: (ms: number) => void }) {
  const [typed, setTyped] = useState(formatMinutes(timeLimitMs))
  const read = () => {
    const ms = readMinutes(typed)
    if (ms === null) setTyped(formatMinutes(timeLimitMs))
    else if (ms !== timeLimitMs) onRead(ms)
    else setTyped(formatMinutes(ms))
  }
  return (
    <input
      id={id}
      className={styles.field}
      inputMode="decimal"
      value={typed}
      onChange={(event) => setTyped(event.currentTarget.value)}
      onBlur={read}
      onKeyDown={(event) => {
        if (event.key === 'Enter') read()
      }}
    />
  )
}
