/**
 * Tries at one start, alone: the rules of a round, played in this page and nowhere else. Pure; the start is drawn from
 * bytes of chance that are handed in.
 */

import { chachaSource } from '../../engine/chance/chacha-source.ts'
import type { ContestRefusal } from '../../engine/contest/contest-refusal.ts'
import { playTry } from '../../engine/contest/play-try.ts'
import { anEmptyTry, type Try } from '../../engine/contest/round-state.ts'
import type { Step } from '../../engine/contest/steps.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { drawStart } from '../../engine/method/draw-start.ts'
import { type PracticeSettings, roundOf } from './practice-settings.ts'

export type PracticeGame = {
  readonly settings: PracticeSettings
  readonly start: CubePosition
  readonly current: Try
  /** Fewest counted turns of a try at this start that reached the goal. */
  readonly best: number | null
  /** Why the last step was not taken; gone with the next one. */
  readonly refusal: ContestRefusal | null
}

export type PracticeEvent =
  | { readonly kind: 'steps'; readonly steps: readonly Step[] }
  | { readonly kind: 'start-again' }
  | { readonly kind: 'another-start'; readonly seed: Uint8Array }
  | { readonly kind: 'dismiss' }

/** @param seed 32 bytes of chance @returns a game at a start that is drawn as a round would draw it */
export function newGame(settings: PracticeSettings, seed: Uint8Array): PracticeGame {
  const { stage, caseId } = settings
  const span = { from: stage, to: stage }
  const random = chachaSource(seed)
  const start = caseId === null ? drawStart({ span, random }) : drawStart({ span, cases: [caseId], random })
  return { settings, start, current: anEmptyTry(start, 1), best: null, refusal: null }
}

/** @returns the game after the event; the same one when it changes nothing */
export function playPractice(game: PracticeGame, event: PracticeEvent): PracticeGame {
  switch (event.kind) {
    case 'steps': {
      const played = playTry(game.current, event.steps, roundOf(game.settings), 0)
      if (!played.ok) return { ...game, refusal: played.error }
      const { reached } = played.value
      const best = reached === null ? game.best : Math.min(reached.turns, game.best ?? reached.turns)
      return { ...game, current: played.value, best, refusal: null }
    }
    case 'start-again':
      // Nothing was turned and nothing asked: the try is as good as a new one.
      if (game.current.steps.length === 0) return game
      return { ...game, current: anEmptyTry(game.start, game.current.number + 1), refusal: null }
    case 'another-start':
      return newGame(game.settings, event.seed)
    case 'dismiss':
      return game.refusal === null ? game : { ...game, refusal: null }
  }
}
