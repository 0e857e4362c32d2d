/** The board in two sentences, for who hears it. */

import type { TFunction } from 'i18next'
import { rankBoard } from '../../engine/contest/rank-board.ts'
import type { BoardView } from '../../engine/wire/views.ts'

export function summaryWords(t: TFunction, { round, lanes, nReached, nStudents }: BoardView): string {
  if (round === null) return ''
  const { phase } = round.clock
  const isEnded = phase === 'ended'
  const count = t('board:summary.running', { reached: nReached, students: nStudents })
  const first = rankBoard(lanes, isEnded ? 'ended' : 'running')[0]
  const leader =
    first === undefined || first.best === null
      ? ''
      : t('board:summary.leader', { name: first.name, turns: t('common:turns', { count: first.best.turns }) })
  return [isEnded ? t('board:summary.ended') : '', count, leader].filter(Boolean).join(' ')
}
