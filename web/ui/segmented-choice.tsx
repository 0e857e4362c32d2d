/** One of a few, side by side: a radio group, so that the arrow keys choose. */

import { type ReactNode, useId } from 'react'
import { classNames } from './class-names.ts'
import styles from './segmented-choice.module.css'

export type Segment<Value extends string> = {
  readonly value: Value
  readonly label: ReactNode
  readonly disabled?: boolean
}

type SegmentedChoiceProps<Value extends string> = {
  legend: string
  /** The legend is heard, not seen, where the place already says it. */
  quietLegend?: boolean
  segments: readonly Segment<Value>[]
  value: Value | null
  onChoose: (value: Value) => void
  className?: string | undefined
}

export function SegmentedChoice<Value extends string>(props: SegmentedChoiceProps<Value>) {
  const { legend, quietLegend = false, segments, value, onChoose, className } = props
  const name = useId()
  return (
    <fieldset className={classNames(styles.choice, className)}>
      <legend className={quietLegend ? 'visually-hidden' : styles.legend}>{legend}</legend>
      <div className={styles.row}>
        {segments.map((segment) => (
          <label key={segment.value} className={styles.segment}>
            <input
              type="radio"
              className={styles.radio}
              name={name}
              value={segment.value}
              checked={segment.value === value}
              disabled={segment.disabled ?? false}
              onChange={() => onChoose(segment.value)}
            />
            <span className={styles.face}>{segment.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
