/**
 * Whatever a class and its teacher have done in a lesson, in whatever order: a server that was killed and started again on
 * what is on the disk shows every screen as it was. The seeds are fixed, so that a find can be looked at again.
 * Rules DU: tests/RULES.md.
 */

import fc from 'fast-check'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { NUDGE_WORDS } from '../../engine/contest/nudges.ts'
import { STEP_NAMES } from '../../engine/contest/steps.ts'
import { SEED } from '../engine/cube/arbitraries.ts'
import { aPlan, aRoster, sendable, settingsWith } from './support/a-roster.ts'
import { aServer, type TestServer } from './support/a-server.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import {
  ask,
  aTeacher,
  atTheDoor,
  connect,
  type Knocker,
  mustAsk,
  sendEverybodyHome,
  signIn,
  type Teacher,
  until,
} from './support/people.ts'

let server: TestServer
let session: string
beforeAll(async () => {
  server = await aServer({ unlimited: true })
  session = await signIn(server)
})
afterAll(async () => {
  sendEverybodyHome()
  await server.end()
})

type Lesson = { teacher: Teacher; people: Knocker[]; rosterId: string; planId: string }
/** What is done, with a number that says to whom, or how. Refusals are as welcome as anything else. */
type Deed = (lesson: Lesson, n: number) => Promise<unknown>

const round = ({ teacher }: Lesson) => ({
  roomId: teacher.roomId,
  roundId: teacher.view().round?.id ?? ('none' as never),
})
const person = ({ people }: Lesson, n: number) => people[n % people.length]
const seatOf = (lesson: Lesson, n: number) => person(lesson, n).seated()?.view().me.seatId ?? ('nobody' as never)
const act = (lesson: Lesson, name: Parameters<typeof ask>[1], message: object) =>
  ask(lesson.teacher.client, name, { roomId: lesson.teacher.roomId, ...message } as never)

