/**
 * The bench's side of the connection: takes the seat, keeps it over reloads and lost connections, and says what a child
 * can do. The turns themselves are kept and sent by bench-tries.ts.
 */

import type { RoundId } from '../../engine/contest/ids.ts'
import { hintStep, type Step, TAKE_BACK } from '../../engine/contest/steps.ts'
import type { HintLevel } from '../../engine/method/way/hint-level.ts'
import type { Answer, MessageName, Sent } from '../../engine/wire/from-browser.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { BenchView, Door } from '../../engine/wire/views.ts'
import { useBench } from './bench-state.ts'
import { addSteps, beginTries, forgetTries, isPlayable, openNextTry, showView } from './bench-tries.ts'
import { forgetEverything, rememberedKnock, rememberedSeat, rememberKnock, rememberSeat } from './device-memory.ts'
import { keepTrying, pauseAfter } from './keep-trying.ts'
import { newOwnSecret } from './own-secret.ts'
import { followServerClock } from './server-clock.ts'
import { ask, connect, followConnection, socket } from './socket.ts'

export { type BenchLive, useBench } from './bench-state.ts'
export type { LocalTry } from './local-try.ts'

let token: string | null = null
/** The secret of a seat that has been asked for and not been answered. */
let ownSecret: string | null = null
let isBegun = false
/** What was said at the door at which this page waits; null when it waits at none. */
let knocks: JoinWish | null = null
/** A wish for help, or for no more of it, that the server has yet to hear; and the round in which it was made. */
let helpWish: { readonly wanted: boolean; readonly roundId: string | null } | null = null

/**
 * Connects and takes the remembered seat, if it is one of this room.
 *
 * @param code the room code in the address, or null
 */
export function beginBench(code: string | null): void {
  if (isBegun) return
  isBegun = true
  const seat = rememberedSeat()
  if (seat !== null && (code === null || seat.code === code)) token = seat.token
  beginTries(resume)
  followConnection({ onConnected: comeBack, onLost, onOutOfDate: () => useBench.setState({ outOfDate: true }) })
  followServerClock()
  socket.on('bench', (view) => {
    // A last view may still come in after the seat was given up.
    if (token === null) return
    keepSeat(view)
    showView(view)
  })
  socket.on('seat:gone', ({ reason }) => {
    if (reason !== 'taken-over') forgetSeat()
    useBench.setState({ status: 'gone', gone: reason })
  })
  socket.on('seat:let-in', ({ token: own, bench }) => {
    if (useBench.getState().status === 'waiting') sitDown(own, bench)
  })
  socket.on('seat:turned-away', () => {
    leaveDoor()
    useBench.setState({ status: 'seatless', turnedAway: true })
  })
  socket.on('shown:at', ({ version, at }) => {
    const { view } = useBench.getState()
    if (view?.showing?.version === version) useBench.setState({ view: { ...view, showing: { ...view.showing, at } } })
  })
  socket.on('delay:ask', (_message, answer) => answer())
  const knock = token === null ? rememberedKnock() : null
  if (knock !== null && (code === null || knock.wish.code === code)) {
    // Loaded anew while it waited at a door: it waits on.
    knocks = knock.wish
    ownSecret = knock.secret
    useBench.setState({ status: 'waiting' })
    void connect()
  } else if (token === null) useBench.setState({ status: 'seatless' })
  else void connect()
}

/** How a student comes in. */
export type JoinWish = {
  readonly code: string
  readonly name?: string
  readonly pupilId?: string
  /** "That is me, on another device." */
  readonly moves?: boolean
}

export const benchActs = {
  /** @returns what the door of the room asks for */
  async askDoor(code: string): Promise<Answer<Door>> {
    const unreachable = await connect()
    if (unreachable !== null) return { ok: false, error: unreachable }
    const answer = await ask('room:ask', { code })
    return answer.ok ? { ok: true, value: answer.value.door } : answer
  },

  /** @returns null when seated, or waiting at the door */
  async join(wish: JoinWish): Promise<Refusal | null> {
    const unreachable = await connect()
    if (unreachable !== null) return unreachable
    useBench.setState({ turnedAway: false, lastCode: wish.code })
    return knock(wish)
  },

  /** Waits at the door no longer. */
  giveUp(): void {
    leaveDoor()
    useBench.setState({ status: 'seatless' })
    void ask('seat:give-up', {})
  },

  turn(steps: readonly Step[]): void {
    if (mayTurn()) addSteps(steps)
  },

  takeBack(): void {
    const { view, mine } = useBench.getState()
    const isAllowed = view?.round?.settings.takeBack === true && mine !== null && mine.standing.length > 0
    if (mayTurn() && isAllowed) addSteps([TAKE_BACK])
  },

  /** Asks for a hint: a step like any other, so that it is on record at its place. */
  askForHint(level: HintLevel): void {
    const most = useBench.getState().view?.round?.settings.hints ?? 0
    if (mayTurn() && level <= most) addSteps([hintStep(level)])
  },

  /** Sends a solution that was made on a real cube and written down: a try of its own. */
  sendWritten(steps: readonly Step[]): void {
    const { view, mine } = useBench.getState()
    if (!isPlayable() || mine === null) return
    const isBegun = mine.steps.length > 0
    if (isBegun && view?.round?.settings.tries !== 'many') return
    if (isBegun) openNextTry()
    addSteps(steps, true)
  },

  /** "My cube is ready": a real cube shows the start. */
  sayReady(ready: boolean): void {
    const { view } = useBench.getState()
    if (view?.round == null) return
    useBench.setState({ view: { ...view, me: { ...view.me, ready } } })
    void tell('cube:ready', { roundId: view.round.id, ready })
  },

  /** In a take-home room: plays another of its rounds. */
  async chooseRound(roundId: RoundId): Promise<void> {
    const answer = await ask('round:choose', { roundId })
    if (answer.ok) showView(answer.value.bench)
    else useBench.setState({ refusal: answer.error })
  },

  startAgain(): void {
    const { view, mine } = useBench.getState()
    const isAllowed = view?.round?.settings.tries === 'many' && mine !== null && mine.steps.length > 0
    if (isPlayable() && isAllowed) openNextTry()
  },

  askForHelp(wanted: boolean): void {
    const { view } = useBench.getState()
    if (view !== null) useBench.setState({ view: { ...view, me: { ...view.me, asksForHelp: wanted } } })
    helpWish = { wanted, roundId: view?.round?.id ?? null }
    void sayHelpWish()
  },

  /** After another tab has taken the seat: takes it back here. */
  takeSeatBack(): void {
    useBench.setState({ status: 'connecting', gone: null })
    if (socket.connected) resume()
    else void connect()
  },

  leave(): void {
    void ask('seat:leave', {})
    forgetSeat()
    useBench.setState({ status: 'seatless', view: null, mine: null, gone: null })
  },

  dismiss(): void {
    useBench.setState({ refusal: null })
  },
}

