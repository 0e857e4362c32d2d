/** What the desk says of what it has put by: lesson plans and rosters. Every desk of the teacher hears of a change. */

import type { TeacherId } from '../../engine/contest/ids.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { type Connection, type LiveServer, teacherGroup } from './connection.ts'
import type { Handlers } from './gateway.ts'
import type { LiveParts } from './parts.ts'

type ShelfMessages = Pick<Handlers, 'plan:keep' | 'plan:remove' | 'roster:keep' | 'roster:remove'>

export function shelfMessages(live: LiveServer, { shelf }: Pick<LiveParts, 'shelf'>): ShelfMessages {
  /** Acts for the teacher on this connection, and tells all desks of the teacher. */
  async function onShelf<T, V>(
    connection: Connection,
    act: (teacherId: TeacherId) => Promise<Result<T, Refusal>>,
    answer: (value: T) => V,
  ): Promise<Result<V, Refusal>> {
    const { who } = connection.data
    if (who.role !== 'teacher') return err({ code: 'desk/not-signed-in' })
    const done = await act(who.teacherId)
    if (!done.ok) return done
    live.to(teacherGroup(who.teacherId)).emit('shelf', shelf.of(who.teacherId))
    return ok(answer(done.value))
  }

  return {
    'plan:keep': (connection, message) =>
      onShelf(
        connection,
        (teacherId) => shelf.keepPlan(teacherId, message.planId, message.plan),
        (planId) => ({ planId }),
      ),
    'plan:remove': (connection, message) =>
      onShelf(
        connection,
        (teacherId) => shelf.removePlan(teacherId, message.planId),
        () => ({}),
      ),
    'roster:keep': (connection, message) =>
      onShelf(
        connection,
        (teacherId) => shelf.keepRoster(teacherId, message.rosterId, message.roster),
        (rosterId) => ({ rosterId }),
      ),
    'roster:remove': (connection, message) =>
      onShelf(
        connection,
        (teacherId) => shelf.removeRoster(teacherId, message.rosterId),
        () => ({}),
      ),
  }
}