const STEPS = STEP_NAMES.filter((name) => /^(?:[RUF]'?|y|take-back|hint-\d)$/.test(name))
const stepsBy = (n: number, length: number) =>
  Array.from({ length }, (_, index) => STEPS[(n * 7 + index * index * 3 + index) % STEPS.length])

const DEEDS: Readonly<Record<string, Deed>> = {
  join: async (lesson, n) => {
    const wishes = [{ name: `Kim ${'ABCDEFGH'[n % 8]}` }, { pupilId: 'pupil-ada' }, { pupilId: 'pupil-bo' }, {}]
    const moves = n % 5 === 0 ? { moves: true } : {}
    lesson.people.push(await atTheDoor(server, lesson.teacher.code, { ...wishes[n % wishes.length], ...moves }))
  },
  open: async (lesson, n) => {
    const knock = lesson.teacher.view().knocks[0]
    return act(lesson, 'knock:answer', { knockId: knock?.knockId ?? 'none', letIn: n % 3 > 0 })
  },
  entry: (lesson, n) => {
    const names = (['typed', 'given', 'roster'] as const)[n % 3]
    const rosterId = names === 'roster' ? lesson.rosterId : null
    return act(lesson, 'room:entry', { entry: { names, rosterId, approve: n % 4 === 0 } })
  },
  leave: (lesson, n) => (n % 3 === 0 ? ask(person(lesson, n).client, 'seat:leave', {}) : Promise.resolve()),
  rename: (lesson, n) => act(lesson, 'seat:rename', { seatId: seatOf(lesson, n), name: `Sam ${'ABCDEFGH'[n % 8]}` }),
  lock: (lesson, n) => act(lesson, 'room:lock', { locked: n % 3 === 0 }),
  settings: (lesson, n) =>
    act(lesson, 'room:set', {
      settings: settingsWith({
        from: 4,
        to: 4,
        hints: ([0, 1, 3] as const)[n % 3],
        hintCost: n % 4,
        boardSeenBy: n % 5 === 0 ? 'own' : 'all',
      }),
    }),
  plan: (lesson, n) =>
    act(lesson, 'room:use-plan', {
      plan: n % 4 === 0 ? null : aPlan({ from: 5, to: 5 }, { from: 4, to: 4, hints: 2 }),
    }),
  part: (lesson, n) => act(lesson, 'room:plan-at', { at: n % 5 }),
  start: (lesson) =>
    act(lesson, 'round:start', { number: lesson.teacher.view().nRounds + 1 }).then(() => server.advance(3_000)),
  deal: (lesson) => act(lesson, 'round:deal', { number: lesson.teacher.view().nRounds + 1 }),
  clock: (lesson, n) => {
    const name = (['round:pause', 'round:resume', 'round:resume', 'round:end'] as const)[n % 4]
    return act(lesson, name, round(lesson))
  },
  time: (lesson, n) => act(lesson, 'round:add-time', { ...round(lesson), addedMs: 1_000 * (n + 1) }),
  void: (lesson, n) => (n % 4 === 0 ? act(lesson, 'round:void', round(lesson)) : Promise.resolve()),
  par: (lesson, n) => act(lesson, 'round:show-par', { ...round(lesson), shown: n % 2 === 0 }),
  turn: async (lesson, n) => {
    const { client } = person(lesson, n)
    const { roundId } = round(lesson)
    const mine = person(lesson, n).seated()?.view().mine
    for (const tryNumber of [mine?.number ?? 1, (mine?.number ?? 1) + (n % 2)])
      for (const from of [0, 1, 2, 4])
        await ask(client, 'turns:send', {
          roundId,
          tryNumber,
          from,
          steps: stepsBy(n, 1 + (n % 4)),
          kept: n % 2 === 0,
          written: n % 3 === 0,
        })
  },
  handIn: (lesson, n) =>
    ask(person(lesson, n).client, 'turns:hand-in', {
      roundId: round(lesson).roundId,
      tryNumber: 1 + (n % 4),
      steps: stepsBy(n, 5).filter((name) => name !== 'take-back'),
    }),
  nudge: (lesson, n) =>
    act(lesson, 'nudge:send', {
      roundId: round(lesson).roundId,
      to: n % 3 === 0 ? 'all' : [seatOf(lesson, n)],
      nudge: n % 2 === 0 ? { kind: 'words', words: NUDGE_WORDS[n % 8] } : { kind: 'point', piece: 'UF' },
    }),
  shelf: (lesson, n) => {
    const { client } = lesson.teacher
    if (n % 4 === 0) return ask(client, 'roster:remove', { rosterId: lesson.rosterId })
    if (n % 4 === 1) return ask(client, 'plan:remove', { planId: lesson.planId })
    return ask(client, 'roster:keep', {
      rosterId: n % 4 === 2 ? lesson.rosterId : null,
      roster: sendable(aRoster(['Ada', 'Bo', 'Cy'])),
    })
  },
  passing: async (lesson, n) => {
    await ask(person(lesson, n).client, 'help:ask', { wanted: true })
    await ask(person(lesson, n).client, 'cube:ready', { roundId: round(lesson).roundId, ready: true })
    await act(lesson, 'show:at', { at: { at: n, chosen: 0, pointer: null } })
  },
}

const aLesson = fc.array(fc.tuple(fc.constantFrom(...Object.keys(DEEDS)), fc.nat(1_000)), {
  minLength: 30,
  maxLength: 45,
})

test.each(fc.sample(aLesson, { seed: SEED, numRuns: 20 }))(
  '[DU23] lesson %#: every screen is as it was',
  async (...deeds) => {
    const teacher = await aTeacher(server, { hints: 3, hintCost: 1 }, session)
    const { rosterId } = await mustAsk(teacher.client, 'roster:keep', {
      rosterId: null,
      roster: sendable(aRoster(['Ada', 'Bo'])),
    })
    const { planId } = await mustAsk(teacher.client, 'plan:keep', { planId: null, plan: aPlan({}, {}) as never })
    const lesson: Lesson = { teacher, people: [], rosterId, planId }
    for (const n of [0, 4, 8])
      lesson.people.push(await atTheDoor(server, teacher.code, { name: `Zoe ${'ABCDEFGHI'[n]}` }))
    await DEEDS.start(lesson, 0)
    await until('the round is there', () => teacher.view().round)
    for (const [name, n] of deeds) await DEEDS[name](lesson, n)
    const tokens = lesson.people.map(({ wish }) => wish.token ?? '')
    await expectSameAfterRestart(server, teacher, tokens)
    sendEverybodyHome()
  },
)

test('[DU23] these lessons have something in them', async () => {
  const client = connect(server, { cookie: session })
  const { home } = await mustAsk(client, 'desk:enter', {})
  const desks = []
  for (const { id: roomId } of home.rooms) desks.push((await mustAsk(client, 'room:watch', { roomId })).desk)
  expect(desks.some(({ rounds }) => rounds.length > 1)).toBe(true)
  expect(desks.some(({ plan }) => plan !== null)).toBe(true)
  for (const found of [
    /"nNudges":[1-9]/,
    /"nHints":[1-9]/,
    /"kept":true/,
    /"written":true/,
    /"pupilId":"pupil-/,
    /"parShown":true/,
  ])
    expect([found.source, found.test(JSON.stringify(desks))]).toEqual([found.source, true])
})
