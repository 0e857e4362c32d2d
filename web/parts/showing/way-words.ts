/** Whose way it is, in words. */

import type { TFunction } from 'i18next'
import type { ShownWay } from '../../../engine/wire/shown.ts'

/** @returns "Lesson way", a name, or "Student B" where names are hidden */
export function ownerWords(t: TFunction, { owner }: Pick<ShownWay, 'owner'>): string {
  switch (owner.kind) {
    case 'name':
      return owner.name
    case 'letter':
      return t('showing:letter', { letter: owner.letter })
    default:
      return t(`showing:owner.${owner.kind}`)
  }
}
