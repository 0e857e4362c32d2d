/**
 * The project's own thread, which dies, hangs or fails when a search has one of these budgets, in milliseconds; and cannot make
 * the table "corners".
 */

import { register } from 'tsx/esm/api'

register()
const { default: answer } = await import('../../../../server/search/search-thread.ts')

const TROUBLES = {
  1001: () => process.exit(3),
  1002: () => {
    setTimeout(() => {
      throw new Error('nobody catches this')
    })
    return new Promise(() => {})
  },
  1003: () => {
    for (;;);
  },
  1004: () => {
    throw new Error('a bug')
  },
}

export default function answerOrDie(task) {
  if (task.kind === 'table' && task.name === 'corners') throw new Error('this table cannot be made')
  return (TROUBLES[task.budgetMs] ?? answer)(task)
}
