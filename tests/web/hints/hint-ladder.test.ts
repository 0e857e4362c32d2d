/** The ladder as it is drawn. Rules HT: tests/RULES.md. */

import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { beforeAll, expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { drawStart } from '../../../engine/method/draw-start.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import type { HintLevel } from '../../../engine/method/way/hint-level.ts'
import { stepUnderWay } from '../../../engine/method/way/step-under-way.ts'
import { HintLadder, type HintLadderProps } from '../../../web/parts/hints/hint-ladder.tsx'
import { sourceNumbered } from '../../engine/method/starts.ts'
import { inEnglish } from '../english.ts'

beforeAll(inEnglish)

const SPAN = { from: 4, to: 4 } as const
const DOT = drawStart({ span: SPAN, cases: ['dot'], random: sourceNumbered(1) })

const rung = (level: HintLevel) => ({ position: DOT, level })

function drawn(over: Partial<HintLadderProps> = {}): string {
  const props: HintLadderProps = {
    position: DOT,
    begun: null,
    span: SPAN,
    baseColour: 'white',
    marks: 'plain',
    levelMax: 3,
    cost: 0,
    shown: null,
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
  expect(drawn({ shown: rung(1) })).toContain('>How to hold?<')
  expect(drawn({ shown: rung(2) })).toContain('>What to do?<')
  for (const last of [drawn({ shown: rung(3) }), drawn({ shown: rung(1), levelMax: 1 })])
    expect(last).not.toContain('aria-keyshortcuts')
})

test('[HT6] where hints are off nothing is drawn; in a pause and at the goal none can be asked for', () => {
  expect(drawn({ levelMax: 0 })).toBe('')
  expect(drawn({ canAsk: false })).toContain('aria-disabled="true"')
  expect(drawn({ position: afterTurns(DOT, lessonWay(DOT, SPAN)) })).toContain('aria-disabled="true"')
})

test('[HT12] amid a sequence the ladder speaks of where it began, and of what is left of it', () => {
  const done = lessonWay(DOT, SPAN).slice(0, 3)
  const position = afterTurns(DOT, done)
  const begun = stepUnderWay(DOT, done, SPAN)
  expect(begun).not.toBeNull()
  const words = (level: HintLevel) => drawn({ position, begun, shown: rung(level) })
  for (const level of [1, 2, 3] as const) expect(words(level)).not.toContain('An earlier layer is broken')
  expect(words(2)).toContain('You are in the middle of it: go on as you began.')
  expect(words(2)).toContain('>What to do?<')
  expect(words(3)).toContain('You are in the middle of it: U’ R’ F’ are left.')
  // Without a hint nothing is said of it.
  expect(drawn({ position, begun })).not.toContain('in the middle')
})

test('[HT6] the rungs stand in a region that a screen reader hears, before there are any', () => {
  expect(drawn()).toMatch(/<ol[^>]*aria-live="polite"[^>]*><\/ol>/)
  expect(drawn({ shown: rung(1) })).toContain('this is the dot')
})

const fromTeacher = { isAway: false, onPutAway: () => {}, onTakeOut: () => {} }

test('[HT8] a hint from the teacher stands where hints are off, costs nothing, and says whom it is from', () => {
  const sent = drawn({ levelMax: 0, cost: 2, shown: rung(2), fromTeacher })
  expect(sent).toContain('From your teacher')
  expect(sent).toContain('this is the dot')
  expect(sent).toContain('All right')
  expect(sent).not.toContain('costs')
  expect(sent.match(/<li>/g)).toHaveLength(2)
  expect(drawn({ shown: rung(1), fromTeacher })).toContain('>How to hold?<')
})

test('[HT9] put away it can be taken out for nothing, and no rung is sold again', () => {
  const away = drawn({ cost: 2, shown: rung(1), fromTeacher: { ...fromTeacher, isAway: true } })
  expect(away).toContain('>To the hint<')
  expect(away).toContain('>free<')
  expect(away).not.toContain('costs')
  expect(away).not.toContain('this is the dot')
  const off = drawn({ levelMax: 0, shown: rung(3), fromTeacher: { ...fromTeacher, isAway: true } })
  expect(off).toContain('>To the hint<')
})

test('[HT11] a hint that was asked for can be put away for the goal, which stays in the page', () => {
  const own = drawn({ shown: rung(1), children: 'the goal' })
  expect(own).toContain('To the goal')
  expect(own).toContain('the goal')
  expect(drawn({ shown: rung(1), inText: true })).not.toContain('To the goal')
  expect(drawn({ children: 'the goal' })).not.toContain('To the goal')
})
