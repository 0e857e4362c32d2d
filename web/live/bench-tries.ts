/**
 * The tries of this bench: shown at once, kept on the device, and sent until the server holds them. What is shown is the
 * outbox (local-try.ts) on top of the last view.
 */

import { MESSAGE_STEPS_MAX, TRIES_MAX, TRY_STEPS_MAX } from '../../engine/contest/limits.ts'
import type { Reached } from '../../engine/contest/round-state.ts'
import { type Step, stepName } from '../../engine/contest/steps.ts'
import type { TurnsAnswer } from '../../engine/contest/take-turns.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { parseStickers } from '../../engine/cube/stickers.ts'
import { assert } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { BenchView, RoundView } from '../../engine/wire/views.ts'
import { useBench } from './bench-state.ts'
import { rememberedTurns, rememberTurns } from './device-memory.ts'
import { pauseAfter, RETRY_MS } from './keep-trying.ts'
import {
  afterAnswer,
  afterGap,
  currentTry,
  nextMessage,
  type Outbox,
  outboxFromView,
  showTry,
  type TurnsMessage,
  tryToHandIn,
  withNextTry,
  withoutNews,
  withSteps,
} from './local-try.ts'
import { serverNowMs } from './server-clock.ts'
import { ask, socket } from './socket.ts'

/** Refusals that the bench tells in its own way. */
const SAID_ELSEWHERE: ReadonlySet<string> = new Set(['contest/round-over', 'contest/no-such-round'])

/** The signal of the server and the page's guess of it may be a little apart. */
const RETRY_SIGNAL_MS = 120

/** A lost connection comes back, or a reload has taken the page away. */
const HAND_IN_ATTEMPTS_MAX = 60

/** What stands in the way of handing in for a while. The clock of a round is at 0 a moment before its end is on record. */
const PASSES_SOON: ReadonlySet<string> = new Set(['server/going-away', 'store/saving-paused', 'contest/still-open'])

/** A fault of the server's own may pass. After so many in a row it is these turns that it cannot take. */
const FAULTS_IN_A_ROW_MAX = 3

let outbox: Outbox | null = null
let start: { text: string; position: CubePosition } | null = null
/** What the server has said of the try under way. */
let reached: { tryNumber: number; reached: Reached } | null = null
let isSending = false
let nFaultsInARow = 0
/** Said once until saving goes on, or a child that has read it would have to put it away every second. */
let hasSaidSavingPaused = false
let lookAgain = () => {}

/** @param askForView asks the server for the whole view, because the page no longer knows what is so */
export function beginTries(askForView: () => void): void {
  lookAgain = askForView
}

/** Takes the server's view and puts what it has yet to hear on top. */
export function showView(view: BenchView): void {
  const { round } = view
  if (round === null) {
    outbox = null
    useBench.setState({ view, mine: null })
    return
  }
  if (useBench.getState().view?.round?.id !== round.id) useBench.setState({ cameTooLate: false, refusal: null })
  const before = outbox ?? rememberedTurns()
  // The class went on while this page was away, or another round of a take-home room was chosen. What was turned with a
  // connection is on its way already.
  const hasKept = before !== null && tryToHandIn(before) !== null
  if (before !== null && before.roundId !== round.id && (hasKept || view.room.deadlineMs !== null)) void sendOff(before)
  outbox = outboxFromView(round.id, view.mine, before)
  const current = currentTry(outbox).number
  reached =
    view.mine?.reached && view.mine.number === current ? { tryNumber: current, reached: view.mine.reached } : null
  useBench.setState({ view })
  redraw()
  void sendNews()
}

/** The seat is another one now, or none: nothing of its turns may go on. */
export function forgetTries(): void {
  outbox = null
  reached = null
}

/** @param written they were made on a real cube and written down */
export function addSteps(steps: readonly Step[], written = false): void {
  if (outbox === null) return
  const held = currentTry(outbox).steps.length
  if (held + steps.length > TRY_STEPS_MAX)
    useBench.setState({ refusal: { code: 'contest/too-many-turns', max: TRY_STEPS_MAX, held } })
  else keep(withSteps(outbox, steps, { kept: useBench.getState().status === 'away', written }))
}

export function openNextTry(): void {
  if (outbox === null) return
  const next = withNextTry(outbox)
  if (next === null) useBench.setState({ refusal: { code: 'contest/too-many-tries', max: TRIES_MAX } })
  else keep(next)
}

/** Whether the clock of the round runs, as far as this page knows. */
export function isPlayable(): boolean {
  const clock = useBench.getState().view?.round?.clock
  if (clock?.phase !== 'running') return false
  const nowMs = serverNowMs()
  return clock.startsAtMs <= nowMs && (clock.endsAtMs === null || nowMs < clock.endsAtMs)
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
  const { number } = currentTry(outbox)
  const known = reached?.tryNumber === number ? reached.reached : null
  useBench.setState({ mine: showTry(outbox, startOf(view.round), view.round.settings, known) })
}

function startOf(round: RoundView): CubePosition {
  if (start?.text !== round.start) {
    const read = parseStickers(round.start)
    assert(read.ok, 'the server deals legal starts')
    start = { text: round.start, position: read.value }
  }
  return start.position
}

