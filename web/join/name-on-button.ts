/** Which name the button "Go in as …" says, if any. Pure. */

import type { NameWay } from '../../engine/contest/room-entry.ts'
import type { RefusedField } from './refused-field.ts'

type KnownNames = {
  readonly way: NameWay
  readonly typed: string
  /** From the teacher's list; null as long as none is picked. */
  readonly picked: string | null
  /** The field at which a refusal stands; null for none. */
  readonly refusedField: RefusedField | null
}

/** @returns null where there is none to say; one that was refused is not said again in large letters */
export function nameOnButton({ way, typed, picked, refusedField }: KnownNames): string | null {
  if (refusedField === 'name') return null
  const names: Readonly<Record<NameWay, string>> = { typed: typed.trim(), roster: picked ?? '', given: '' }
  return names[way] === '' ? null : names[way]
}
