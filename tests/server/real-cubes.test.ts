/** Rounds that are played on real cubes, and rounds of a range of pars. Rules HC and GU: tests/RULES.md. */

import { afterEach, describe, expect, test } from 'vitest'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { StepName } from '../../engine/contest/steps.ts'
import { afterTurns } from '../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../engine/cube/cube-position.ts'
import { formatStickers, parseStickers } from '../../engine/cube/stickers.ts'
import { inverseTurn, turnOf } from '../../engine/cube/turns.ts'
import { lessonWay } from '../../engine/method/lesson-way.ts'
import { ok } from '../../engine/result.ts'
import { openParTables } from '../../engine/search/par/open-par-tables.ts'
import { openShortestSolutions } from '../../engine/search/par/open-shortest-solutions.ts'
import type { RoundSecrets } from '../../engine/search/setup/gives-nothing-away.ts'
import { stageByStage } from '../../engine/search/shortest/stage-by-stage.ts'
import type { AppParts } from '../../server/app.ts'
import { A_SEARCH } from './support/a-search.ts'
import { aServer, type TestServer } from './support/a-server.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import {
  aBoard,
  aReturningStudent,
  aStudent,
  ask,
  aTeacher,
  mustAsk,
  sendEverybodyHome,
  signIn,
  startRound,
  until,
} from './support/people.ts'

let server: TestServer
afterEach(async () => {
  sendEverybodyHome()
  await server.end()
})

/** A search whose setups are a solution backwards: they lead to the start, and what they may give away is noted. */
function withSetups(asked: (RoundSecrets | undefined)[] = []): AppParts['search'] {
  return {
    ...A_SEARCH,
    async setup({ position, secrets }) {
      asked.push(secrets)
      const solutions = await openShortestSolutions()
      if (!solutions.ok) throw new Error('the shipped solutions open')
      const turns = stageByStage(position, 7, solutions.value).map(inverseTurn).reverse()
      return ok({ turns, hold: 0 as never, nNodes: 0 })
    },
  }
}
const REAL: Partial<RoundSettings> = { from: 5, to: 5, cube: 'real' }

