/** A plan while it is changed: parts in order, each with a key that stays with it wherever it goes. */

import type { LessonPart, LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../../engine/contest/round-settings.ts'

export type DraftPart = { readonly key: number; readonly part: LessonPart }
export type PlanDraft = { readonly title: string; readonly parts: readonly DraftPart[]; readonly nextKey: number }

const NEW_PART_MINUTES = 10

export function draftOf({ title, parts }: LessonPlan): PlanDraft {
  return { title, parts: parts.map((part, key) => ({ key, part })), nextKey: parts.length }
}

export function planOf({ title, parts }: PlanDraft): LessonPlan {
  return { title: title.trim(), parts: parts.map(({ part }) => part) }
}

/** A new part takes up where the last one of its kind left off: a class seldom jumps. */
export function newPart(kind: LessonPart['kind'], draft: PlanDraft): LessonPart {
  const before = draft.parts.map(({ part }) => part)
  const lastRound = before.findLast((part) => part.kind === 'round')
  const settings = lastRound?.kind === 'round' ? lastRound.settings : DEFAULT_ROUND_SETTINGS
  switch (kind) {
    case 'example':
      return { kind, stage: settings.from, caseId: null, minutes: NEW_PART_MINUTES, note: '' }
    case 'round':
      return { kind, title: '', note: '', settings }
    case 'review':
      return { kind, minutes: NEW_PART_MINUTES, note: '' }
  }
}

/** @param at where it comes to stand, 0 to the number of parts */
export function withPartAt(draft: PlanDraft, part: LessonPart, at: number): PlanDraft {
  const added = { key: draft.nextKey, part }
  return {
    ...draft,
    parts: [...draft.parts.slice(0, at), added, ...draft.parts.slice(at)],
    nextKey: draft.nextKey + 1,
  }
}

export function withPartChanged(draft: PlanDraft, key: number, part: LessonPart): PlanDraft {
  return { ...draft, parts: draft.parts.map((each) => (each.key === key ? { key, part } : each)) }
}

export function withoutPart(draft: PlanDraft, key: number): PlanDraft {
  return { ...draft, parts: draft.parts.filter((each) => each.key !== key) }
}

/** @param by how many places later, negative for earlier; the ends hold */
export function withPartMoved(draft: PlanDraft, key: number, by: number): PlanDraft {
  const from = draft.parts.findIndex((each) => each.key === key)
  const to = from + by
  if (from < 0 || to < 0 || to >= draft.parts.length) return draft
  const parts = [...draft.parts]
  const [moved] = parts.splice(from, 1)
  parts.splice(to, 0, moved)
  return { ...draft, parts }
}

/** What may be pasted into a note and cannot be in one becomes a space: tabs, controls, marks that turn the writing round. */
export function cleanNote(typed: string): string {
  return typed.replace(/\r\n?/g, '\n').replace(/(?!\n)[\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069]/gu, ' ')
}

export function cleanTitle(typed: string): string {
  return cleanNote(typed).replaceAll('\n', ' ')
}
