/**
 * The bench's side of the connection: takes the seat, keeps it over reloads and lost connections, shows turns at once and
 * sends them until the server holds them.
 */

import { create } from 'zustand'
import { MESSAGE_STEPS_MAX } from '../../engine/contest/limits.ts'
import type { Reached } from '../../engine/contest/round-state.ts'
import { type Step, stepName, TAKE_BACK } from '../../engine/contest/steps.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { parseStickers } from '../../engine/cube/stickers.ts'
import type { GoneReason } from '../../engine/wire/from-server.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { BenchView } from '../../engine/wire/views.ts'
import { forgetEverything, rememberedSeat, rememberedTurns, rememberSeat, rememberTurns } from './device-memory.ts'
import {
  afterAnswer,
  currentTry,
  type LocalTry,
  nextMessage,
  type Outbox,
  outboxFromView,
  showTry,
  withNextTry,
  withoutNews,
  withSteps,
} from './local-try.ts'
import { followServerClock, serverNowMs } from './server-clock.ts'
import { ask, followConnection, socket } from './socket.ts'

export type { LocalTry } from './local-try.ts'

export type BenchLive = {
  /** `away`: seated, but without a connection just now; turning goes on and turns wait. */
  readonly status: 'connecting' | 'seatless' | 'seated' | 'away' | 'gone'
  readonly view: BenchView | null
  /** Null while there is no round. */
  readonly mine: LocalTry | null
  readonly gone: GoneReason | null
  readonly outOfDate: boolean
  /** Turns of this round reached the server after its end and do not count. */
  readonly cameTooLate: boolean
  /** The last refusal that concerns the child; cleared by dismiss(). */
  readonly refusal: Refusal | null
}

/** Refusals that the bench tells in its own way. */
const SAID_ELSEWHERE: ReadonlySet<string> = new Set([
  'seat/taken-over',
  'seat/none',
  'contest/round-over',
  'contest/no-such-round',
])

const RETRY_MS = 1_000
/** The signal of the server and the page's guess of it may be a little apart. */
const RETRY_SIGNAL_MS = 120

export const useBench = create<BenchLive>(() => ({
  status: 'connecting',
  view: null,
  mine: null,
  gone: null,
  outOfDate: false,
  cameTooLate: false,
  refusal: null,
}))

let token: string | null = null
let outbox: Outbox | null = null
let start: { text: string; position: CubePosition } | null = null
/** What the server has said of the try under way. */
let reached: { tryNumber: number; reached: Reached } | null = null
let isSending = false
let isBegun = false

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
  followConnection({
    onConnected: () => void resume(),
    onLost,
    onOutOfDate: () => useBench.setState({ outOfDate: true }),
  })
  followServerClock()
  socket.on('bench', (view) => show(view))
  socket.on('seat:gone', ({ reason }) => {
    if (reason !== 'taken-over') forgetSeat()
    useBench.setState({ status: 'gone', gone: reason })
  })
  if (token === null) useBench.setState({ status: 'seatless' })
  else socket.connect()
}

