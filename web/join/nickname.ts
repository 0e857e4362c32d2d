/** Makes friendly nicknames from the words of the language, for a child who does not want to think of one. */

import type { TFunction } from 'i18next'
import { NAME_LENGTH_MAX } from '../../engine/contest/limits.ts'

/** A whole number from 0 to n - 1. Nothing depends on these being hard to guess. */
export type PickBelow = (n: number) => number

export function makeNickname(t: TFunction, pickBelow: PickBelow): string {
  return joinWords(
    t('join:nickname.first').split(','),
    t('join:nickname.second').split(','),
    pickBelow,
    (first, second) => t('join:nickname.both', { first, second }),
  )
}

/** Draws until both words fit the length of a name; a list whose words never fit gives a first word alone. */
export function joinWords(
  firsts: readonly string[],
  seconds: readonly string[],
  pickBelow: PickBelow,
  both: (first: string, second: string) => string,
): string {
  const first = firsts[pickBelow(firsts.length)]
  const fitting = seconds.filter((second) => [...both(first, second)].length <= NAME_LENGTH_MAX)
  return fitting.length === 0 ? first : both(first, fitting[pickBelow(fitting.length)])
}

export const pickInBrowser: PickBelow = (n) => crypto.getRandomValues(new Uint32Array(1))[0] % n
