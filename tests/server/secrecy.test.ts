/**
 * Everything that a student and a projector are ever sent over a whole lesson, field by field: no field that is not listed
 * here, and nothing of what only the desk may know. Rules AU: tests/RULES.md.
 */

import { expect, test } from 'vitest'
import type { StepName } from '../../engine/contest/steps.ts'
import { turnOf } from '../../engine/cube/turns.ts'
import { ok } from '../../engine/result.ts'
import { aPlan, rosterAtDoor, settingsWith } from './support/a-roster.ts'
import { A_SEARCH } from './support/a-search.ts'
import { beginServer, eachTestBeginsAServer, server } from './support/each-test.ts'
import { aStudent, ask, aTeacher, atTheDoor, connect, mustAsk, startRound, until } from './support/people.ts'

eachTestBeginsAServer()

/** Every field of a bench and of what a page is answered; a new one has to be thought about here first. */
const OF_A_ROUND = [
  ...['round', 'id', 'number', 'settings', 'start', 'clock', 'phase', 'startsAtMs', 'endsAtMs', 'endedAtMs'],
  ...['pausedAtMs', 'reason', 'atMs', 'from', 'to', 'cases', 'baseColour', 'timeLimitMs', 'tries', 'takeBack'],
  ...['boardSeenBy', 'hints', 'hintCost', 'parFrom', 'parTo', 'cube', 'pace'],
]
const OF_A_LANE = [
  ...['lanes', 'seatId', 'name', 'late', 'turns', 'tryNumber', 'tryReached', 'best', 'momentMs', 'progress', 'notes'],
  ...['nHints', 'hintLevel', 'nHintsBefore', 'nTriesHelped', 'nNudges', 'kept', 'written', 'turnsAfterEnd'],
  ...['nReached', 'nStudents'],
]
const OF_A_SHOWING = ['showing', 'version', 'shown', 'at', 'chosen', 'pointer', 'kind', 'title']
const OF_PAR = ['par', 'proven', 'lowerBound']
const OF_THE_ROOM = ['room', 'code', 'closed', 'pretend', 'deadlineMs']
const BENCH_FIELDS = new Set([
  ...[...OF_A_ROUND, ...OF_A_LANE, ...OF_A_SHOWING, ...OF_PAR, ...OF_THE_ROOM],
  ...[
    'me',
    'asksForHelp',
    'ready',
    'rounds',
    'bestTurns',
    'setup',
    'noSetup',
    'nudges',
    'nudge',
    'hint',
    'point',
    'level',
    'words',
    'piece',
    'handedIn',
  ],
  ...[
    'reached',
    'mine',
    'steps',
    'bench',
    'token',
    'held',
    'door',
    'names',
    'pupils',
    'pupilId',
    'isHere',
    'approve',
    'locked',
  ],
])
const BOARD_FIELDS = new Set([
  ...[...OF_A_ROUND, ...OF_A_LANE, ...OF_A_SHOWING, ...OF_PAR, ...OF_THE_ROOM],
  ...['locked', 'addresses', 'nReady', 'nRounds', 'covered', 'names', 'board'],
])

function fieldsOf(value: unknown, found = new Set<string>()): Set<string> {
  if (Array.isArray(value)) for (const each of value) fieldsOf(each, found)
  else if (typeof value === 'object' && value !== null) {
    for (const [key, each] of Object.entries(value)) {
      found.add(key)
      fieldsOf(each, found)
    }
  }
  return found
}

