/** What the teacher has set for a room: the settings of the next round, and the plan of the lesson. All as it is on the disk. */

import type { RoomId } from '../../engine/contest/ids.ts'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { PlanUnderWay } from '../store/record.ts'
import { leavesAStart } from './deal-start.ts'
import type { RoomChanges } from './room-changes.ts'
import type { StoreEntry } from './store-entry.ts'

export class RoomLesson {
  readonly #roomId: RoomId
  readonly #store: StoreEntry
  readonly #changes: RoomChanges
  #settings: RoundSettings
  #plan: PlanUnderWay | null

  constructor(
    roomId: RoomId,
    store: StoreEntry,
    changes: RoomChanges,
    { settings, plan }: { settings: RoundSettings; plan: PlanUnderWay | null },
  ) {
    this.#roomId = roomId
    this.#store = store
    this.#changes = changes
    this.#settings = settings
    this.#plan = plan
  }

  /** Of the next round. */
  get settings(): RoundSettings {
    return this.#settings
  }

  get plan(): PlanUnderWay | null {
    return this.#plan
  }

  set(settings: RoundSettings): Promise<Result<null, Refusal>> {
    return this.#thenShow(this.#set(settings))
  }

  /** Begins a plan at its first part, or puts it away. */
  use(plan: LessonPlan | null): Promise<Result<null, Refusal>> {
    return this.#thenShow(this.#go(plan === null ? null : { plan, at: 0 }))
  }

  /** Goes to a part of the plan. */
  goTo(at: number): Promise<Result<null, Refusal>> {
    return this.#thenShow(this.#goTo(at))
  }

  /** Also after a refusal: the desk is shown what holds. */
  async #thenShow(done: Promise<Result<null, Refusal>>): Promise<Result<null, Refusal>> {
    const result = await done
    this.#changes.views = true
    return result
  }

  async #set(settings: RoundSettings): Promise<Result<null, Refusal>> {
    if (!(await leavesAStart(settings))) return err({ code: 'room/no-such-start' })
    return this.#keepSettings(settings)
  }

  async #goTo(at: number): Promise<Result<null, Refusal>> {
    if (this.#plan?.plan.parts[at] === undefined) return err({ code: 'room/no-such-part' })
    return this.#go({ plan: this.#plan.plan, at })
  }

  /** Where the class is at a round, its settings are those of the next round. Where those leave no start, nobody goes there. */
  async #go(plan: PlanUnderWay | null): Promise<Result<null, Refusal>> {
    const part = plan?.plan.parts[plan.at]
    const settings = part?.kind === 'round' ? part.settings : null
    if (settings !== null && !(await leavesAStart(settings))) return err({ code: 'room/no-such-start' })
    // Asked for at once, so that both are of one commit.
    const [kept, set] = await Promise.all([
      this.#keep(plan),
      settings === null ? ok(null) : this.#keepSettings(settings),
    ])
    return kept.ok ? set : kept
  }

  async #keep(plan: PlanUnderWay | null): Promise<Result<null, Refusal>> {
    const stored = await this.#store({ kind: 'room-plan', roomId: this.#roomId, plan })
    if (stored.ok) this.#plan = plan
    return stored
  }

  async #keepSettings(settings: RoundSettings): Promise<Result<null, Refusal>> {
    const stored = await this.#store({ kind: 'room-settings', roomId: this.#roomId, settings })
    if (stored.ok) this.#settings = settings
    return stored
  }
}
