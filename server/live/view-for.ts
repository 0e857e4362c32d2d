/**
 * The one gate between what the server knows and what a screen is shown. Everything that leaves is built here, field by
 * field, so that nothing leaves by being part of something else.
 */

import { playerOf } from '../../engine/contest/players.ts'
import { type Lane, laneOf } from '../../engine/contest/rank-board.ts'
import type { Player, Round } from '../../engine/contest/round-state.ts'
import { stepName } from '../../engine/contest/steps.ts'
import { formatStickers } from '../../engine/cube/stickers.ts'
import { turnName } from '../../engine/cube/turns.ts'
import type {
  BenchView,
  BoardView,
  DeskTick,
  DeskView,
  NudgesView,
  ParView,
  RoundInList,
  RoundView,
  SeatView,
  Tick,
  TryLook,
  TryView,
  WallCell,
} from '../../engine/wire/views.ts'
import type { LiveRoom } from './live-room.ts'
import type { Seat } from './room-seats.ts'
import type { RoundSetup } from './round-guide.ts'
import { tookPart } from './took-part.ts'

export function benchViewFor(room: LiveRoom, seat: Seat): BenchView {
  const round = room.roundOf(seat)
  const player = round === null ? undefined : playerOf(round, seat.id)
  return {
    kind: 'bench',
    room: {
      code: room.facts.code,
      closed: room.closed,
      pretend: hasPretenders(room, round),
      deadlineMs: room.deadlineMs,
    },
    me: {
      seatId: seat.id,
      name: seat.name,
      late: room.isLate(seat),
      asksForHelp: seat.asksForHelp,
      ready: round !== null && seat.readyFor === round.id,
    },
    rounds: room.deadlineMs === null ? [] : room.heldRounds.map((each) => roundForStudent(each, seat)),
    round: round === null ? null : roundView(round),
    ...setupForStudent(round === null ? null : room.setupOf(round)),
    nudges: lastNudges(round, seat),
    handedIn: round === null ? null : handedInView(round, seat),
    showing: room.showing.now,
    mine: player === undefined ? null : tryView(player),
    par: round === null ? null : parForClass(room, round),
    lanes: round === null ? [] : lanesForStudent(room, round, seat),
    nReached: countReached(room, round),
    nStudents: playersOf(room, round).length,
  }
}

export function boardViewFor(room: LiveRoom, addresses: readonly string[]): BoardView {
  const { round } = room
  const covered = isCoveredOnBoard(room)
  return {
    kind: 'board',
    version: room.version,
    room: {
      code: room.facts.code,
      closed: room.closed,
      locked: room.entrance.locked,
      addresses,
      pretend: hasPretenders(room, round),
      deadlineMs: room.deadlineMs,
    },
    showing: room.showing.now,
    nReady: [...room.seats.values()].filter((seat) => isReady(room, seat)).length,
    round: round === null ? null : roundView(round),
    nRounds: room.nRounds,
    lanes: covered || round === null ? [] : lanesOf(room, round),
    par: round === null ? null : parForClass(room, round),
    covered,
    nReached: countReached(room, round),
    nStudents: playersOf(room, round).length,
    names: [...room.seats.values()].map((seat) => seat.name),
  }
}

export function deskViewFor(room: LiveRoom, addresses: readonly string[], saving: boolean): DeskView {
  const { round } = room
  const guide = round === null ? null : room.guideOf(round)
  return {
    kind: 'desk',
    version: room.version,
    room: {
      id: room.facts.id,
      code: room.facts.code,
      locked: room.entrance.locked,
      closed: room.closed,
      addresses,
      viewerKey: room.facts.viewerKey,
      openedAtMs: room.facts.openedAtMs,
      entry: room.entrance.entry,
      deadlineMs: room.deadlineMs,
    },
    settings: room.lesson.settings,
    plan: room.lesson.plan,
    knocks: room.entrance.knocks,
    seats: [...room.seats.values()].map((seat) => seatView(room, seat)),
    rounds: room.roundList.map((each) => ({ ...each, bestTurns: null })),
    round: round === null ? null : roundView(round),
    nRounds: room.nRounds,
    lanes: round === null ? [] : lanesOf(room, round),
    cells: [...room.seats.values()].map((seat) => wallCell(round, seat)),
    par: guide?.par ?? null,
    parShown: round !== null && room.isParShown(round),
    ways: guide?.ways ?? null,
    setup: round === null ? null : room.setupOf(round),
    showing: room.showing.now,
    nShowings: room.showing.count,
    savingPaused: !saving,
  }
}

/** The lanes that changed, for the board unless it is covered. */
export function tickFor(room: LiveRoom, seatIds: Iterable<Seat['id']>): Tick {
  const lanes: Lane[] = []
  const { round } = room
  if (round !== null) {
    for (const seatId of seatIds) {
      const seat = room.seats.get(seatId)
      if (seat !== undefined) lanes.push(laneOf(round, { id: seat.id, name: seat.name, late: room.isLate(seat) }))
    }
  }
  return { version: room.version, lanes, nReached: countReached(room, round) }
}

/** The same for the desk, with the cubes. */
export function deskTickFor(room: LiveRoom, tick: Tick, seatIds: Iterable<Seat['id']>): DeskTick {
  const seats = [...seatIds].flatMap((seatId) => room.seats.get(seatId) ?? [])
  return { ...tick, cells: seats.map((seat) => wallCell(room.round, seat)) }
}

