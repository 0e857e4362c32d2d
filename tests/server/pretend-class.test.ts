/** The simulated class comes and goes as a whole. Rules PC: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { SKILLS } from '../../server/live/pretend/pretend-mind.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import { disk, eachTestHasAServer, server } from './support/each-test.ts'
import { aBoard, aStudent, ask, aTeacher, mustAsk, startRound, until } from './support/people.ts'

eachTestHasAServer({ ownDisk: true })

describe('a pretend class', () => {
  test('[PC1] asked for twice at once it comes once, beside students who have its names', async () => {
    const teacher = await aTeacher(server)
    await aStudent(server, teacher.code, 'Celia')
    const message = { roomId: teacher.roomId, seated: true }
    const both = await Promise.all([
      ask(teacher.client, 'pretend:seat', message),
      ask(teacher.client, 'pretend:seat', message),
    ])
    expect(both.map((answer) => answer.ok)).toEqual([true, true])
    await until('all are here', () => teacher.view().seats.filter((seat) => seat.pretend).length === SKILLS.length)
  })

  test('[PC2] where one of them cannot come in none does, and asking again works', async () => {
    const teacher = await aTeacher(server)
    const message = { roomId: teacher.roomId, seated: true }
    disk.refuseAt(7)
    expect(await ask(teacher.client, 'pretend:seat', message)).toMatchObject({ error: { code: 'store/saving-paused' } })
    await until('nobody is there', () => teacher.view().seats.length === 0)
    await expectSameAfterRestart(server, teacher, [])
    await mustAsk(teacher.client, 'pretend:seat', message)
    await until('all are here', () => teacher.view().seats.length === SKILLS.length)
  })

  test('[PC6] the class and the board see its mark beside a round that it plays, not beside one that was over before it came', async () => {
    const teacher = await aTeacher(server)
    const board = await aBoard(server, teacher)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const { roomId, client } = teacher
    const roundId = await startRound(server, teacher)
    await mustAsk(client, 'round:end', { roomId, roundId })
    await mustAsk(client, 'pretend:seat', { roomId, seated: true })
    await until('the board has their names', () => board().names.length === SKILLS.length + 1)
    expect([board().room.pretend, ada.view().room.pretend]).toEqual([false, false])
    await startRound(server, teacher)
    await until('the board has the round', () => board().round?.number === 2)
    expect([board().room.pretend, ada.view().room.pretend]).toEqual([true, true])
  })

  test('[PC3] a class that could not be sent home for good is said to be there, and is gone when asked again', async () => {
    const teacher = await aTeacher(server)
    const { roomId } = teacher
    await mustAsk(teacher.client, 'pretend:seat', { roomId, seated: true })
    disk.refuse(true)
    const refused = await ask(teacher.client, 'pretend:seat', { roomId, seated: false })
    expect(refused).toMatchObject({ error: { code: 'store/saving-paused' } })
    disk.refuse(false)
    await mustAsk(teacher.client, 'pretend:seat', { roomId, seated: false })
    await until('nobody is there', () => teacher.view().seats.length === 0)
  })

  test('[PC3] sent home while it is coming in, nobody stays behind', async () => {
    const teacher = await aTeacher(server)
    const { roomId } = teacher
    disk.hold()
    const coming = ask(teacher.client, 'pretend:seat', { roomId, seated: true })
    await until('they are at the door', () => disk.asked.some((entry) => entry.kind === 'seat-joined'))
    const going = ask(teacher.client, 'pretend:seat', { roomId, seated: false })
    await new Promise((resolve) => setTimeout(resolve, 50))
    disk.release()
    await Promise.all([coming, going])
    await new Promise((resolve) => setTimeout(resolve, 300))
    expect(teacher.view().seats).toEqual([])
    await mustAsk(teacher.client, 'pretend:seat', { roomId, seated: true })
    await until('all are here', () => teacher.view().seats.length === SKILLS.length)
  })
})
