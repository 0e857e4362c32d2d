/** How much one may say, and that nobody else pays for it. Rules: tests/RULES.md. */

import { expect, test } from 'vitest'
import { eachTestHasAServer, server } from './support/each-test.ts'
import { aReturningStudent, aStudent, ask, aTeacher, connect, startRound } from './support/people.ts'

eachTestHasAServer()

test('[IN6] whoever guesses codes on many connections does not keep others behind the same address out', async () => {
  const teacher = await aTeacher(server)
  for (let guesser = 0; guesser < 12; guesser++) {
    const client = connect(server)
    const guesses = Array.from({ length: 8 }, () => ask(client, 'seat:join', { code: 'BADBAD', name: 'Bo' }))
    for (const answer of await Promise.all(guesses)) expect(answer.ok).toBe(false)
  }
  await aStudent(server, teacher.code, 'Ada')
})

test('[IN6] a flood of wrong codes from one address is stopped, and says how long', async () => {
  await aTeacher(server)
  let waitMs = 0
  for (let guesser = 0; guesser < 40 && waitMs === 0; guesser++) {
    const client = connect(server)
    const guesses = Array.from({ length: 8 }, () => ask(client, 'seat:join', { code: 'BADBAD', name: 'Bo' }))
    for (const answer of await Promise.all(guesses)) {
      if (!answer.ok && answer.error.code === 'room/too-many-wrong-codes') waitMs = answer.error.retryAfterMs
    }
  }
  expect(waitMs).toBeGreaterThan(0)
  expect(waitMs).toBeLessThanOrEqual(10_000)
})

test('[WI5] the limit of a student follows the seat, on whichever connection it is', async () => {
  const teacher = await aTeacher(server)
  const [ada, bo] = [await aStudent(server, teacher.code, 'Ada'), await aStudent(server, teacher.code, 'Bo')]
  const roundId = await startRound(server, teacher)
  await Promise.all(Array.from({ length: 170 }, () => ada.turn(roundId, 0, ['R'])))
  const again = await aReturningStudent(server, ada.token)
  expect(await again.turn(roundId, 0, ['R'])).toMatchObject({ ok: false, error: { code: 'wire/too-fast' } })
  expect(await bo.turn(roundId, 0, ['R'])).toMatchObject({ ok: true })
})
