/**
 * The bench's side of the connection: takes the seat, keeps it over reloads and lost connections, and says what a child
 * can do. The turns themselves are kept and sent by bench-tries.ts.
 */

import { type Step, TAKE_BACK } from '../../engine/contest/steps.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { BenchView } from '../../engine/wire/views.ts'
import { useBench } from './bench-state.ts'
import { addSteps, beginTries, forgetTries, isPlayable, openNextTry, showView } from './bench-tries.ts'
import { forgetEverything, rememberedSeat, rememberSeat } from './device-memory.ts'
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
  followConnection({ onConnected: resume, onLost, onOutOfDate: () => useBench.setState({ outOfDate: true }) })
  followServerClock()
  socket.on('bench', (view) => {
    // A last view may still come in after the seat was given up.
    if (token !== null) showView(view)
  })
  socket.on('seat:gone', ({ reason }) => {
    if (reason !== 'taken-over') forgetSeat()
    useBench.setState({ status: 'gone', gone: reason })
  })
  if (token === null) useBench.setState({ status: 'seatless' })
  else void connect()
}

export const benchActs = {
  /** @returns null when seated */
  async join(code: string, name: string): Promise<Refusal | null> {
    const unreachable = await connect()
    if (unreachable !== null) return unreachable
    // Kept until there is an answer that seats us: asked again, the wish finds the seat that it may have taken already.
    ownSecret ??= newOwnSecret()
    const answer = await ask('seat:join', { code, name, token: ownSecret })
    if (!answer.ok) return answer.error
    ownSecret = null
    // Turns that another student left on this device must not go out for this one.
    forgetSeat()
    token = answer.value.token
    rememberSeat({ token, code: answer.value.bench.room.code })
    takeSeat(answer.value.bench)
    return null
  },

  turn(steps: readonly Step[]): void {
    if (mayTurn()) addSteps(steps)
  },

  takeBack(): void {
    const { view, mine } = useBench.getState()
    const isAllowed = view?.round?.settings.takeBack === true && mine !== null && mine.standing.length > 0
    if (mayTurn() && isAllowed) addSteps([TAKE_BACK])
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
