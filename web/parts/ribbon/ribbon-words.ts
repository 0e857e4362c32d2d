/** A ribbon for who hears it: every turn in words, a whole trigger by its name. */

import type { TFunction } from 'i18next'
import type { Turn } from '../../../engine/cube/turns.ts'
import { turnWords } from '../turn-words.ts'
import { ribbonParts } from './ribbon-parts.ts'

/** @returns "front layer clockwise, right trigger, front layer anticlockwise" */
export function ribbonWords(t: TFunction, turns: readonly Turn[]): string {
  return ribbonParts(turns)
    .map((part) => (part.kind === 'trigger' ? t(`bench:triggers.${part.side}`) : turnWords(t, part.turn)))
    .join(', ')
}
