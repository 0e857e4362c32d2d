/** One simulated student on a real connection: joins, waits for the signal, turns, and sometimes starts again. */

import { io, type Socket } from 'socket.io-client'
import { below, type RandomSource } from '../../../engine/chance/random-source.ts'
import type { SeatId } from '../../../engine/contest/ids.ts'
import { countdownMs } from '../../../engine/contest/round-clock.ts'
import { stepName } from '../../../engine/contest/steps.ts'
import { applyTurn } from '../../../engine/cube/apply-turn.ts'
import { copyCube, type CubePosition } from '../../../engine/cube/cube-position.ts'
import { parseStickers } from '../../../engine/cube/stickers.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import type { Answer, BrowserEvents } from '../../../engine/wire/from-browser.ts'
import type { ServerEvents } from '../../../engine/wire/from-server.ts'
import { SOCKET_PATH } from '../../../engine/wire/hello.ts'
import { PROTOCOL_VERSION } from '../../../engine/wire/version.ts'
import type { BenchView } from '../../../engine/wire/views.ts'
import type { Refusal } from '../../../engine/wire/refusal.ts'
import { nextPlan, type Skill } from './pretend-mind.ts'

/** Wrong answers in a row after which a simulated student gives the round up; it never storms its own server. */
const REFUSALS_MAX = 5
/** Chance in a hundred to try for fewer turns after reaching the goal. */
const AGAIN_PERCENT = 45

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
    const answer = await this.#socket.timeout(5_000).emitWithAck('seat:join', { code, name })
    return this.#seated(answer)
  }

  /** Back on a seat that the record kept over a restart. */
  async comeBack(seatId: SeatId): Promise<Refusal | null> {
    const answer = await this.#socket.timeout(5_000).emitWithAck('seat:resume', { token: seatId })
    return this.#seated(answer)
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
    const { skill, random, nowMs } = this.#options
    let tryNumber = this.#view?.mine?.number ?? 1
    let from = this.#beginTry()
    let nRefusals = 0
    while (this.#isPlaying(roundId) && nRefusals < REFUSALS_MAX) {
      const clock = this.#view?.round?.clock
      if (clock !== undefined) await this.#wait(countdownMs(clock, nowMs()))
      const { settings } = this.#view!.round!
      const isReached = goalMet(this.#position!, settings.to)
      if (isReached && (settings.tries === 'one' || below(random, 100) >= AGAIN_PERCENT)) return
      await this.#wait(this.#about(skill.thinkMs))
      const plan = isReached ? ({ kind: 'start-again' } as const) : nextPlan(this.#position!, settings.to, skill, random)
      if (plan.kind === 'start-again') {
        if (settings.tries === 'one') return
        tryNumber++
        from = this.#beginTry()
        if (!(await this.#send(roundId, tryNumber, 0, []))) nRefusals++
        continue
      }
      for (const turn of plan.turns) {
        if (!this.#isPlaying(roundId)) return
        const sent = await this.#send(roundId, tryNumber, from, [turn])
        if (!sent) {
          nRefusals++
          break
        }
        nRefusals = 0
        applyTurn(this.#position!, turn)
        from++
        if (goalMet(this.#position!, settings.to)) break
        await this.#wait(this.#about(skill.turnMs))
      }
    }
  }

  /** Puts the own cube on the start; a new try has no steps. After a restart a running try is simply begun anew. */
  #beginTry(): number {
    const start = parseStickers(this.#view!.round!.start)
    if (start.ok) this.#position = copyCube(start.value)
    return 0
  }

  async #send(roundId: string, tryNumber: number, from: number, turns: readonly Turn[]): Promise<boolean> {
    // While the round is paused one waits, like everybody.
    while (this.#view?.round?.clock.phase === 'paused' && !this.#stopped) await this.#wait(300)
    const message = { roundId, tryNumber, from, steps: turns.map(stepName) }
    try {
      const answer = await this.#socket.timeout(5_000).emitWithAck('turns:send', message)
      return answer.ok
    } catch {
      return false
    }
  }

  #isPlaying(roundId: string): boolean {
    const round = this.#view?.round
    return !this.#stopped && round?.id === roundId && (round.clock.phase === 'running' || round.clock.phase === 'paused')
  }

  /** Between half and one and a half of the usual time. */
  #about(ms: number): number {
    return ms / 2 + below(this.#options.random, Math.max(1, Math.round(ms)))
  }

  #wait(ms: number): Promise<void> {
    return new Promise((resolve) => setTimeout(resolve, ms).unref())
  }
}
