/** The board in a few sentences, for who hears it. */

import type { TFunction } from 'i18next'
import { rankBoard } from '../../engine/contest/rank-board.ts'
import type { BoardView } from '../../engine/wire/views.ts'
import { parWords } from '../parts/par-words.ts'

export function summaryWords(t: TFunction, { round, lanes, nReached, nStudents, par }: BoardView): string {
  if (round === null) return ''
  const { phase } = round.clock
  const isEnded = phase === 'ended'
  const count = t('board:summary.running', { reached: nReached, students: nStudents })
  const first = rankBoard(lanes, isEnded ? 'ended' : 'running')[0]
  const leader =
    first === undefined || first.best === null
      ? ''
      : t('board:summary.leader', { name: first.name, turns: t('common:turns', { count: first.best.turns }) })
  const parSentence = par === null ? '' : t('board:summary.par', { words: parWords(t, par) })
  return [isEnded ? t('board:summary.ended') : '', count, leader, parSentence].filter(Boolean).join(' ')
}
