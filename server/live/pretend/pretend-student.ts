/** One simulated student on a real connection: joins, waits for the signal, turns, and sometimes starts again. */

import { io, type Socket } from 'socket.io-client'
import { below, type RandomSource } from '../../../engine/chance/random-source.ts'
import type { SeatId } from '../../../engine/contest/ids.ts'
import { countdownMs } from '../../../engine/contest/round-clock.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { stepName } from '../../../engine/contest/steps.ts'
import { applyTurn } from '../../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../../engine/cube/cube-position.ts'
import { parseStickers } from '../../../engine/cube/stickers.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import type { Stage } from '../../../engine/method/stages.ts'
import type { Answer, BrowserEvents } from '../../../engine/wire/from-browser.ts'
import type { ServerEvents } from '../../../engine/wire/from-server.ts'
import { SOCKET_PATH } from '../../../engine/wire/places.ts'
import type { Refusal } from '../../../engine/wire/refusal.ts'
import { PROTOCOL_VERSION } from '../../../engine/wire/version.ts'
import type { BenchView } from '../../../engine/wire/views.ts'
import { nextPlan, type Plan, type Skill } from './pretend-mind.ts'

/** Wrong answers in a row after which a simulated student gives the round up; it never storms its own server. */
const REFUSALS_MAX = 5
/** Chance in a hundred to try for fewer turns after reaching the goal. */
const AGAIN_PERCENT = 45
const ANSWER_MS_MAX = 5_000
const LOOK_AGAIN_MS = 300
const START_AGAIN: Plan = { kind: 'start-again' }

export type PretendStudentOptions = {
  url: string
  pretendKey: string
  skill: Skill
  random: RandomSource
  nowMs: () => number
}

export class PretendStudent {
  readonly #options: PretendStudentOptions
  readonly #socket: Socket<ServerEvents, BrowserEvents>
  #view: BenchView | null = null
  #position: CubePosition | null = null
  #playing: string | null = null
  #tryNumber = 1
  #from = 0
  #nRefusals = 0
  #stopped = false

  constructor(options: PretendStudentOptions) {
    this.#options = options
    this.#socket = io(options.url, {
      path: SOCKET_PATH,
      transports: ['websocket'],
      forceNew: true,
      auth: { protocol: PROTOCOL_VERSION, pretendKey: options.pretendKey },
    })
    this.#socket.on('bench', (view) => this.#see(view))
    this.#socket.on('seat:gone', () => this.stop())
  }

  /** @returns null when seated */
  async join(code: string, name: string): Promise<Refusal | null> {
    return this.#seated(
      await this.#socket.timeout(ANSWER_MS_MAX).emitWithAck('seat:join', { code, name }).catch(noAnswer),
    )
  }

  /** Back on a seat that the record kept over a restart. */
  async comeBack(seatId: SeatId): Promise<Refusal | null> {
    return this.#seated(
      await this.#socket.timeout(ANSWER_MS_MAX).emitWithAck('seat:resume', { token: seatId }).catch(noAnswer),
    )
  }

  stop(): void {
    this.#stopped = true
    this.#socket.disconnect()
  }

  #seated(answer: Answer<{ bench: BenchView }>): Refusal | null {
    if (!answer.ok) return answer.error
    this.#see(answer.value.bench)
    return null
  }

  #see(view: BenchView): void {
    this.#view = view
    const { round } = view
    if (round?.clock.phase !== 'running' || this.#playing === round.id) return
    this.#playing = round.id
    void this.#play(round.id).catch(() => this.stop())
  }

  async #play(roundId: string): Promise<void> {
    const { settings, start } = this.#view!.round!
    const mine = this.#view!.mine
    this.#nRefusals = 0
    this.#tryNumber = mine?.number ?? 1
    this.#putOnStart(start)
    // Seated again in the middle of a try: it is easier to begin a new one than to remember where one was.
    let mustStartAgain = mine !== null && mine.steps.length > 0
    while (this.#isPlaying(roundId) && this.#nRefusals < REFUSALS_MAX) {
      await this.#wait(this.#countdownMs())
      const plan = mustStartAgain ? START_AGAIN : this.#nextPlan(settings)
      if (plan === null || (plan.kind === 'start-again' && settings.tries === 'one')) return
      await this.#wait(this.#about(this.#options.skill.thinkMs))
      mustStartAgain = false
      if (plan.kind === 'turns') await this.#turnAll(roundId, plan.turns, settings.to)
      else await this.#startAgain(roundId, start)
    }
  }

  /** What to do next; null to lean back after reaching the goal. */
  #nextPlan(settings: RoundSettings): Plan | null {
    const { skill, random } = this.#options
    if (!goalMet(this.#position!, settings.to)) return nextPlan(this.#position!, settings, skill, random)
    return below(random, 100) < AGAIN_PERCENT ? START_AGAIN : null
  }

  async #turnAll(roundId: string, turns: readonly Turn[], to: Stage): Promise<void> {
    for (const turn of turns) {
      if (!this.#isPlaying(roundId) || !(await this.#send(roundId, [turn]))) return
      applyTurn(this.#position!, turn)
      this.#from++
      if (goalMet(this.#position!, to)) return
      await this.#wait(this.#about(this.#options.skill.turnMs))
    }
  }

  async #startAgain(roundId: string, start: string): Promise<void> {
    this.#tryNumber++
    this.#putOnStart(start)
    await this.#send(roundId, [])
  }

  #putOnStart(start: string): void {
    const read = parseStickers(start)
    if (read.ok) this.#position = copyCube(read.value)
    this.#from = 0
  }

  async #send(roundId: string, turns: readonly Turn[]): Promise<boolean> {
    // While the round is paused one waits, like everybody.
    while (this.#view?.round?.clock.phase === 'paused' && !this.#stopped) await this.#wait(LOOK_AGAIN_MS)
    const message = { roundId, tryNumber: this.#tryNumber, from: this.#from, steps: turns.map(stepName) }
    const isTaken = await this.#socket
      .timeout(ANSWER_MS_MAX)
      .emitWithAck('turns:send', message)
      .then((answer) => answer.ok)
      .catch(() => false)
    this.#nRefusals = isTaken ? 0 : this.#nRefusals + 1
    return isTaken
  }

  #countdownMs(): number {
    const clock = this.#view?.round?.clock
    return clock === undefined ? 0 : countdownMs(clock, this.#options.nowMs())
  }

  #isPlaying(roundId: string): boolean {
    const round = this.#view?.round
    return (
      !this.#stopped && round?.id === roundId && (round.clock.phase === 'running' || round.clock.phase === 'paused')
    )
  }

  /** Between half and one and a half of the usual time. */
  #about(ms: number): number {
    return ms / 2 + below(this.#options.random, Math.max(1, Math.round(ms)))
  }

  #wait(ms: number): Promise<void> {
    return new Promise((resolve) => setTimeout(resolve, ms).unref())
  }
}

function noAnswer(): Answer<never> {
  return { ok: false, error: { code: 'server/going-away' } }
}
