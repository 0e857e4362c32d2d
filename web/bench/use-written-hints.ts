/**
 * The hints of the try that a child is writing down: kept on this page beside the text, under the number of their try. So a
 * try that goes out takes its hints with it, the next one begins with none, and one that was refused has them still.
 */

import { useMemo } from 'react'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { LocalTry } from '../live/bench-live.ts'
import type { HintsOfWriting } from '../parts/written/writing-hint.tsx'
import { readWrittenHints, type WrittenHint } from '../parts/written/written-hints.ts'
import type { BenchActs } from './bench-props.ts'
import { useKept } from './kept-value.ts'

type WrittenHints = {
  readonly asked: readonly WrittenHint[]
  /** For the ladder; null where the round has no hints. */
  readonly ofThisTry: HintsOfWriting | null
  /** Over to the cube on the screen: what was asked for is said there, in a try of its own. */
  readonly takeAlong: (acts: Pick<BenchActs, 'startAgain' | 'askForHint'>) => void
}

/** @param of whose they are: a seat's round @param mine the last try that went out, or the empty first one */
export function useWrittenHints(
  of: string,
  { hints: levelMax, hintCost }: Pick<RoundSettings, 'hints' | 'hintCost'>,
  mine: Pick<LocalTry, 'number' | 'steps'>,
): WrittenHints {
  const [asked, keep] = useKept('hints', `${of}.${numberOfWriting(mine)}`, readWrittenHints)
  const ofThisTry = useMemo(
    () =>
      levelMax === 0 ? null : { levelMax, cost: hintCost, asked, onAsk: (hint: WrittenHint) => keep([...asked, hint]) },
    [levelMax, hintCost, asked, keep],
  )
  const takeAlong: WrittenHints['takeAlong'] = (acts) => {
    if (asked.length === 0) return
    if (mine.steps.length > 0) acts.startAgain()
    for (const { level } of asked) acts.askForHint(level)
    keep([])
  }
  return { asked, ofThisTry, takeAlong }
}

/** @returns the number of the try that is being written: the one behind the last that has steps */
export function numberOfWriting({ number, steps }: Pick<LocalTry, 'number' | 'steps'>): number {
  return steps.length === 0 ? number : number + 1
}
