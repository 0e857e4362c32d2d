/** Lesson plans and rosters that teachers have put by. Shown and used as they are on the disk. */

import type { TeacherId } from '../../engine/contest/ids.ts'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import type { ClassRoster } from '../../engine/contest/rosters/class-roster.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { Shelf } from '../../engine/wire/views.ts'
import type { DurableRecord, Entry } from '../store/record.ts'
import { SavingPaused } from '../store/record.ts'

/** Of each kind, for one teacher: more than a school year fills. */
export const SHELF_MAX = 200

type ShelfParts = {
  readonly record: DurableRecord
  readonly nowMs: () => number
  readonly newId: () => string
}
/** `keptAtMs`: when it was put by first, which gives the order. */
type Kept<T> = { readonly teacherId: TeacherId; readonly value: T; readonly keptAtMs: number }

export class TeacherShelf {
  readonly #parts: ShelfParts
  readonly #plans = new Map<string, Kept<LessonPlan>>()
  readonly #rosters = new Map<string, Kept<ClassRoster>>()
  /** New ones that are on their way to the disk take up room already. */
  readonly #onTheirWay = new Set<{ readonly to: ReadonlyMap<string, unknown>; readonly teacherId: TeacherId }>()

  constructor(parts: ShelfParts) {
    this.#parts = parts
  }

  async restore(): Promise<void> {
    const { plans, rosters } = await this.#parts.record.loadShelf()
    for (const { planId, plan, ...kept } of plans) this.#plans.set(planId, { ...kept, value: plan })
    for (const { rosterId, roster, ...kept } of rosters) this.#rosters.set(rosterId, { ...kept, value: roster })
  }

  of(teacherId: TeacherId): Shelf {
    return {
      plans: ofTeacher(this.#plans, teacherId).map(([planId, { value: plan }]) => ({ planId, plan })),
      rosters: ofTeacher(this.#rosters, teacherId).map(([rosterId, { value: roster }]) => ({ rosterId, roster })),
    }
  }

  roster(teacherId: TeacherId, rosterId: string): ClassRoster | null {
    const kept = this.#rosters.get(rosterId)
    return kept?.teacherId === teacherId ? kept.value : null
  }

  /** @param planId null puts a new one by @returns its identifier */
  keepPlan(teacherId: TeacherId, planId: string | null, plan: LessonPlan): Promise<Result<string, Refusal>> {
    return this.#keep(this.#plans, teacherId, planId, plan, (id, atMs) => ({
      kind: 'plan-kept',
      planId: id,
      teacherId,
      plan,
      atMs,
    }))
  }

  removePlan(teacherId: TeacherId, planId: string): Promise<Result<null, Refusal>> {
    return this.#remove(this.#plans, teacherId, planId, { kind: 'plan-removed', planId, teacherId })
  }

  /** @param rosterId null puts a new one by @returns its identifier */
  keepRoster(teacherId: TeacherId, rosterId: string | null, roster: ClassRoster): Promise<Result<string, Refusal>> {
    return this.#keep(this.#rosters, teacherId, rosterId, roster, (id, atMs) => ({
      kind: 'roster-kept',
      rosterId: id,
      teacherId,
      roster,
      atMs,
    }))
  }

  /** Its names go with it; rooms that take names from it take typed ones then. */
  removeRoster(teacherId: TeacherId, rosterId: string): Promise<Result<null, Refusal>> {
    return this.#remove(this.#rosters, teacherId, rosterId, { kind: 'roster-removed', rosterId, teacherId })
  }

  async #keep<T>(
    all: Map<string, Kept<T>>,
    teacherId: TeacherId,
    knownId: string | null,
    value: T,
    entry: (id: string, atMs: number) => Entry,
  ): Promise<Result<string, Refusal>> {
    if (knownId !== null && all.get(knownId)?.teacherId !== teacherId) return err({ code: 'shelf/not-yours' })
    if (knownId === null && ofTeacher(all, teacherId).length + this.#nOnTheirWay(all, teacherId) >= SHELF_MAX)
      return err({ code: 'shelf/full', max: SHELF_MAX })
    const id = knownId ?? this.#parts.newId()
    const keptAtMs = all.get(id)?.keptAtMs ?? this.#parts.nowMs()
    const onItsWay = { to: all, teacherId }
    if (knownId === null) this.#onTheirWay.add(onItsWay)
    const stored = await this.#write(entry(id, keptAtMs)).finally(() => this.#onTheirWay.delete(onItsWay))
    if (!stored.ok) return stored
    all.set(id, { teacherId, value, keptAtMs })
    return ok(id)
  }

  #nOnTheirWay(all: ReadonlyMap<string, unknown>, teacherId: TeacherId): number {
    return [...this.#onTheirWay].filter((each) => each.to === all && each.teacherId === teacherId).length
  }

  async #remove<T>(
    all: Map<string, Kept<T>>,
    teacherId: TeacherId,
    id: string,
    entry: Entry,
  ): Promise<Result<null, Refusal>> {
    if (all.get(id)?.teacherId !== teacherId) return err({ code: 'shelf/not-yours' })
    const stored = await this.#write(entry)
    if (stored.ok) all.delete(id)
    return stored
  }

  async #write(entry: Entry): Promise<Result<null, Refusal>> {
    try {
      const outcome = await this.#parts.record.write(entry)
      return outcome === 'stored' ? ok(null) : err({ code: 'shelf/not-yours' })
    } catch (fault) {
      if (!(fault instanceof SavingPaused)) throw fault
      return err({ code: 'store/saving-paused' })
    }
  }
}

function ofTeacher<T>(all: ReadonlyMap<string, Kept<T>>, teacherId: TeacherId): [string, Kept<T>][] {
  const own = [...all].filter(([, kept]) => kept.teacherId === teacherId)
  // As the record has them: two that were put by within one millisecond stand alike before and after a restart.
  return own.sort(([a, first], [b, second]) => first.keptAtMs - second.keptAtMs || (a < b ? -1 : 1))
}
