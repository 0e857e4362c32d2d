/** What was turned and what it led to, in words: for the live region, for labels, for whoever does not see the cube. */

import type { TFunction } from 'i18next'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { inverseTurns, type Turn } from '../../../engine/cube/turns.ts'
import { type CubeInHand, type TurnsBetween, turnsBetween } from '../../cube/turns-between.ts'
import { colourWords } from '../colour-words.ts'
import { triggerOf } from '../ribbon/ribbon-parts.ts'
import { turnWords } from '../turn-words.ts'
import { type GoalProgress, goalProgress } from './goal-progress.ts'

/** "Right layer up. 7 turns so far. 3 of 4 top edges show yellow." What did not change is not said again. */
export function sayWhatHappened(
  t: TFunction,
  before: CubeInHand,
  after: CubeInHand & { readonly turns: number },
  settings: RoundSettings,
): string {
  const between = turnsBetween(before, after)
  if (between.kind === 'none') return ''
  if (between.kind === 'other') {
    const isNewTry = after.standing.length === 0 && after.tryNumber > before.tryNumber
    return isNewTry ? t('bench:say.newTry', { number: after.tryNumber }) : ''
  }
  const sentences = [
    sayTurns(t, between),
    t('bench:say.turnsSoFar', { count: after.turns }),
    ...sayChange(t, goalProgress(before.position, settings), goalProgress(after.position, settings), settings),
  ]
  return sentences.join(' ')
}

/** What is said of progress depends on these alone. */
type PlayedGoal = Pick<RoundSettings, 'baseColour'>

/** "2 of 4 top edges show yellow. An earlier layer is not whole just now." */
export function progressWords(t: TFunction, progress: GoalProgress, settings: PlayedGoal): string {
  if (progress.reached) return t('bench:progress.reached')
  const parts = partsWords(t, progress, settings)
  return progress.earlierWhole ? parts : `${parts} ${t('bench:progress.earlierBroken')}`
}

function sayTurns(t: TFunction, between: Extract<TurnsBetween, { turns: readonly Turn[] }>): string {
  // What was taken back is named as it was turned, not as it runs back.
  const turns = between.kind === 'turned' ? between.turns : inverseTurns(between.turns)
  const side = triggerOf(turns)
  const words = side === null ? turns.map((turn) => turnWords(t, turn)).join(', ') : t(`bench:triggers.${side}`)
  return t(between.kind === 'turned' ? 'bench:say.sentence' : 'bench:say.takenBack', { words })
}

function sayChange(t: TFunction, before: GoalProgress, after: GoalProgress, settings: RoundSettings): string[] {
  if (after.reached) return [t('bench:progress.reached')]
  const said: string[] = []
  if (before.stage !== after.stage || before.nDone !== after.nDone) said.push(partsWords(t, after, settings))
  if (before.earlierWhole && !after.earlierWhole) said.push(t('bench:progress.earlierBroken'))
  if (!before.earlierWhole && after.earlierWhole) said.push(t('bench:progress.earlierWhole'))
  return said
}

function partsWords(t: TFunction, { stage, nDone }: GoalProgress, { baseColour }: PlayedGoal): string {
  return t(`bench:progress.${stage}`, { count: nDone, ...colourWords(t, baseColour) })
}
