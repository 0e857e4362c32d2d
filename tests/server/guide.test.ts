/** Par, the shortest solution and the lesson way of a round: who is told what, and when. Rules: tests/RULES.md, area GU. */

import { expect, test } from 'vitest'
import { parseStickers } from '../../engine/cube/stickers.ts'
import { turnOf } from '../../engine/cube/turns.ts'
import { stepsBeforeGoal } from '../../engine/method/goal-reached.ts'
import { err, ok } from '../../engine/result.ts'
import type { BoardView } from '../../engine/wire/views.ts'
import type { AppParts } from '../../server/app.ts'
import { A_SEARCH } from './support/a-search.ts'
import { beginServer, eachTestBeginsAServer, restartServer, server } from './support/each-test.ts'
import { aStudent, ask, aTeacher, connect, mustAsk, signIn, startRound, until } from './support/people.ts'

eachTestBeginsAServer()

async function aBoard(viewerKey: string): Promise<() => BoardView> {
  const client = connect(server)
  let { board } = await mustAsk(client, 'viewer:enter', { key: viewerKey })
  client.on('board', (next) => {
    board = next
  })
  return () => board
}

/** A search that answers one wish of a round after the other with these, and then as `A_SEARCH` does. */
function answersFirst(...first: Array<ReturnType<AppParts['search']['shortest']>>): AppParts['search'] {
  const isOfRound = (task: { to: number }) => task.to > 1
  return { ...A_SEARCH, shortest: (task) => (isOfRound(task) && first.shift()) || A_SEARCH.shortest(task) }
}

test('[GU1] within a second of the start the desk has par, a shortest solution and the lesson way, which lead to the goal', async () => {
  await beginServer()
  const session = await signIn(server)
  for (const stage of [1, 2, 3, 4, 5, 6, 7] as const) {
    const teacher = await aTeacher(server, { from: stage, to: stage }, session)
    await startRound(server, teacher)
    const { par, ways, round } = await until('the desk has it', () => teacher.view().par && teacher.view(), 1_000)
    const start = parseStickers(round?.start ?? '')
    if (!start.ok || ways === null) throw new Error('a start and ways')
    expect(par).toEqual({ turns: ways.shortest.length, proven: true, lowerBound: ways.shortest.length })
    expect(stepsBeforeGoal(start.value, ways.shortest.map(turnOf), stage)).toBe(ways.shortest.length)
    expect(stepsBeforeGoal(start.value, ways.lesson.turns.map(turnOf), stage)).not.toBeNull()
    expect(ways.lesson.steps.reduce((sum, { nSteps }) => sum + nSteps, 0)).toBe(ways.lesson.turns.length)
    expect(ways.lesson.nTurns).toBeGreaterThanOrEqual(par?.turns ?? Number.NaN)
    await mustAsk(teacher.client, 'round:void', { roomId: teacher.roomId, roundId: teacher.round() })
  }
})

test('[GU2] par reaches benches and board when the round has ended, the ways never do', async () => {
  await beginServer()
  const teacher = await aTeacher(server)
  const board = await aBoard(teacher.viewerKey)
  const ada = await aStudent(server, teacher.code, 'Ada')
  const heard: unknown[] = []
  ada.client.onAny((_, message) => heard.push(message))
  const roundId = await startRound(server, teacher)
  await until('the desk has par', () => teacher.view().par)
  await ada.turn(roundId, 0, ['U', "U'"])
  await until('the board has the lane', () => board().lanes.length === 1)
  expect([ada.view().par, board().par]).toEqual([null, null])
  await mustAsk(teacher.client, 'round:pause', { roomId: teacher.roomId, roundId })
  await until('the board pauses', () => board().round?.clock.phase === 'paused')
  expect([ada.view().par, board().par]).toEqual([null, null])
  await mustAsk(teacher.client, 'round:end', { roomId: teacher.roomId, roundId })
  await until('everybody has par', () => ada.view().par !== null && board().par !== null)
  expect([ada.view().par, board().par]).toEqual([teacher.view().par, teacher.view().par])
  expect(JSON.stringify([heard, board()])).not.toMatch(/"ways"|"shortest"|"lesson"/)
})

