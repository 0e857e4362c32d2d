/**
 * The class that is open. The history knows its identifier alone, so it is looked up on the shelf; and there another desk may
 * remove it while names are being typed here. They are not lost then: it stays open, as a class that is not kept yet. Pure.
 */

import type { ClassRoster } from '../../../engine/contest/rosters/class-roster.ts'
import type { ClassPlace } from '../place/desk-place.ts'

export type KeptClass = ClassRoster & { readonly classId: string }

type OpenClass = {
  readonly place: ClassPlace
  /** Null for one that is not on the shelf. */
  readonly classId: string | null
  readonly roster: ClassRoster
}

const NOBODY: ClassRoster = { title: '', pupils: [] }

/**
 * @param place null where no class is open @param last what this gave before
 * @returns null where none is open, or the one that was is not there any more
 */
export function openClass(
  place: ClassPlace | null,
  classes: readonly KeptClass[],
  last: OpenClass | null,
): OpenClass | null {
  if (place === null) return null
  if (place.classId === null) return { place, classId: null, roster: NOBODY }
  const kept = classes.find(({ classId }) => classId === place.classId)
  if (kept !== undefined) {
    const { classId, title, pupils } = kept
    return { place, classId, roster: { title, pupils } }
  }
  return last?.place === place ? { ...last, classId: null } : null
}