/** A student's cube and what its signs are computed from. For the desk alone. */
function wallCell(round: Round | null, seat: Seat): WallCell {
  const player = round === null ? undefined : playerOf(round, seat.id)
  const known = { seatId: seat.id, delayMs: seat.delayMs }
  if (player === undefined) {
    const nothing = { stickers: null, lastStepMs: 0, lastGainMs: 0, brokeMs: null, nStepsBroken: 0, nSteps: 0 }
    return { ...known, ...nothing, reached: false }
  }
  const { current, best } = player
  return {
    ...known,
    stickers: formatStickers(current.position),
    lastStepMs: player.lastStepMomentMs,
    lastGainMs: player.lastGainMomentMs,
    brokeMs: player.brokeMomentMs,
    nStepsBroken: current.brokeAfter === null ? 0 : current.steps.length - current.brokeAfter,
    nSteps: current.steps.length,
    reached: best !== null,
  }
}

/** What one student has turned in the try under way, for the desk alone. */
export function tryLookFor(round: Round, seat: Seat): TryLook {
  const player = playerOf(round, seat.id)
  return {
    seatId: seat.id,
    tryNumber: player?.current.number ?? 1,
    turns: player?.current.standing.map(turnName) ?? [],
    hints: player?.current.hints ?? [],
    reached: player?.current.reached ?? null,
    nudges: round.nudges.get(seat.id)?.map(({ nudge }) => nudge) ?? [],
  }
}

/** While the round runs the teacher may keep the board from the class; with "own" it stays so afterwards. */
export function isCoveredOnBoard(room: LiveRoom): boolean {
  const { round } = room
  if (round === null || round.settings.boardSeenBy === 'all') return false
  return round.settings.boardSeenBy === 'own' || round.clock.phase !== 'ended'
}

/** Par is kept from the class until the round has ended, unless the teacher shows it. The ways never reach a student. */
function parForClass(room: LiveRoom, round: Round): ParView | null {
  const { phase } = round.clock
  const isShown = phase === 'ended' || (room.isParShown(round) && (phase === 'running' || phase === 'paused'))
  return isShown ? (room.guideOf(round)?.par ?? null) : null
}

function lanesForStudent(room: LiveRoom, round: Round, seat: Seat): readonly Lane[] {
  // Who came in after the end has nothing of this round, and waits for the next one.
  if (!tookPart(round, seat)) return []
  const hasEnded = round.clock.phase === 'ended'
  if (hasEnded && round.settings.boardSeenBy !== 'own') return lanesOf(room, round)
  return [laneOf(round, { id: seat.id, name: seat.name, late: room.isLate(seat, round) })]
}

function lanesOf(room: LiveRoom, round: Round): readonly Lane[] {
  if (round.clock.phase === 'void') return []
  return playersOf(room, round).map((seat) =>
    laneOf(round, { id: seat.id, name: seat.name, late: room.isLate(seat, round) }),
  )
}

/** The seats that a round was or is for; without a round, everybody. */
export function playersOf(room: LiveRoom, round: Round | null): Seat[] {
  return [...room.seats.values()].filter((seat) => round === null || tookPart(round, seat))
}

/** Whether simulated students play this round, or before the first one are in the room. */
function hasPretenders(room: LiveRoom, round: Round | null): boolean {
  return playersOf(room, round).some(({ pretend }) => pretend)
}

function countReached(room: LiveRoom, round: Round | null): number {
  let nReached = 0
  for (const { seatId, best } of round?.players ?? []) {
    if (best !== null && room.seats.has(seatId)) nReached++
  }
  return nReached
}

function isReady(room: LiveRoom, seat: Seat): boolean {
  return seat.readyFor !== null && seat.readyFor === room.round?.id
}

function roundForStudent(round: Round, seat: Seat): RoundInList {
  const { id, number, settings, clock } = round
  return { id, number, settings, phase: clock.phase, bestTurns: playerOf(round, seat.id)?.best?.turns ?? null }
}

function setupForStudent(setup: RoundSetup | null): Pick<BenchView, 'setup' | 'noSetup'> {
  return { setup: setup?.kind === 'turns' ? setup.turns : null, noSetup: setup?.kind === 'none' }
}

/** Those of one student, the last of each kind, numbered as they came. */
function lastNudges(round: Round | null, seat: Seat): NudgesView {
  const last: { -readonly [Kind in keyof NudgesView]: NudgesView[Kind] } = { hint: null, words: null, point: null }
  for (const [index, { nudge }] of (round?.nudges.get(seat.id) ?? []).entries()) {
    const number = index + 1
    if (nudge.kind === 'hint') last.hint = { number, nudge }
    else if (nudge.kind === 'words') last.words = { number, nudge }
    else last.point = { number, nudge }
  }
  return last
}

function handedInView({ handedIn }: Round, seat: Seat): BenchView['handedIn'] {
  const judged = handedIn.get(seat.id)
  return judged === undefined ? null : { turns: judged.turns, reached: judged.reached !== null }
}

export function roundView(round: Round): RoundView {
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
    ready: isReady(room, seat),
    pupilId: seat.pupilId,
  }
}
