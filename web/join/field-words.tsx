/** The help of a field, or in its place why it was refused; always in the page, so that a change is heard. */

import styles from './come-in-screen.module.css'
import type { RefusedField } from './refused-field.ts'

export type Refused = { readonly field: RefusedField; readonly words: string }

type FieldWordsProps = {
  readonly id?: string
  readonly field: RefusedField
  readonly refused: Refused | null
  readonly help: string
}

export function FieldWords({ id, field, refused, help }: FieldWordsProps) {
  const isRefused = refused?.field === field
  return (
    <p id={id} className={isRefused ? styles.refusal : styles.help} aria-live="assertive">
      {isRefused ? refused.words : help}
    </p>
  )
}
