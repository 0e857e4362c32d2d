/** Lesson plans and rosters that teachers have put by, and a plan in a room. Rules SF: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { Shelf } from '../../engine/wire/views.ts'
import { SHELF_MAX } from '../../server/live/teacher-shelf.ts'
import { aPlan, aRoster, sendable, settingsWith } from './support/a-roster.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import { disk, eachTestHasAServer, restartServer, server } from './support/each-test.ts'
import {
  aStudent,
  ask,
  aTeacher,
  type Client,
  connect,
  mustAsk,
  startRound,
  type Teacher,
  until,
} from './support/people.ts'

eachTestHasAServer({ unlimited: true, ownDisk: true })

/** The session of a teacher with an account of its own: the link works once, so the record is told. */
async function anotherSession(): Promise<string> {
  const token = `another-session-${Math.random()}`
  const { hashSecret } = await import('../../server/secrets.ts')
  await server.record.write({
    kind: 'desk-session',
    tokenHash: hashSecret(token),
    teacherId: 'another-teacher' as never,
    atMs: Date.now(),
  })
  return `fairturn_desk=${token}`
}

async function shelfAt({ cookie }: { cookie: string }): Promise<Shelf> {
  const client = connect(server, { cookie })
  return (await mustAsk(client, 'desk:enter', {})).shelf
}
const keepRoster = (client: Client, names: string[], rosterId: string | null = null) =>
  ask(client, 'roster:keep', { rosterId, roster: sendable(aRoster(names)) })
const planOf = (first: Partial<RoundSettings> = {}, second: Partial<RoundSettings> = {}) =>
  aPlan(first, second) as Parameters<typeof keepPlan>[1]
const keepPlan = (client: Client, plan: never, planId: string | null = null) =>
  ask(client, 'plan:keep', { planId, plan })
async function keptId(asked: Promise<unknown>): Promise<string> {
  const answer = (await asked) as { ok: boolean; value: { planId?: string; rosterId?: string } }
  expect(answer.ok).toBe(true)
  return answer.value.planId ?? answer.value.rosterId ?? ''
}

describe('the shelf', () => {
  test('[SF1] what is put by, changed or removed is so at every desk of the teacher, and after a restart', async () => {
    const teacher = await aTeacher(server)
    const { client, cookie } = teacher
    const other = connect(server, { cookie })
    await mustAsk(other, 'desk:enter', {})
    const heard: Shelf[] = []
    other.on('shelf', (shelf) => heard.push(shelf))
    const planId = await keptId(keepPlan(client, planOf()))
    const rosterId = await keptId(keepRoster(client, ['Ada', 'Bo']))
    const gone = await keptId(keepRoster(client, ['Cy']))
    expect(await keptId(keepRoster(client, ['Ada', 'Bo', 'Di'], rosterId))).toBe(rosterId)
    await mustAsk(client, 'roster:remove', { rosterId: gone })
    const shelf = await shelfAt(teacher)
    expect(shelf).toEqual({
      plans: [{ planId, plan: planOf() }],
      rosters: [{ rosterId, roster: aRoster(['Ada', 'Bo', 'Di']) }],
    })
    await until('the other desk heard of each', () => heard.length === 5)
    expect(heard.at(-1)).toEqual(shelf)
    await restartServer({})
    expect(await shelfAt(teacher)).toEqual(shelf)
  })

  test('[SF2] another teacher neither sees nor changes nor removes it, nor has it at a door', async () => {
    const teacher = await aTeacher(server)
    const planId = await keptId(keepPlan(teacher.client, planOf()))
    const rosterId = await keptId(keepRoster(teacher.client, ['Ada']))
    const before = await shelfAt(teacher)
    const stranger = await aTeacher(server, {}, await anotherSession())
    expect(await shelfAt(stranger)).toEqual({ plans: [], rosters: [] })
    const entry = { names: 'roster', rosterId, approve: false } as const
    const asked = [
      keepPlan(stranger.client, planOf(), planId),
      keepRoster(stranger.client, ['Zoe'], rosterId),
      ask(stranger.client, 'plan:remove', { planId }),
      ask(stranger.client, 'roster:remove', { rosterId }),
      ask(stranger.client, 'room:entry', { roomId: stranger.roomId, entry }),
    ]
    for (const answer of await Promise.all(asked))
      expect(answer).toEqual({ ok: false, error: { code: 'shelf/not-yours' } })
    expect(await shelfAt(teacher)).toEqual(before)
  })

  test('[SF3] a shelf holds so many, a change is none more, and after a removal there is room again', async () => {
    const { client } = await aTeacher(server)
    const ids = await Promise.all(Array.from({ length: SHELF_MAX }, () => keptId(keepRoster(client, ['Ada']))))
    const full = { ok: false, error: { code: 'shelf/full', max: SHELF_MAX } }
    expect(await keepRoster(client, ['Late'])).toEqual(full)
    expect(await keepRoster(client, ['Ada'], ids[3])).toMatchObject({ ok: true })
    expect(await keepPlan(client, planOf())).toMatchObject({ ok: true })
    await mustAsk(client, 'roster:remove', { rosterId: ids[5] })
    expect(await keepRoster(client, ['Late'])).toMatchObject({ ok: true })
    expect(await keepRoster(client, ['Later'])).toEqual(full)
  })

  test('[SF3] many put by at once while the disk takes its time are not more than a shelf holds', async () => {
    const { client, cookie } = await aTeacher(server)
    disk.hold()
    const asked = Array.from({ length: SHELF_MAX + 5 }, () => keepRoster(client, ['Ada']))
    await new Promise((resolve) => setTimeout(resolve, 300))
    disk.release()
    const answers = await Promise.all(asked)
    expect(answers.filter((answer) => answer.ok)).toHaveLength(SHELF_MAX)
    expect((await shelfAt({ cookie })).rosters).toHaveLength(SHELF_MAX)
  })

  test('[SF1] while the disk refuses nothing is put by, and nothing is lost', async () => {
    const teacher = await aTeacher(server)
    const rosterId = await keptId(keepRoster(teacher.client, ['Ada']))
    const before = await shelfAt(teacher)
    disk.refuse(true)
    const paused = { ok: false, error: { code: 'store/saving-paused' } }
    expect(await keepRoster(teacher.client, ['Bo'])).toEqual(paused)
    expect(await keepRoster(teacher.client, ['Bo'], rosterId)).toEqual(paused)
    expect(await ask(teacher.client, 'roster:remove', { rosterId })).toEqual(paused)
    disk.refuse(false)
    expect(await shelfAt(teacher)).toEqual(before)
  })
})