/** One message at a time, with everything that has gathered since: quick fingers on a slow network cost no extra wait. */
async function sendNews(): Promise<void> {
  if (isSending) return
  isSending = true
  try {
    while (outbox !== null && socket.connected && useBench.getState().status === 'seated') {
      const message = nextMessage(outbox, MESSAGE_STEPS_MAX)
      if (message === null) return
      const { roundId } = outbox
      const answer = await ask('turns:send', asSent(roundId, message))
      // The next round, or another seat, came while this was on its way: what it has may have to be sent.
      if (outbox?.roundId !== roundId) continue
      if (answer.ok) {
        take(outbox, answer.value)
        continue
      }
      const waitMs = goOnAfter(outbox, answer.error, message)
      if (waitMs === null) return
      await new Promise((resolve) => setTimeout(resolve, waitMs))
    }
  } finally {
    isSending = false
  }
}

function take(sent: Outbox, answer: TurnsAnswer): void {
  nFaultsInARow = 0
  hasSaidSavingPaused = false
  if (useBench.getState().refusal?.code === 'store/saving-paused') useBench.setState({ refusal: null })
  outbox = afterAnswer(sent, answer)
  if (answer.reached !== null) {
    reached = { tryNumber: answer.tryNumber, reached: answer.reached }
    noteBest(answer.reached)
  }
  rememberTurns(outbox)
  redraw()
}

/** @returns the milliseconds after which to send again; null when the turns wait for the next view, or were given up */
function goOnAfter(sent: Outbox, refusal: Refusal, message: TurnsMessage): number | null {
  switch (refusal.code) {
    case 'contest/not-started':
      return RETRY_SIGNAL_MS
    case 'wire/too-fast':
    case 'server/going-away':
      return pauseAfter(refusal)
    case 'store/saving-paused':
      if (!hasSaidSavingPaused) useBench.setState({ refusal })
      hasSaidSavingPaused = true
      return RETRY_MS
    case 'contest/paused':
      // They were on their way when the pause came; they go out with the view that says that the round goes on.
      return null
    case 'contest/gap':
      outbox = afterGap(sent, message.tryNumber, refusal.held)
      return 0
    case 'seat/none':
    case 'seat/gone':
    case 'seat/taken-over':
    case 'room/closed':
      // It is the seat that is in doubt, not the turns.
      lookAgain()
      return null
    case 'server/fault':
      nFaultsInARow++
      if (nFaultsInARow < FAULTS_IN_A_ROW_MAX) return RETRY_MS
      break
  }
  nFaultsInARow = 0
  if (refusal.code === 'contest/round-over') void handInLate(sent)
  giveUp(sent, refusal, message)
  return null
}

/** What was played without a connection and comes in after the end is judged all the same, beside the ranking. */
async function handInLate(sent: Outbox): Promise<void> {
  const late = tryToHandIn(sent)
  if (late === null) return
  const message = { roundId: sent.roundId, tryNumber: late.number, steps: late.steps.map(stepName) }
  for (let attempt = 0; attempt < HAND_IN_ATTEMPTS_MAX; attempt++) {
    const answer = await ask('turns:hand-in', message)
    if (answer.ok || !PASSES_SOON.has(answer.error.code)) return
    await new Promise((resolve) => setTimeout(resolve, RETRY_MS))
  }
}

/** Turns of a round that is no longer at hand are still the child's: they go to their own round, or are handed in to it. */
async function sendOff(before: Outbox): Promise<void> {
  let left = before
  for (let attempt = 0; attempt < HAND_IN_ATTEMPTS_MAX; attempt++) {
    const message = nextMessage(left, MESSAGE_STEPS_MAX)
    if (message === null) return
    const answer = await ask('turns:send', asSent(left.roundId, message))
    if (answer.ok) {
      left = afterAnswer(left, answer.value)
      continue
    }
    const { code } = answer.error
    if (code === 'contest/round-over' || code === 'contest/no-such-round') return handInLate(left)
    if (!PASSES_SOON.has(code)) return
    await new Promise((resolve) => setTimeout(resolve, RETRY_MS))
  }
}

function asSent(roundId: Outbox['roundId'], { kept, written, steps, ...turns }: TurnsMessage) {
  const how = { ...(kept ? { kept } : {}), ...(written ? { written } : {}) }
  return { roundId, ...turns, ...how, steps: steps.map(stepName) }
}

/** The server's record decides: take what it holds. */
function giveUp(sent: Outbox, refusal: Refusal, message: TurnsMessage): void {
  outbox = withoutNews(sent)
  rememberTurns(outbox)
  redraw()
  if (!SAID_ELSEWHERE.has(refusal.code)) useBench.setState({ refusal })
  if (refusal.code !== 'contest/round-over') lookAgain()
  else if (message.steps.length > 0) useBench.setState({ cameTooLate: true })
}

/** The best try on the bench is right at once, not only with the next view. */
function noteBest(now: Reached): void {
  const { view } = useBench.getState()
  if (view === null) return
  const best = view.mine?.best ?? null
  const isBetter = best === null || now.turns < best.turns || (now.turns === best.turns && now.momentMs < best.momentMs)
  if (!isBetter) return
  const mine = view.mine ?? { number: 1, steps: [], reached: null, best: null }
  useBench.setState({ view: { ...view, mine: { ...mine, best: now } } })
}
