/** Rosters and plans as a teacher puts them by. */

import type { LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import type { ClassRoster } from '../../../engine/contest/rosters/class-roster.ts'
import { DEFAULT_ROUND_SETTINGS, type RoundSettings } from '../../../engine/contest/round-settings.ts'
import type { Sent } from '../../../engine/wire/from-browser.ts'
import { mustAsk, type Teacher } from './people.ts'

/** A class of these children, each with an identifier of its own. */
export function aRoster(names: readonly string[], title = 'Class'): ClassRoster {
  return { title, pupils: names.map((name) => ({ pupilId: `pupil-${name.toLowerCase()}`, name })) }
}

/** Puts a roster by and makes the room take its names. */
export async function rosterAtDoor(
  { client, roomId }: Teacher,
  names: readonly string[],
  approve = false,
): Promise<string> {
  const { rosterId } = await mustAsk(client, 'roster:keep', { rosterId: null, roster: sendable(aRoster(names)) })
  await mustAsk(client, 'room:entry', { roomId, entry: { names: 'roster', rosterId, approve } })
  return rosterId
}

export const sendable = (roster: ClassRoster): Sent<'roster:keep'>['roster'] => ({
  ...roster,
  pupils: [...roster.pupils],
})

/** Settings as a page sends them. */
export function settingsWith(wishes: Partial<RoundSettings> = {}) {
  const { cases, ...others } = { ...DEFAULT_ROUND_SETTINGS, ...wishes }
  return { ...others, cases: cases === null ? null : [...cases] }
}

/** An example, two rounds of these settings, and a look back. */
export function aPlan(first: Partial<RoundSettings>, second: Partial<RoundSettings>): LessonPlan {
  return {
    title: 'A lesson',
    parts: [
      { kind: 'example', stage: 4, caseId: null, minutes: 5, note: '' },
      { kind: 'round', title: 'One', note: '', settings: settingsWith(first) },
      { kind: 'round', title: 'Two', note: 'slowly', settings: settingsWith(second) },
      { kind: 'review', minutes: 5, note: '' },
    ],
  }
}
