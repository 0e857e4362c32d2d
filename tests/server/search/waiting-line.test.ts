/** The line in front of the threads. Rules SE: tests/RULES.md. */

import { expect, test } from 'vitest'
import { WaitingLine } from '../../../server/search/waiting-line.ts'

/** One who waits, and what became of it. */
function someone(name: string, said: string[], isLong = false) {
  let finish = () => {}
  return {
    isLong,
    start: () => {
      said.push(`${name} starts`)
      return new Promise<void>((resolve) => {
        finish = resolve
      })
    },
    refuse: () => said.push(`${name} is refused`),
    finish: async () => {
      finish()
      await new Promise((resolve) => setImmediate(resolve))
    },
  }
}

test('[SE44] first come, first served, so many at a time, and nobody before it opens', async () => {
  const said: string[] = []
  const [a, b, c] = ['a', 'b', 'c'].map((name) => someone(name, said))
  const line = new WaitingLine(2, 3)
  expect([a, b, c].map((one) => line.join(one))).toEqual([true, true, true])
  expect(said).toEqual([])
  line.open()
  expect(said).toEqual(['a starts', 'b starts'])
  await b.finish()
  expect(said).toEqual(['a starts', 'b starts', 'c starts'])
})

test('[SE45] whoever finds the line full is turned away, until there is room', async () => {
  const said: string[] = []
  const [a, b, c] = ['a', 'b', 'c'].map((name) => someone(name, said))
  const line = new WaitingLine(1, 1)
  line.open()
  expect([line.join(a), line.join(b), line.join(c)]).toEqual([true, true, false])
  await a.finish()
  expect(line.join(c)).toBe(true)
  expect(said).toEqual(['a starts', 'b starts'])
})

test('[SE46] whoever leaves in time is refused, once, and not served', async () => {
  const said: string[] = []
  const [a, b, c] = ['a', 'b', 'c'].map((name) => someone(name, said))
  const line = new WaitingLine(1, 5)
  line.open()
  for (const one of [a, b, c]) line.join(one)
  expect([line.leave(a), line.leave(b), line.leave(b)]).toEqual([false, true, false])
  line.clear()
  await a.finish()
  expect(said).toEqual(['a starts', 'b is refused', 'c is refused'])
})

test('[SE60] a short one goes before the long ones, which never take all places', async () => {
  const said: string[] = []
  const [a, b] = ['a', 'b'].map((name) => someone(name, said, true))
  const [c, d] = ['c', 'd'].map((name) => someone(name, said))
  const line = new WaitingLine(2, 5, 1)
  line.open()
  for (const one of [a, b, c, d]) line.join(one)
  expect(said).toEqual(['a starts', 'c starts'])
  await c.finish()
  await d.finish()
  expect(said).toEqual(['a starts', 'c starts', 'd starts'])
  await a.finish()
  expect(said).toEqual(['a starts', 'c starts', 'd starts', 'b starts'])
})
