/** Writing a solution down where the round has hints, as it is drawn. Rules WR: tests/RULES.md. */

import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { beforeAll, expect, test } from 'vitest'
import { turnName } from '../../../engine/cube/turns.ts'
import { drawStart } from '../../../engine/method/draw-start.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { WriteSolution, type WriteSolutionProps } from '../../../web/parts/written/write-solution.tsx'
import type { HintsOfWriting } from '../../../web/parts/written/writing-hint.tsx'
import { sourceNumbered } from '../../engine/method/starts.ts'
import { inEnglish } from '../english.ts'

beforeAll(inEnglish)

const SPAN = { from: 4, to: 4 } as const
const DOT = drawStart({ span: SPAN, cases: ['dot'], random: sourceNumbered(1) })
const WAY = lessonWay(DOT, SPAN).map(turnName)
const HINTS: HintsOfWriting = { levelMax: 3, cost: 2, asked: [], onAsk: () => {} }
const ASK = /<button[^>]*aria-disabled="(true|false)"[^>]*>(?:(?!<\/button>).)*<b>Hint<\/b>/

function drawn(firstText: string, hints: HintsOfWriting | null, over: Partial<WriteSolutionProps> = {}): string {
  return renderToStaticMarkup(
    createElement(WriteSolution, {
      start: DOT,
      span: SPAN,
      baseColour: 'white',
      marks: 'plain',
      firstText,
      onSend: () => {},
      busy: false,
      refusal: null,
      hints,
      ...over,
    }),
  )
}

test('[WR8] where the round has hints one can be asked for, and it is said what it costs and from where it goes on', () => {
  expect(drawn('', null)).not.toContain('A hint goes on')
  const page = drawn('', HINTS)
  expect(page).toContain('A hint goes on from where your writing has got to.')
  expect(page).toContain('costs 2 turns')
  expect(ASK.exec(page)?.[1]).toBe('false')
})

test('[WR8] none is to be had while a token is faulty, while the round stands still, or at the goal', () => {
  const faulty = drawn('R q', HINTS)
  expect(ASK.exec(faulty)?.[1]).toBe('true')
  expect(faulty).toContain('First put right what is marked.')
  expect(ASK.exec(drawn('R', HINTS, { open: false }))?.[1]).toBe('true')
  expect(drawn(WAY.join(' '), HINTS)).not.toMatch(ASK)
})

test('[WR8] a hint that was asked for stands there, and the count holds what it cost, and says so', () => {
  const page = drawn('', { ...HINTS, asked: [{ level: 1, behind: [] }] })
  expect(page).toContain('this is the dot')
  expect(page).toContain('How to hold?')
  expect(page).toMatch(/<b>2<\/b> turns<small>2 of them for 1 hint<\/small>/)
  const free = drawn(WAY.join(' '), { ...HINTS, cost: 0, asked: [{ level: 1, behind: [] }] })
  expect(free).toContain('1 hint, free')
})

test('[HT9] what the teacher sent for the start is not asked for again, but taken out for nothing', () => {
  const taught = { level: 1, onTakeOut: () => {} } as const
  const page = drawn('', { ...HINTS, taught })
  expect(page).toContain('To the hint')
  expect(page).not.toContain('costs 2 turns')
  // One that was asked for above it holds it, too.
  const above = drawn('', { ...HINTS, taught, asked: [{ level: 2, behind: [] }] })
  expect(above).toContain('this is the dot')
  expect(above).toContain('What to do?')
})