test.each([
  ['a class', false],
  ['a take-home room', true],
])(
  "[AU5] over a whole lesson of %s neither student nor projector is sent a field or a word that is the desk's",
  async (_what, isTakeHome) => {
    const asked: string[] = []
    await beginServer({
      unlimited: true,
      search: {
        ...A_SEARCH,
        setup: async ({ secrets }) => {
          asked.push(JSON.stringify(secrets))
          return ok({ turns: [turnOf('R'), turnOf('U')], hold: 0 })
        },
      },
    })
    const teacher = await aTeacher(server, { cube: 'either', hints: 2, boardSeenBy: 'own' })
    const { client, roomId, code, viewerKey } = teacher
    const act = (name: Parameters<typeof ask>[1], message: object) => ask(client, name, { roomId, ...message } as never)

    // What must not leave the desk.
    const elsewhere = await aTeacher(server, {}, teacher.cookie)
    await aStudent(server, elsewhere.code, 'Canaryfar')
    await mustAsk(client, 'plan:keep', { planId: null, plan: { ...aPlan({}, {}), title: 'Canaryplan' } as never })
    await act('room:use-plan', { plan: { ...aPlan({}, {}), title: 'Canaryplan' } })
    const rosterId = await rosterAtDoor(teacher, ['Bo'])
    await mustAsk(client, 'roster:keep', {
      rosterId,
      roster: { title: 'Canaryroster', pupils: [{ pupilId: 'pupil-bo', name: 'Bo' }] },
    })
    await act('room:entry', { entry: { names: 'typed', rosterId: null, approve: false } })
    if (isTakeHome)
      await act('room:take-home', {
        rounds: [settingsWith({ cube: 'either', hints: 2, boardSeenBy: 'own' }), settingsWith()],
        deadlineMs: Date.now() + 3_600_000,
      })

    const viewer = connect(server)
    const ada = await atTheDoor(server, code, { name: 'Ada' })
    const heardByAda: unknown[] = [ada.answer]
    const heardByViewer: unknown[] = []
    ada.client.onAny((_, message) => heardByAda.push(message))
    viewer.onAny((_, message) => heardByViewer.push(message))
    heardByViewer.push(await mustAsk(viewer, 'viewer:enter', { key: viewerKey }))
    heardByAda.push(await mustAsk(connect(server), 'room:ask', { code }))
    const bo = await aStudent(server, code, 'Bo')
    await act('room:entry', { entry: { names: 'typed', rosterId: null, approve: true } })
    await atTheDoor(server, code, { name: 'Canaryknock' })

    const roundId = isTakeHome
      ? await until('it is open', () => teacher.view().round?.id)
      : await startRound(server, teacher)
    await until('the desk has the ways', () => teacher.view().ways)
    const ways = teacher.view().ways!
    await bo.turn(roundId, 0, ['D', 'B2', 'hint-1', "L'"])
    heardByAda.push(
      await mustAsk(ada.client, 'turns:send', { roundId, tryNumber: 1, from: 0, steps: ['R', 'hint-2'], kept: true }),
    )
    await mustAsk(ada.client, 'cube:ready', { roundId, ready: true })
    await mustAsk(ada.client, 'help:ask', { wanted: true })
    for (const nudge of [
      { kind: 'hint', level: 1 },
      { kind: 'point', piece: 'UF' },
    ])
      await act('nudge:send', { roundId, to: [bo.view().me.seatId], nudge })
    await act('nudge:send', { roundId, to: 'all', nudge: { kind: 'words', words: 'check-the-hold' } })
    const start = teacher.view().round!.start
    await act('show:whole', {
      shown: { kind: 'cube', title: 'Look', start, baseColour: 'white', turns: ['R'] },
      at: { at: 0, chosen: 0, pointer: null },
    })
    await act('show:at', { at: { at: 1, chosen: 0, pointer: 'UF' } })
    await act('seat:look', { roundId, seatId: bo.view().me.seatId })
    await until('the pointer is seen', () => JSON.stringify(heardByAda).includes('"pointer":"UF"'))
    // As long as the round runs.
    for (const heard of [heardByAda, heardByViewer]) {
      const text = JSON.stringify(heard)
      expect(text).not.toContain(JSON.stringify(ways.shortest).slice(1, -1))
      expect(text).not.toContain(JSON.stringify(ways.lesson.turns).slice(1, -1))
    }
    await act('round:end', { roundId })
    await until('it has ended', () => teacher.view().round?.clock.phase === 'ended')
    heardByAda.push(
      await ask(ada.client, 'turns:hand-in', { roundId, tryNumber: 1, steps: ['R', 'hint-2', 'U'] as StepName[] }),
    )
    await act('review:ask', { roundId })
    await until('Ada hears of it', () => JSON.stringify(heardByAda).includes('"handedIn":{'))

    // Ada's own secret is in the answer that seats her, and in nothing else.
    const texts = [JSON.stringify(heardByAda.slice(1)), JSON.stringify(heardByViewer)]
    const secrets = [ada.wish.token!, bo.token, viewerKey, teacher.cookie.split('=')[1]]
    for (const text of texts) {
      for (const secret of [...secrets, 'Canary', rosterId, roomId, elsewhere.code]) expect(text).not.toContain(secret)
      // What somebody else has turned.
      expect(text).not.toContain('"B2"')
    }
    expect([...fieldsOf(heardByAda)].filter((field) => !BENCH_FIELDS.has(field))).toEqual(['ok', 'value'])
    expect([...fieldsOf(heardByViewer)].filter((field) => !BOARD_FIELDS.has(field))).toEqual([])
    // What was heard is a whole lesson, and the setup was told what to keep.
    expect(fieldsOf(heardByAda).size).toBeGreaterThan(BENCH_FIELDS.size * 0.7)
    expect(asked.length).toBeGreaterThan(0)
    const lanes = (heardByViewer.flat() as { lanes?: unknown[] }[]).flatMap((message) => message?.lanes ?? [])
    expect(lanes).toEqual([])
  },
)