export const benchActs = {
  /** @returns null when seated */
  async join(code: string, name: string): Promise<Refusal | null> {
    if (!socket.connected) socket.connect()
    const answer = await ask('seat:join', { code, name })
    if (!answer.ok) return answer.error
    token = answer.value.token
    outbox = null
    rememberSeat({ token, code: answer.value.bench.room.code })
    useBench.setState({ status: 'seated', gone: null, refusal: null })
    show(answer.value.bench)
    return null
  },

  turn(steps: readonly Step[]): void {
    if (!mayTurn() || outbox === null) return
    keep(withSteps(outbox, steps))
  },

  takeBack(): void {
    const { view, mine } = useBench.getState()
    if (
      !mayTurn() ||
      outbox === null ||
      view?.round?.settings.takeBack !== true ||
      mine === null ||
      mine.standing.length === 0
    )
      return
    keep(withSteps(outbox, [TAKE_BACK]))
  },

  startAgain(): void {
    const { view, mine } = useBench.getState()
    if (
      !isPlayable() ||
      outbox === null ||
      view?.round?.settings.tries !== 'many' ||
      mine === null ||
      mine.steps.length === 0
    )
      return
    const next = withNextTry(outbox)
    if (next !== null) keep(next)
  },

  askForHelp(wanted: boolean): void {
    const { view } = useBench.getState()
    if (view !== null) useBench.setState({ view: { ...view, me: { ...view.me, asksForHelp: wanted } } })
    void ask('help:ask', { wanted }).then((answer) => {
      if (!answer.ok) useBench.setState({ refusal: answer.error })
    })
  },

  /** After another tab has taken the seat: takes it back here. */
  takeSeatBack(): void {
    useBench.setState({ status: 'connecting', gone: null })
    if (socket.connected) void resume()
    else socket.connect()
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

async function resume(): Promise<void> {
  if (token === null || useBench.getState().gone !== null) return
  const answer = await ask('seat:resume', { token })
  if (answer.ok) {
    useBench.setState({ status: 'seated', gone: null })
    show(answer.value.bench)
    return
  }
  const { code } = answer.error
  if (code === 'seat/gone') {
    forgetSeat()
    useBench.setState({ status: 'seatless', view: null, mine: null })
  } else if (code === 'room/closed') {
    forgetSeat()
    useBench.setState({ status: 'gone', gone: 'room-closed' })
  } else if (socket.connected) setTimeout(() => void resume(), RETRY_MS)
}

function onLost(): void {
  const { status, view } = useBench.getState()
  if (status === 'gone' || token === null) return
  useBench.setState({ status: view === null ? 'connecting' : 'away' })
}

/** Takes the server's view and puts what it has yet to hear on top. */
function show(view: BenchView): void {
  const { round } = view
  if (round === null) {
    outbox = null
    useBench.setState({ view, mine: null })
    return
  }
  if (useBench.getState().view?.round?.id !== round.id) useBench.setState({ cameTooLate: false })
  const kept = outbox ?? (rememberedTurns() as Outbox | null)
  outbox = outboxFromView(round.id, view.mine, kept)
  const current = currentTry(outbox).number
  reached =
    view.mine?.reached && view.mine.number === current ? { tryNumber: current, reached: view.mine.reached } : null
  useBench.setState({ view })
  redraw()
  void sendNews()
}

/** Keeps a change on the device, shows it, and sends it. */
function keep(next: Outbox): void {
  outbox = next
  rememberTurns(next)
  redraw()
  void sendNews()
}

function redraw(): void {
  const { view } = useBench.getState()
  if (outbox === null || view?.round == null) return
  const { round } = view
  if (start?.text !== round.start) {
    const read = parseStickers(round.start)
    if (!read.ok) return
    start = { text: round.start, position: read.value }
  }
  const { number } = currentTry(outbox)
  const known = reached?.tryNumber === number ? reached.reached : null
  useBench.setState({ mine: showTry(outbox, start.position, round.settings.to, known) })
}

/** One message at a time, with everything that has gathered since: quick fingers on a slow network cost no extra wait. */
async function sendNews(): Promise<void> {
  if (isSending) return
  isSending = true
  try {
    for (;;) {
      const message = outbox === null ? null : nextMessage(outbox, MESSAGE_STEPS_MAX)
      if (message === null || outbox === null || !socket.connected || useBench.getState().status !== 'seated') return
      const { roundId } = outbox
      const { tryNumber, from, steps } = message
      const answer = await ask('turns:send', { roundId, tryNumber, from, steps: steps.map(stepName) })
      if (outbox === null || outbox.roundId !== roundId) return
      if (answer.ok) {
        outbox = afterAnswer(outbox, answer.value)
        if (answer.value.reached !== null)
          reached = { tryNumber: answer.value.tryNumber, reached: answer.value.reached }
        noteBest(answer.value.reached)
        rememberTurns(outbox)
        redraw()
      } else if (!(await goOnAfter(answer.error))) return
    }
  } finally {
    isSending = false
  }
}

/** @returns whether to send again at once; otherwise the turns wait for a better moment, or were given up */
async function goOnAfter(refusal: Refusal): Promise<boolean> {
  switch (refusal.code) {
    case 'contest/not-started':
      await wait(RETRY_SIGNAL_MS)
      return true
    case 'wire/too-fast':
      await wait(refusal.retryAfterMs)
      return true
    case 'store/saving-paused':
      useBench.setState({ refusal })
      await wait(RETRY_MS)
      return true
    case 'server/going-away':
      await wait(RETRY_MS)
      return socket.connected
    case 'contest/paused':
      // They were on their way when the pause came; they go out when the round goes on.
      return false
    case 'contest/gap':
      if (outbox !== null) outbox = rewound(outbox, refusal.held)
      return true
    default:
      // The server's record decides: take what it holds.
      if (refusal.code === 'contest/round-over') useBench.setState({ cameTooLate: true })
      if (outbox !== null) outbox = withoutNews(outbox)
      rememberTurns(outbox)
      if (!SAID_ELSEWHERE.has(refusal.code)) useBench.setState({ refusal })
      redraw()
      if (refusal.code !== 'contest/round-over') void resume()
      return false
  }
}

function rewound(held: Outbox, nHeld: number): Outbox {
  return { ...held, tries: held.tries.map((each) => ({ ...each, nHeld: Math.min(each.nHeld, nHeld) })) }
}

/** The best try on the bench is right at once, not only with the next view. */
function noteBest(now: Reached | null): void {
  const { view } = useBench.getState()
  if (now === null || view === null) return
  const best = view.mine?.best ?? null
  const isBetter = best === null || now.turns < best.turns || (now.turns === best.turns && now.momentMs < best.momentMs)
  if (!isBetter) return
  const mine = view.mine ?? { number: 1, steps: [], reached: null, best: null }
  useBench.setState({ view: { ...view, mine: { ...mine, best: now } } })
}

function isPlayable(): boolean {
  const clock = useBench.getState().view?.round?.clock
  if (clock?.phase !== 'running') return false
  const nowMs = serverNowMs()
  return clock.startsAtMs <= nowMs && (clock.endsAtMs === null || nowMs < clock.endsAtMs)
}

function mayTurn(): boolean {
  const { mine, status } = useBench.getState()
  const isHere = status === 'seated' || status === 'away'
  return isHere && isPlayable() && mine !== null && !mine.reachedHere && mine.reached === null
}

function forgetSeat(): void {
  token = null
  outbox = null
  forgetEverything()
}

function wait(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms))
}