describe('real cubes', () => {
  test('[HC1] a round is dealt without its signal; who has the start says so; the signal is given to that round', async () => {
    server = await aServer({ search: withSetups() })
    const teacher = await aTeacher(server, REAL)
    const { client, roomId } = teacher
    const board = await aBoard(server, teacher)
    const [ada, bo] = [await aStudent(server, teacher.code, 'Ada'), await aStudent(server, teacher.code, 'Bo')]
    const { roundId } = await mustAsk(client, 'round:deal', { roomId, number: 1 })
    // Dealing again, from another tab, deals the same round.
    expect(await mustAsk(client, 'round:deal', { roomId, number: 1 })).toEqual({ roundId })
    await until('all have the start', () => ada.view().round?.clock.phase === 'ready' && board().round?.id === roundId)
    expect(await ada.turn(roundId, 0, ['R'])).toMatchObject({ error: { code: 'contest/not-started' } })
    await mustAsk(ada.client, 'cube:ready', { roundId, ready: true })
    await until('it is seen', () => board().nReady === 1 && ada.view().me.ready)
    expect(teacher.view().seats.map(({ name, ready }) => [name, ready])).toEqual([
      ['Ada', true],
      ['Bo', false],
    ])
    await mustAsk(ada.client, 'cube:ready', { roundId, ready: false })
    await until('it is taken back', () => board().nReady === 0)
    expect(await ask(bo.client, 'cube:ready', { roundId: 'other' as typeof roundId, ready: true })).toMatchObject({
      error: { code: 'contest/no-such-round' },
    })
    expect(await startRound(server, teacher)).toBe(roundId)
    expect(teacher.view().nRounds).toBe(1)
    expect(await ada.turn(roundId, 0, ['R'])).toMatchObject({ ok: true })
  })

  test('[HC1] a round that waits for its signal waits also after a restart, and can be struck out', async () => {
    server = await aServer({ search: withSetups() })
    const teacher = await aTeacher(server, REAL)
    const { client, roomId } = teacher
    const ada = await aStudent(server, teacher.code, 'Ada')
    const { roundId } = await mustAsk(client, 'round:deal', { roomId, number: 1 })
    expect(await ask(client, 'round:deal', { roomId, number: 2 })).toMatchObject({ error: { code: 'room/round-open' } })
    expect(await ask(client, 'round:pause', { roomId, roundId })).toMatchObject({
      error: { code: 'contest/wrong-phase' },
    })
    await until('it is there', () => teacher.view().round?.id === roundId && teacher.view().par !== null)
    await expectSameAfterRestart(server, teacher, [ada.token])
    await mustAsk(client, 'round:void', { roomId, roundId })
    expect((await mustAsk(client, 'round:deal', { roomId, number: 2 })).roundId).not.toBe(roundId)
  })

  test('[HC1] pressing deal and start at once begins one round', async () => {
    server = await aServer({ search: withSetups() })
    const teacher = await aTeacher(server, REAL)
    const { client, roomId } = teacher
    const [dealt, started] = await Promise.all([
      ask(client, 'round:deal', { roomId, number: 1 }),
      ask(client, 'round:start', { roomId, number: 1 }),
    ])
    expect(dealt).toEqual(started)
    await mustAsk(client, 'round:start', { roomId, number: 1 })
    await until('it runs', () => teacher.view().round?.clock.phase === 'running')
    expect(teacher.view().nRounds).toBe(1)
  })

  test.each(['real', 'either'] as const)(
    '[HC2] cube "%s": the setup brings a solved cube to the start, and was told what it must not give away',
    async (cube) => {
      const asked: (RoundSecrets | undefined)[] = []
      server = await aServer({ search: withSetups(asked) })
      const teacher = await aTeacher(server, { ...REAL, cube })
      const ada = await aStudent(server, teacher.code, 'Ada')
      await mustAsk(teacher.client, 'round:deal', { roomId: teacher.roomId, number: 1 })
      const setup = await until('Ada has the setup', () => ada.view().setup)
      const { round, par } = await until('the desk has it', () => teacher.view().setup !== null && teacher.view())
      expect(formatStickers(afterTurns(solvedCube(), setup.map(turnOf)))).toBe(round?.start)
      expect(teacher.view().setup).toEqual({ kind: 'turns', turns: setup })
      const start = parseStickers(round?.start ?? '')
      if (!start.ok) throw new Error('a start')
      expect(asked).toEqual([{ to: 5, parTurns: par?.turns, lessonWay: lessonWay(start.value, { from: 5, to: 5 }) }])
      const again = await aReturningStudent(server, ada.token)
      expect(again.view().setup).toEqual(setup)
      expect(again.view().noSetup).toBe(false)
    },
  )

  test('[HC2] where the cube is on the screen no setup is looked for or sent', async () => {
    const asked: (RoundSecrets | undefined)[] = []
    server = await aServer({ search: withSetups(asked) })
    const teacher = await aTeacher(server, { ...REAL, cube: 'screen' })
    const ada = await aStudent(server, teacher.code, 'Ada')
    await startRound(server, teacher)
    await until('the desk has par', () => teacher.view().par)
    expect([ada.view().setup, ada.view().noSetup, teacher.view().setup, asked]).toEqual([null, false, null, []])
  })

  test('[HC2] where there is none desk and students are told, also one who comes back, and the class can play on screens', async () => {
    server = await aServer()
    const teacher = await aTeacher(server, REAL)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    await until('the desk is told', () => teacher.view().setup?.kind === 'none')
    await until('Ada is told', () => ada.view().noSetup)
    expect(ada.view().setup).toBeNull()
    const back = await aReturningStudent(server, ada.token)
    expect(back.view().noSetup).toBe(true)
    expect(await back.turn(roundId, 0, ['R'])).toMatchObject({ ok: true })
  })

  test('[GU2] neither par nor ways leave the desk of a round on real cubes, dealt or running', async () => {
    server = await aServer({ search: withSetups() })
    const teacher = await aTeacher(server, REAL)
    const board = await aBoard(server, teacher)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const heard: unknown[] = []
    ada.client.onAny((_, message) => heard.push(message))
    await mustAsk(teacher.client, 'round:deal', { roomId: teacher.roomId, number: 1 })
    await until('Ada has the setup', () => ada.view().setup)
    const roundId = teacher.round()
    // Shown ahead of the signal it would tell how hard the start is.
    await mustAsk(teacher.client, 'round:show-par', { roomId: teacher.roomId, roundId, shown: true })
    await mustAsk(ada.client, 'cube:ready', { roundId, ready: true })
    await until('she is ready', () => board().nReady === 1)
    expect([ada.view().par, board().par]).toEqual([null, null])
    expect(JSON.stringify([heard, board()])).not.toMatch(/"ways"|"shortest"|"lesson"/)
  })

  test('[HC3] a solution that was written down is judged like any other, and marked', async () => {
    server = await aServer({ search: withSetups() })
    const teacher = await aTeacher(server, { ...REAL, hints: 0 })
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    const ways = await until('the desk has the ways', () => teacher.view().ways)
    const written = { roundId, tryNumber: 1, from: 0, steps: [...ways.shortest] as StepName[], written: true }
    const { reached } = await mustAsk(ada.client, 'turns:send', written)
    expect(reached?.turns).toBe(ways.shortest.length)
    await until('it is marked', () => teacher.view().lanes[0]?.notes?.written)
  })

  test('[HC5] hints written among the turns count and are noted, stay with their try, and the next one begins with none', async () => {
    server = await aServer({ search: withSetups() })
    const teacher = await aTeacher(server, { ...REAL, hints: 2, hintCost: 3 })
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    const { shortest } = await until('the desk has the ways', () => teacher.view().ways)
    const lane = () => teacher.view().lanes[0]
    const send = (tryNumber: number, steps: readonly StepName[]) =>
      ask(ada.client, 'turns:send', { roundId, tryNumber, from: 0, steps: [...steps], written: true })

    // Above the level of the round: refused as a whole, and the same try can be sent without it.
    expect(await send(1, ['R', 'hint-3'])).toMatchObject({ error: { code: 'contest/no-such-hint', max: 2, held: 0 } })
    const short = [...shortest.slice(0, -1), 'hint-1', 'hint-2'] as StepName[]
    expect(await send(1, short)).toMatchObject({ ok: true, value: { held: short.length, reached: null } })
    await until('it is noted', () => lane()?.notes?.nHints === 2)
    expect(lane()).toMatchObject({ turns: shortest.length - 1 + 2 * 3, notes: { hintLevel: 2, written: true } })

    const { value } = (await send(2, shortest)) as { readonly value: { readonly reached: { readonly turns: number } } }
    expect(value.reached.turns).toBe(shortest.length)
    await until('the second one counts', () => lane()?.best?.turns === shortest.length)
    expect(lane()?.notes).toMatchObject({ nHints: 0, hintLevel: 0, written: true })

    // Dearer than the one before, so the footnote stays that of the try that counts.
    const helped = await send(3, ['hint-1', ...shortest])
    expect(helped).toMatchObject({ value: { reached: { turns: shortest.length + 3 } } })
    await until('the third one is known', () => lane()?.tryNumber === 3)
    expect([lane()?.best?.turns, lane()?.notes?.nHints]).toEqual([shortest.length, 0])
    await expectSameAfterRestart(server, teacher, [ada.token])
  })
})

