/** The ladder as it is drawn. Rules HT: tests/RULES.md. */

import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { beforeAll, expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { drawStart } from '../../../engine/method/draw-start.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { HintLadder, type HintLadderProps } from '../../../web/parts/hints/hint-ladder.tsx'
import { sourceNumbered } from '../../engine/method/starts.ts'
import { inEnglish } from '../english.ts'

beforeAll(inEnglish)

const SPAN = { from: 4, to: 4 } as const
const DOT = drawStart({ span: SPAN, cases: ['dot'], random: sourceNumbered(1) })

function drawn(over: Partial<HintLadderProps> = {}): string {
  const props: HintLadderProps = {
    position: DOT,
    span: SPAN,
    baseColour: 'white',
    marks: 'plain',
    levelMax: 3,
    cost: 0,
    given: [],
    onAsk: () => {},
    canAsk: true,
    ...over,
  }
  return renderToStaticMarkup(createElement(HintLadder, props))
}

// Rows: what a hint costs, what the button says before it is pressed.
test.each([
  [0, 'free'],
  [1, 'costs 1 turn'],
  [2, 'costs 2 turns'],
])('[HT6] a hint of %i turns is offered with the words: %s', (cost, words) => {
  expect(drawn({ cost })).toContain(`>${words}<`)
})

test('[HT6] the button names the next rung, and is gone with the last one', () => {
  expect(drawn()).toContain('>Hint<')
  expect(drawn({ given: [1] })).toContain('>How to hold?<')
  expect(drawn({ given: [1, 2] })).toContain('>What to do?<')
  expect(drawn({ given: [1, 2, 3] })).not.toContain('<button')
  expect(drawn({ given: [1], levelMax: 1 })).not.toContain('<button')
})

test('[HT6] where hints are off nothing is drawn; in a pause and at the goal none can be asked for', () => {
  expect(drawn({ levelMax: 0 })).toBe('')
  expect(drawn({ canAsk: false })).toContain('aria-disabled="true"')
  expect(drawn({ position: afterTurns(DOT, lessonWay(DOT, SPAN)) })).toContain('aria-disabled="true"')
})

test('[HT6] the rungs stand in a region that a screen reader hears, before there are any', () => {
  expect(drawn()).toMatch(/<ol[^>]*aria-live="polite"[^>]*><\/ol>/)
  expect(drawn({ given: [1] })).toContain('this is the dot')
})

test('[HT8] a hint from the teacher stands where hints are off, costs nothing, and says whom it is from', () => {
  const fromTeacher = { position: DOT, level: 2, onPutAway: () => {} } as const
  const sent = drawn({ levelMax: 0, cost: 2, fromTeacher })
  expect(sent).toContain('From your teacher')
  expect(sent).toContain('this is the dot')
  expect(sent).toContain('All right')
  expect(sent).not.toContain('costs')
  expect(sent.match(/<li>/g)).toHaveLength(2)
})

test('[HT8] it goes when its step is done, and the rung after it can be asked for', () => {
  const fromTeacher = { position: DOT, level: 1, onPutAway: () => {} } as const
  expect(drawn({ fromTeacher })).toContain('>How to hold?<')
  const done = drawn({ position: afterTurns(DOT, lessonWay(DOT, SPAN)), fromTeacher, levelMax: 0 })
  expect(done).toBe('')
})
