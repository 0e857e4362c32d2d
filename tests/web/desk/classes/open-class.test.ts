/** The class that is open at the desk. Rules DE: tests/RULES.md. */

import { expect, test } from 'vitest'
import { openClass } from '../../../../web/desk/classes/open-class.ts'

const OURS = { classId: 'abc', title: 'Thursday', pupils: [{ pupilId: 'p-1', name: 'Amaru' }] }
const THURSDAY = { title: OURS.title, pupils: OURS.pupils }
const open = (classId: string | null) => ({ kind: 'class', classId }) as const

test('[DE20] a class is found by its name in the history; one that is not there is not open', () => {
  expect(openClass(open('abc'), [OURS], null)).toMatchObject({ classId: 'abc', roster: THURSDAY })
  expect(openClass(open('gone'), [OURS], null)).toBeNull()
  expect(openClass(open(null), [OURS], null)).toMatchObject({ classId: null, roster: { title: '', pupils: [] } })
  expect(openClass(null, [OURS], null)).toBeNull()
})

test('[DE20] removed by another desk while it is open, it stays open and is kept anew', () => {
  const place = open('abc')
  const before = openClass(place, [OURS], null)
  const after = openClass(place, [], before)
  expect(after).toMatchObject({ classId: null, roster: THURSDAY })
  // And so it does whatever else comes from the shelf.
  expect(openClass(place, [], after)).toMatchObject({ classId: null, roster: THURSDAY })
  // Left, and come to again by Forward, it is not there any more.
  expect(openClass(open('abc'), [], after)).toBeNull()
})