describe('a range of pars', () => {
  test('[ST8] each round that is dealt is of that par, also of a rare one, and without one is refused', async () => {
    server = await aServer()
    const pars = await openParTables()
    if (!pars.ok) throw new Error('the shipped pars open')
    const session = await signIn(server)
    const ranges = [
      { from: 5, to: 5, parFrom: 7, parTo: 8 },
      { from: 1, to: 1, parFrom: null, parTo: 3 },
      { from: 3, to: 3, parFrom: 12, parTo: 12 },
    ] as const
    for (const range of ranges) {
      const teacher = await aTeacher(server, range, session)
      await startRound(server, teacher)
      const { par } = await until('the desk has par', () => teacher.view().par && teacher.view())
      expect(par?.turns).toBeGreaterThanOrEqual(range.parFrom ?? 1)
      expect(par?.turns).toBeLessThanOrEqual(range.parTo)
      const { cases: _all, ...settings } = teacher.view().settings
      const impossible = { ...settings, cases: null, parFrom: 30, parTo: 30 }
      expect(await ask(teacher.client, 'room:set', { roomId: teacher.roomId, settings: impossible })).toMatchObject({
        error: { code: 'room/no-such-start' },
      })
    }
  })

  test('[GU3] that the teacher shows par is still so after a restart', async () => {
    server = await aServer()
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    await until('the desk has par', () => teacher.view().par)
    await mustAsk(teacher.client, 'round:show-par', { roomId: teacher.roomId, roundId, shown: true })
    await until('Ada sees it', () => ada.view().par)
    await expectSameAfterRestart(server, teacher, [ada.token])
    const { dataDir } = server
    sendEverybodyHome()
    await server.stop()
    server = await aServer({ dataDir, aheadMs: server.aheadMs() })
    const back = await aReturningStudent(server, ada.token)
    await until('Ada sees it again', () => back.view().par)
  })
})
