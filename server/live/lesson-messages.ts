/** What the desk says of the lesson itself: its plan, help for students, what the class is shown, and the review. */

import { err, ok } from '../../engine/result.ts'
import type { Handlers } from './gateway.ts'
import { inOwnRoom, ownRoom } from './own-room.ts'
import type { LiveParts } from './parts.ts'
import { reviewFor } from './review-for.ts'
import type { Rooms } from './rooms.ts'
import { tryLookFor } from './view-for.ts'

type LessonMessages = Pick<
  Handlers,
  'room:use-plan' | 'room:plan-at' | 'seat:look' | 'nudge:send' | 'show:whole' | 'show:at' | 'review:ask'
>

export function lessonMessages(rooms: Rooms, parts: LiveParts): LessonMessages {
  const inRoom = inOwnRoom(rooms)
  return {
    'room:use-plan': (connection, message) =>
      inRoom(connection, message.roomId, (room) => room.lesson.use(message.plan)),
    'room:plan-at': (connection, message) => inRoom(connection, message.roomId, (room) => room.lesson.goTo(message.at)),

    'seat:look'(connection, message) {
      const room = ownRoom(connection, rooms, message.roomId)
      if (!room.ok) return room
      const round = room.value.heldRound(message.roundId)
      if (round === null) return err({ code: 'contest/no-such-round' })
      const seat = room.value.seats.get(message.seatId)
      return seat === undefined ? err({ code: 'room/no-such-seat' }) : ok({ look: tryLookFor(round, seat) })
    },

    'nudge:send': (connection, message) =>
      inRoom(connection, message.roomId, (room) => room.nudge(message.roundId, message.to, message.nudge)),

    'show:whole': (connection, message) =>
      inRoom(connection, message.roomId, async (room) => {
        room.showing.show(message.shown, message.at)
        room.changes.views = true
        room.changes.benches = true
        return ok(null)
      }),

    'show:at': (connection, message) =>
      inRoom(connection, message.roomId, async (room) => {
        if (room.showing.goTo(message.at)) room.changes.showing = true
        return ok(null)
      }),

    async 'review:ask'(connection, message) {
      const room = ownRoom(connection, rooms, message.roomId)
      if (!room.ok) return room
      const review = await reviewFor(room.value, message.roundId, parts)
      return review.ok ? ok({ review: review.value }) : review
    },
  }
}
