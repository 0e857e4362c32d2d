/** How far away each bench is. Rules SI: tests/RULES.md. */

import { expect, test } from 'vitest'
import { beginServer, eachTestBeginsAServer, server } from './support/each-test.ts'
import { aStudent, aTeacher, startRound, until } from './support/people.ts'

eachTestBeginsAServer()

test('[SI5] the desk is told how long a message takes to each page and back; nothing of one that does not answer, or is gone', async () => {
  await beginServer({ delays: { askEveryMs: 150, answerMsMax: 100 } })
  const teacher = await aTeacher(server)
  const [near, far, silent] = [
    await aStudent(server, teacher.code, 'Near'),
    await aStudent(server, teacher.code, 'Far'),
    await aStudent(server, teacher.code, 'Silent'),
  ]
  near.client.on('delay:ask', (_message, answer) => answer())
  far.client.on('delay:ask', (_message, answer) => setTimeout(answer, 60))
  const heard: unknown[] = []
  silent.client.onAny((name) => heard.push(name))
  await startRound(server, teacher)
  const delayOf = (name: string) => {
    const seat = teacher.view().seats.find((each) => each.name === name)
    return teacher.view().cells.find(({ seatId }) => seatId === seat?.seatId)?.delayMs ?? null
  }
  await until('both are measured', () => delayOf('Near') !== null && delayOf('Far') !== null)
  expect(delayOf('Near')).toBeLessThan(50)
  expect(delayOf('Far')).toBeGreaterThanOrEqual(55)
  await until('the silent one was asked', () => heard.filter((name) => name === 'delay:ask').length > 1)
  expect(delayOf('Silent')).toBeNull()
  far.client.disconnect()
  await until('nothing is known of who is gone', () => delayOf('Far') === null)
  // Nobody else is told.
  expect(JSON.stringify([near.view(), silent.view()])).not.toContain('delay')
})
