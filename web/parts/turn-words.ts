/** A turn as it is printed and as it is said. */

import type { TFunction } from 'i18next'
import { type Turn, turnKind, turnName } from '../../engine/cube/turns.ts'

/** @param notation turns in the engine's spelling @returns the same with primes as they are set: close to the letter, and seen */
export function withPrimes(notation: string): string {
  return notation.replaceAll("'", '’')
}

/** @returns the name of a turn as it is printed: `R’` */
export function writtenTurn(turn: Turn): string {
  return withPrimes(turnName(turn))
}

/** @returns a turn in words, for labels and for whoever hears the page: "right layer up" */
export function turnWords(t: TFunction, turn: Turn): string {
  return turnKind(turn) === 'wide'
    ? t('bench:turn.wide', { name: writtenTurn(turn) })
    : t(`bench:turn.${turnName(turn)}`)
}
