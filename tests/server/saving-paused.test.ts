/** The disk refuses for a while: nobody is told anything that is not stored, and nothing is lost. Rules: tests/RULES.md. */

import { expect, test } from 'vitest'
import { TestDisk } from './support/a-disk.ts'
import { beginServer, eachTestBeginsAServer, server } from './support/each-test.ts'
import { aReturningStudent, aStudent, ask, aTeacher, connect, mustAsk, startRound, until } from './support/people.ts'

eachTestBeginsAServer()

test('[DU15] turns are refused while the disk refuses, are taken afterwards, and the desk says that saving is paused', async () => {
  const disk = new TestDisk()
  await beginServer({ wrapRecord: disk.wrap })
  const teacher = await aTeacher(server)
  const ada = await aStudent(server, teacher.code, 'Ada')
  const roundId = await startRound(server, teacher)
  await ada.turn(roundId, 0, ['R', 'U'])
  disk.refuse(true)
  expect(await Promise.all([ada.turn(roundId, 2, ['F']), ada.turn(roundId, 3, ['D'])])).toEqual([
    { ok: false, error: { code: 'store/saving-paused' } },
    { ok: false, error: { code: 'store/saving-paused' } },
  ])
  expect(await ask(connect(server), 'seat:join', { code: teacher.code, name: 'Bo' })).toMatchObject({
    error: { code: 'store/saving-paused' },
  })
  expect(await ask(teacher.client, 'round:end', { roomId: teacher.roomId, roundId })).toMatchObject({
    error: { code: 'store/saving-paused' },
  })
  await until('the desk says so', () => teacher.view().savingPaused)
  expect(teacher.view().lanes[0].turns).toBe(2)

  disk.refuse(false)
  // The page sends everything again from what was acknowledged.
  expect(await ada.turn(roundId, 2, ['F', 'D', 'L'])).toMatchObject({ ok: true, value: { held: 5 } })
  await until('the desk is calm again', () => !teacher.view().savingPaused)
  await aStudent(server, teacher.code, 'Bo')
  await mustAsk(teacher.client, 'round:end', { roomId: teacher.roomId, roundId })
  expect((await aReturningStudent(server, ada.token)).view().mine?.steps).toEqual(['R', 'U', 'F', 'D', 'L'])
})