describe('a plan in a room', () => {
  const FIRST = { from: 5, to: 5, timeLimitMs: 120_000 } as const
  const SECOND = { from: 6, to: 6, hints: 2 } as const
  const playPlan = ({ client, roomId }: Teacher, plan: never | null) => ask(client, 'room:use-plan', { roomId, plan })
  const goTo = ({ client, roomId }: Teacher, at: number) => ask(client, 'room:plan-at', { roomId, at })

  test("[SF4] where the class comes to a round its settings are the next round's; other parts leave them", async () => {
    const teacher = await aTeacher(server)
    const before = teacher.view().settings
    expect(await playPlan(teacher, planOf(FIRST, SECOND))).toMatchObject({ ok: true })
    await until('the plan is there', () => teacher.view().plan?.at === 0)
    expect(teacher.view().settings).toEqual(before)
    await goTo(teacher, 1)
    await until('the first round', () => teacher.view().settings.from === 5)
    expect(teacher.view().settings).toEqual(settingsWith(FIRST))
    const roundId = await startRound(server, teacher)
    expect(teacher.view().round?.settings).toEqual(settingsWith(FIRST))
    await goTo(teacher, 2)
    await until('the second round', () => teacher.view().settings.from === 6)
    // What is played stays what it was.
    expect(teacher.view().round?.settings).toEqual(settingsWith(FIRST))
    await goTo(teacher, 3)
    await until('looking back', () => teacher.view().plan?.at === 3)
    expect(teacher.view().settings).toEqual(settingsWith(SECOND))
    await expectSameAfterRestart(server, teacher, [])
    await mustAsk(teacher.client, 'round:end', { roomId: teacher.roomId, roundId })
    expect(await playPlan(teacher, null)).toMatchObject({ ok: true })
    await until('it is put away', () => teacher.view().plan === null)
    expect(teacher.view().settings).toEqual(settingsWith(SECOND))
    await expectSameAfterRestart(server, teacher, [])
  })

  test('[SF5] a part that is not there is refused, with and without a plan', async () => {
    const teacher = await aTeacher(server)
    const none = { ok: false, error: { code: 'room/no-such-part' } }
    expect(await goTo(teacher, 0)).toEqual(none)
    await playPlan(teacher, planOf())
    expect(await goTo(teacher, 4)).toEqual(none)
    await until('the plan is there', () => teacher.view().plan?.at === 0)
  })

  test('[SF5] a round that leaves no start to deal is refused, and the class stays where it was', async () => {
    const teacher = await aTeacher(server)
    const impossible = { from: 4, to: 4, parFrom: 29, parTo: 30 } as const
    await playPlan(teacher, planOf(FIRST, impossible))
    await goTo(teacher, 1)
    await until('the first round', () => teacher.view().plan?.at === 1)
    const { plan, settings } = teacher.view()
    expect(await goTo(teacher, 2)).toEqual({ ok: false, error: { code: 'room/no-such-start' } })
    const { desk } = await mustAsk(teacher.client, 'room:watch', { roomId: teacher.roomId })
    expect([desk.plan, desk.settings]).toEqual([plan, settings])
    // Also where a plan begins with it.
    const beginsSo = { title: '', parts: aPlan(impossible, {}).parts.slice(1) } as never
    expect(await playPlan(teacher, beginsSo)).toEqual({ ok: false, error: { code: 'room/no-such-start' } })
    const again = await mustAsk(teacher.client, 'room:watch', { roomId: teacher.roomId })
    expect(again.desk.plan).toEqual(plan)
    await expectSameAfterRestart(server, teacher, [])
  })

  test('[SF4] neither student nor projector is told of the plan', async () => {
    const teacher = await aTeacher(server)
    const heard: unknown[] = []
    const ada = await aStudent(server, teacher.code, 'Ada')
    const viewer = connect(server)
    heard.push(await mustAsk(viewer, 'viewer:enter', { key: teacher.viewerKey }))
    for (const client of [ada.client, viewer]) client.onAny((_, message) => heard.push(message))
    await playPlan(teacher, { ...(planOf() as object), title: 'Canary' } as never)
    await mustAsk(teacher.client, 'seat:rename', { roomId: teacher.roomId, seatId: ada.view().me.seatId, name: 'Eve' })
    await until('they were told of the name', () => ada.view().me.name === 'Eve')
    expect(JSON.stringify(heard)).not.toContain('Canary')
  })
})
