/**
 * The one gate between what the server knows and what a screen is shown. Everything that leaves is built here, field by
 * field, so that nothing leaves by being part of something else.
 */

import { type Lane, laneOf } from '../../engine/contest/rank-board.ts'
import type { Player, Round } from '../../engine/contest/round-state.ts'
import { stepName } from '../../engine/contest/steps.ts'
import { formatStickers } from '../../engine/cube/stickers.ts'
import type {
  BenchView,
  BoardView,
  DeskView,
  ParView,
  RoundView,
  SeatView,
  Tick,
  TryView,
} from '../../engine/wire/views.ts'
import type { LiveRoom } from './live-room.ts'
import type { Seat } from './room-seats.ts'

export function benchViewFor(room: LiveRoom, seat: Seat): BenchView {
  const { round } = room
  const player = round?.players.get(seat.id)
  return {
    kind: 'bench',
    room: { code: room.facts.code, closed: room.closed, pretend: room.hasPretenders() },
    me: { seatId: seat.id, name: seat.name, late: room.isLate(seat), asksForHelp: seat.asksForHelp },
    round: round === null ? null : roundView(round),
    mine: player === undefined ? null : tryView(player),
    par: parForClass(room),
    lanes: lanesForStudent(room, seat),
    nReached: countReached(room),
    nStudents: playersOf(room).length,
  }
}

export function boardViewFor(room: LiveRoom, addresses: readonly string[]): BoardView {
  const { round } = room
  const covered = isCoveredOnBoard(room)
  return {
    kind: 'board',
    version: room.version,
    room: { code: room.facts.code, closed: room.closed, locked: room.locked, addresses, pretend: room.hasPretenders() },
    round: round === null ? null : roundView(round),
    nRounds: room.nRounds,
    lanes: covered ? [] : lanesOf(room),
    par: parForClass(room),
    covered,
    nReached: countReached(room),
    nStudents: playersOf(room).length,
    names: [...room.seats.values()].map((seat) => seat.name),
  }
}

export function deskViewFor(room: LiveRoom, addresses: readonly string[], saving: boolean): DeskView {
  const { round } = room
  return {
    kind: 'desk',
    version: room.version,
    room: {
      id: room.facts.id,
      code: room.facts.code,
      locked: room.locked,
      closed: room.closed,
      addresses,
      viewerKey: room.facts.viewerKey,
      openedAtMs: room.facts.openedAtMs,
    },
    settings: room.settings,
    seats: [...room.seats.values()].map((seat) => seatView(room, seat)),
    round: round === null ? null : roundView(round),
    nRounds: room.nRounds,
    lanes: lanesOf(room),
    par: room.guide?.par ?? null,
    parShown: room.isParShown,
    ways: room.guide?.ways ?? null,
    savingPaused: !saving,
  }
}

/** The lanes that changed, for the desk; the board gets the same unless it is covered. */
export function tickFor(room: LiveRoom, seatIds: Iterable<Seat['id']>): Tick {
  const lanes: Lane[] = []
  const { round } = room
  if (round !== null) {
    for (const seatId of seatIds) {
      const seat = room.seats.get(seatId)
      if (seat !== undefined) lanes.push(laneOf(round, { id: seat.id, name: seat.name, late: room.isLate(seat) }))
    }
  }
  return { version: room.version, lanes, nReached: countReached(room) }
}

/** While the round runs the teacher may keep the board from the class; with "own" it stays so afterwards. */
export function isCoveredOnBoard(room: LiveRoom): boolean {
  const { round } = room
  if (round === null || round.settings.boardSeenBy === 'all') return false
  return round.settings.boardSeenBy === 'own' || round.clock.phase !== 'ended'
}

/** Par is kept from the class until the round has ended, unless the teacher shows it. The ways never reach a student. */
function parForClass(room: LiveRoom): ParView | null {
  const phase = room.round?.clock.phase
  const isShown = phase === 'ended' || (room.isParShown && (phase === 'running' || phase === 'paused'))
  return isShown ? (room.guide?.par ?? null) : null
}

function lanesForStudent(room: LiveRoom, seat: Seat): readonly Lane[] {
  const { round } = room
  if (round === null) return []
  // Who came in after the end has nothing of this round, and waits for the next one.
  if (!tookPart(round, seat)) return []
  const hasEnded = round.clock.phase === 'ended'
  if (hasEnded && round.settings.boardSeenBy !== 'own') return lanesOf(room)
  return [laneOf(round, { id: seat.id, name: seat.name, late: room.isLate(seat) })]
}

function lanesOf(room: LiveRoom): readonly Lane[] {
  const { round } = room
  if (round === null || round.clock.phase === 'void') return []
  return playersOf(room).map((seat) => laneOf(round, { id: seat.id, name: seat.name, late: room.isLate(seat) }))
}

/** The seats that the round that is shown was or is for; without a round, everybody. */
function playersOf(room: LiveRoom): Seat[] {
  const { round } = room
  return [...room.seats.values()].filter((seat) => round === null || tookPart(round, seat))
}

function tookPart(round: Round, seat: Seat): boolean {
  return round.clock.phase !== 'ended' || seat.joinedAtMs <= round.clock.endedAtMs
}

function countReached(room: LiveRoom): number {
  let nReached = 0
  for (const [seatId, player] of room.round?.players ?? []) {
    if (player.best !== null && room.seats.has(seatId)) nReached++
  }
  return nReached
}

function roundView(round: Round): RoundView {
  return {
    id: round.id,
    number: round.number,
    settings: round.settings,
    start: formatStickers(round.start),
    clock: round.clock,
  }
}

function tryView(player: Player): TryView {
  const { current, best } = player
  return {
    number: current.number,
    steps: current.steps.map(stepName),
    reached: current.reached,
    best: best === null ? null : { turns: best.turns, momentMs: best.momentMs },
  }
}

function seatView(room: LiveRoom, seat: Seat): SeatView {
  return {
    seatId: seat.id,
    name: seat.name,
    here: seat.connection !== null,
    late: room.isLate(seat),
    pretend: seat.pretend,
    asksForHelp: seat.asksForHelp,
  }
}