test('[GU3] the teacher shows par while the round runs, and hides it again; the next round begins with it hidden', async () => {
  await beginServer()
  const teacher = await aTeacher(server)
  const board = await aBoard(teacher.viewerKey)
  const ada = await aStudent(server, teacher.code, 'Ada')
  const { roomId, client } = teacher
  const roundId = await startRound(server, teacher)
  await until('the desk has par', () => teacher.view().par)
  await mustAsk(client, 'round:show-par', { roomId, roundId, shown: true })
  await until('all see it', () => ada.view().par !== null && board().par !== null && teacher.view().parShown)
  await mustAsk(client, 'round:show-par', { roomId, roundId, shown: false })
  await until('nobody sees it', () => ada.view().par === null && board().par === null && !teacher.view().parShown)
  await mustAsk(client, 'round:show-par', { roomId, roundId, shown: true })
  await mustAsk(client, 'round:end', { roomId, roundId })
  const next = await startRound(server, teacher)
  await until('the next round is seen', () => ada.view().round?.id === next && board().round?.id === next)
  expect([ada.view().par, board().par, teacher.view().parShown]).toEqual([null, null, false])
  expect(await ask(client, 'round:show-par', { roomId, roundId, shown: true })).toEqual({
    ok: false,
    error: { code: 'contest/no-such-round' },
  })
})

test('[GU4] over several stages the best known is told first, and the proof takes its place when it comes', async () => {
  let prove = () => {}
  const proof = new Promise<void>((resolve) => {
    prove = resolve
  })
  const turns = [turnOf('R')]
  await beginServer({
    search: answersFirst(
      Promise.resolve(ok({ turns: [...turns, ...turns, ...turns], proven: false, lowerBound: 1, nNodes: 1 })),
      proof.then(() => ok({ turns, proven: true, lowerBound: 1, nNodes: 1 })),
    ),
  })
  const teacher = await aTeacher(server, { from: 4, to: 7 })
  await startRound(server, teacher)
  const first = await until('the best known is told', () => teacher.view().par)
  expect(first).toEqual({ turns: 3, proven: false, lowerBound: 1 })
  prove()
  await until('it is proven', () => teacher.view().par?.proven)
  expect([teacher.view().par?.turns, teacher.view().ways?.shortest]).toEqual([1, ['R']])
})

test('[GU4] a later answer is never worse than an earlier one', async () => {
  const turns = [turnOf('R'), turnOf('U'), turnOf('F')]
  await beginServer({
    search: answersFirst(
      Promise.resolve(ok({ turns, proven: false, lowerBound: 2, nNodes: 1 })),
      Promise.resolve(ok({ turns: [...turns, ...turns], proven: false, lowerBound: 3, nNodes: 1 })),
    ),
  })
  const teacher = await aTeacher(server, { from: 4, to: 7 })
  await startRound(server, teacher)
  await until('the bounds meet', () => teacher.view().par?.proven)
  expect(teacher.view().par).toEqual({ turns: 3, proven: true, lowerBound: 3 })
})

test('[GU5] a search that fails is asked again, and the round goes on meanwhile', async () => {
  await beginServer({ search: answersFirst(Promise.resolve(err({ code: 'search/failed' } as const))) })
  const teacher = await aTeacher(server)
  const ada = await aStudent(server, teacher.code, 'Ada')
  const roundId = await startRound(server, teacher)
  expect(await ada.turn(roundId, 0, ['U'])).toMatchObject({ ok: true })
  expect(teacher.view().par).toBeNull()
  await until('par is there', () => teacher.view().par)
})

test('[GU6] after a restart par and ways are the same again', async () => {
  await beginServer()
  const teacher = await aTeacher(server)
  const roundId = await startRound(server, teacher)
  await until('the desk has par', () => teacher.view().par)
  const { par, ways } = teacher.view()
  const { cookie, roomId } = teacher
  await restartServer()
  const client = connect(server, { cookie })
  await mustAsk(client, 'desk:enter', {})
  let { desk } = await mustAsk(client, 'room:watch', { roomId })
  client.on('desk', (next) => {
    desk = next
  })
  await until('par is back', () => desk.par)
  expect([desk.round?.id, desk.par, desk.ways]).toEqual([roundId, par, ways])
})