/** Comes in, or waits at the door. Kept until there is an answer, and said again on a new connection. */
async function knock(wish: JoinWish): Promise<Refusal | null> {
  // Kept until there is an answer that seats us: asked again, the wish finds the seat that it may have taken already.
  ownSecret ??= newOwnSecret()
  const answer = await ask('seat:join', { ...wish, token: ownSecret })
  if (!answer.ok) return answer.error
  if (answer.value.kind === 'waiting') {
    knocks = wish
    rememberKnock({ wish, secret: ownSecret })
    useBench.setState({ status: 'waiting' })
  } else sitDown(answer.value.token, answer.value.bench)
  return null
}

function sitDown(own: string, bench: BenchView): void {
  ownSecret = null
  knocks = null
  // Turns that another student left on this device must not go out for this one.
  forgetSeat()
  token = own
  takeSeat(bench)
}

/** A room may become one to take home after a student has come in; then the seat is kept for as long. */
function keepSeat({ room: { code, deadlineMs } }: BenchView): void {
  const known = useBench.getState().view?.room
  if (token !== null && (known?.code !== code || known.deadlineMs !== deadlineMs))
    rememberSeat({ token, code, deadlineMs })
}

function leaveDoor(): void {
  knocks = null
  ownSecret = null
  rememberKnock(null)
}

const knockAgain = keepTrying(async () => {
  if (knocks === null) return null
  const refusal = await knock(knocks)
  if (refusal === null || !socket.connected) return null
  if (refusal.code === 'server/going-away' || refusal.code === 'wire/too-fast') return pauseAfter(refusal)
  leaveDoor()
  useBench.setState({ status: 'seatless', refusal })
  return null
})

/** Says something of which nothing hangs but itself, and shows why, should it be refused. */
async function tell<Name extends MessageName>(name: Name, message: Sent<Name>): Promise<void> {
  const answer = await ask(name, message)
  if (!answer.ok && answer.error.code !== 'server/going-away') useBench.setState({ refusal: answer.error })
}

/** Takes the seat with the token; tried again while the server has no answer to it. */
const resume = keepTrying(async () => {
  const asked = token
  if (asked === null || useBench.getState().gone !== null) return null
  const answer = await ask('seat:resume', { token: asked })
  // Left, or removed, while the answer was on its way.
  if (token !== asked) return null
  if (answer.ok) {
    takeSeat(answer.value.bench)
    return null
  }
  switch (answer.error.code) {
    case 'seat/gone':
      forgetSeat()
      useBench.setState({ status: 'seatless', view: null, mine: null })
      return null
    case 'room/closed':
      forgetSeat()
      useBench.setState({ status: 'gone', gone: 'room-closed' })
      return null
    default:
      // Without a connection the next one asks.
      return socket.connected ? pauseAfter(answer.error) : null
  }
})

function takeSeat(bench: BenchView): void {
  keepSeat(bench)
  useBench.setState({ status: 'seated', gone: null })
  showView(bench)
  // With a new round everybody is taken to be well again.
  if (helpWish !== null && helpWish.roundId === (bench.round?.id ?? null)) benchActs.askForHelp(helpWish.wanted)
}

/** Without an answer the wish stays, and is said again when the seat is taken again. */
async function sayHelpWish(): Promise<void> {
  const wish = helpWish
  if (wish === null || useBench.getState().status !== 'seated') return
  const answer = await ask('help:ask', { wanted: wish.wanted })
  if (helpWish !== wish || (!answer.ok && answer.error.code === 'server/going-away')) return
  helpWish = null
  if (!answer.ok) useBench.setState({ refusal: answer.error })
}

function comeBack(): void {
  if (token === null) knockAgain()
  else resume()
}

function onLost(): void {
  const { status, view } = useBench.getState()
  if (status === 'gone' || token === null) return
  useBench.setState({ status: view === null ? 'connecting' : 'away' })
}

function mayTurn(): boolean {
  const { mine, status } = useBench.getState()
  const isHere = status === 'seated' || status === 'away'
  return isHere && isPlayable() && mine !== null && !mine.reachedHere && mine.reached === null
}

function forgetSeat(): void {
  token = null
  helpWish = null
  forgetTries()
  forgetEverything()
  useBench.setState({ refusal: null })
}
