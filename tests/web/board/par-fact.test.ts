/** Par in the still column: covered, shown, and never called par when it is not proven. */

import type { TFunction } from 'i18next'
import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { beforeAll, expect, test } from 'vitest'
import type { ParView } from '../../../engine/wire/views.ts'
import { ParFact } from '../../../web/board/par-fact.tsx'
import { parName, parWords } from '../../../web/parts/par-words.ts'
import { inEnglish } from '../english.ts'

const PAR_11: ParView = { turns: 11, proven: true, lowerBound: 11 }
const BEST_27: ParView = { turns: 27, proven: false, lowerBound: 15 }

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

test('[BO12] while it is hidden the column says that par is covered, and holds no figure', () => {
  const shown = textOf(null, false)
  expect(shown).toBe('Par, covered')
})

test('[BO12] when the round is over without one, nothing is covered', () => {
  expect(textOf(null, true)).toBe('')
})

test.each([
  ['proven', PAR_11, 'Par11', 'Par 11', 'Par 11'],
  ['not proven', BEST_27, 'Best known27 at least 15', 'Best known 27', 'Best known 27, at least 15'],
])('[BO13] %s', (_, par, inColumn, name, words) => {
  expect(textOf(par, false).trim()).toBe(inColumn)
  expect(parName(t, par)).toBe(name)
  expect(parWords(t, par)).toBe(words)
  if (!par.proven) expect(inColumn + name + words).not.toMatch(/\bpar\b/i)
})

function textOf(par: ParView | null, isOver: boolean): string {
  return renderToStaticMarkup(createElement(ParFact, { par, isOver, className: undefined })).replace(/<[^>]*>/g, '')
}
