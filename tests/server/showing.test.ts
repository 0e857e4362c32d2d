/** What a teacher shows to the class. Rules SW: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import type { ShowingAt, Shown } from '../../engine/wire/shown.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import { eachTestHasAServer, restartServer, server } from './support/each-test.ts'
import {
  aBoard,
  aReturningStudent,
  aStudent,
  ask,
  aTeacher,
  type Client,
  connect,
  mustAsk,
  type Teacher,
  until,
} from './support/people.ts'

eachTestHasAServer({ unlimited: true })

const SOLVED = 'UUUUUUUUURRRRRRRRRFFFFFFFFFDDDDDDDDDLLLLLLLLLBBBBBBBBB'
const CUBE: Shown = {
  kind: 'cube',
  title: 'The trigger',
  start: SOLVED,
  baseColour: 'white',
  turns: ['R', 'U', "R'", "U'"],
}
const REVIEW: Shown = {
  kind: 'review',
  roundNumber: 1,
  from: 4,
  to: 4,
  start: SOLVED,
  baseColour: 'white',
  ways: [
    { owner: { kind: 'shortest' }, turns: ['R', 'U'], reached: true, hintTurns: 0 },
    { owner: { kind: 'letter', letter: 'A' }, turns: ['R', 'U', 'F'], reached: false, hintTurns: 0 },
  ],
}
const AT = { at: 0, chosen: 0, pointer: null }
type Sendable = Extract<Parameters<typeof ask<'show:whole'>>[2]['shown'], object>
const show = ({ client, roomId }: Pick<Teacher, 'client' | 'roomId'>, shown: Shown | null, at: ShowingAt = AT) =>
  ask(client, 'show:whole', { roomId, shown: shown as Sendable | null, at })
const goTo = ({ client, roomId }: Pick<Teacher, 'client' | 'roomId'>, at: ShowingAt) =>
  ask(client, 'show:at', { roomId, at })

async function aClass() {
  const teacher = await aTeacher(server)
  const board = await aBoard(server, teacher)
  return { teacher, board, ada: await aStudent(server, teacher.code, 'Ada') }
}

describe('a showing', () => {
  test('[SW1] is seen on board, benches and desk, goes on for all, and ends for all', async () => {
    const { teacher, board, ada } = await aClass()
    await show(teacher, CUBE)
    const seen = () => [board().showing, ada.view().showing, teacher.view().showing]
    await until('all see it', () => seen().every((each) => each !== null))
    expect(seen().map((each) => each?.shown)).toEqual([CUBE, CUBE, CUBE])
    await goTo(teacher, { at: 3, chosen: 0, pointer: 'UF' })
    await until('it goes on', () => [board(), ada.view()].every(({ showing }) => showing?.at.at === 3))
    expect(ada.view().showing?.at.pointer).toBe('UF')
    await show(teacher, null)
    await until('it ends', () => seen().every((each) => each === null))
    // Whatever is still on its way from the desk is answered, and shows nothing.
    expect(await goTo(teacher, { at: 1, chosen: 0, pointer: null })).toEqual({ ok: true, value: {} })
    expect(seen()).toEqual([null, null, null])
  })

  test('[SW2] who comes in, comes back or opens the board later sees it where it stands', async () => {
    const { teacher, ada } = await aClass()
    await show(teacher, CUBE)
    await goTo(teacher, { at: 2, chosen: 0, pointer: null })
    const late = await aStudent(server, teacher.code, 'Bo')
    const back = await aReturningStudent(server, ada.token)
    const board = await aBoard(server, teacher)
    for (const showing of [late.view().showing, back.view().showing, board().showing])
      expect(showing).toMatchObject({ shown: CUBE, at: { at: 2 } })
  })

  test('[SW3] never stands behind the last turn, nor at a way that is not there', async () => {
    const { teacher, board } = await aClass()
    await show(teacher, CUBE, { at: 600, chosen: 7, pointer: null })
    await until('the board sees it', () => board().showing)
    expect(board().showing?.at).toEqual({ at: 4, chosen: 0, pointer: null })
    await show(teacher, REVIEW, { at: 600, chosen: 0, pointer: null })
    await until('the next is seen', () => board().showing?.shown.kind === 'review')
    expect(board().showing?.at).toMatchObject({ at: 2, chosen: 0 })
    await goTo(teacher, { at: 600, chosen: 7, pointer: null })
    await until('it goes on', () => board().showing?.at.chosen === 1)
    expect(board().showing?.at.at).toBe(3)
  })

  test('[SW4] each whole showing has a number of its own, so that no page goes on in an old one', async () => {
    const { teacher, board } = await aClass()
    const versions: (number | undefined)[] = []
    for (const shown of [CUBE, null, CUBE, REVIEW]) {
      await show(teacher, shown)
      await until('it is seen', () => JSON.stringify(board().showing?.shown ?? null) === JSON.stringify(shown))
      if (shown !== null) versions.push(board().showing?.version)
    }
    expect(new Set(versions).size).toBe(3)
  })

  test('[SW4] the teacher’s own cube goes on under its number with each turn, and a whole new start has another', async () => {
    const { teacher, board } = await aClass()
    const versions: (number | undefined)[] = []
    for (const shown of [CUBE, { ...CUBE, turns: [...CUBE.turns, 'F' as const] }, { ...CUBE, title: 'Another' }]) {
      await show(teacher, shown)
      await until('it is seen', () => JSON.stringify(board().showing?.shown ?? null) === JSON.stringify(shown))
      versions.push(board().showing?.version)
    }
    expect(versions[1]).toBe(versions[0])
    expect(versions[2]).not.toBe(versions[0])
  })

  test('[SW5] neither student nor projector nor another teacher shows anything', async () => {
    const { teacher, board, ada } = await aClass()
    const viewer = connect(server)
    await mustAsk(viewer, 'viewer:enter', { key: teacher.viewerKey })
    for (const client of [ada.client, viewer, connect(server)] as Client[]) {
      expect(await show({ client, roomId: teacher.roomId }, CUBE)).toMatchObject({
        error: { code: 'desk/not-signed-in' },
      })
      expect(await goTo({ client, roomId: teacher.roomId }, AT)).toMatchObject({
        error: { code: 'desk/not-signed-in' },
      })
    }
    expect(board().showing).toBeNull()
  })

  test('[SW6] what makes no sense is refused, and the field is named', async () => {
    const { teacher } = await aClass()
    const rows: [unknown, string][] = [
      [{ ...CUBE, start: SOLVED.replace('R', 'U') }, 'shown.start'],
      [{ ...CUBE, turns: ['Q'] }, 'shown.turns.0'],
      [{ ...CUBE, title: 'x'.repeat(81) }, 'shown.title'],
      [{ ...REVIEW, ways: [] }, 'shown.ways'],
      [{ ...REVIEW, ways: new Array(9).fill(REVIEW.kind === 'review' && REVIEW.ways[0]) }, 'shown.ways'],
      [{ ...CUBE, html: '<b>' }, 'shown'],
    ]
    for (const [shown, at] of rows)
      expect(await show(teacher, shown as Shown)).toEqual({ ok: false, error: { code: 'wire/malformed', at } })
    expect(await goTo(teacher, { at: 0, chosen: 0, pointer: 'XY' })).toMatchObject({ error: { at: 'at.pointer' } })
  })

  test('[SW7] is not on record: after a restart the rest of the screen is as before', async () => {
    const { teacher, ada } = await aClass()
    await show(teacher, CUBE)
    await expectSameAfterRestart(server, teacher, [ada.token])
  })

  test('[SW11] the desk can tell what was stopped from what the server has forgotten', async () => {
    const { teacher } = await aClass()
    expect(teacher.view()).toMatchObject({ showing: null, nShowings: 0 })
    await show(teacher, CUBE)
    await show(teacher, null)
    await until('it has ended', () => teacher.view().nShowings > 0)
    expect(teacher.view().showing).toBeNull()
    await restartServer()
    const desk = connect(server, { cookie: teacher.cookie })
    await mustAsk(desk, 'desk:enter', {})
    const { desk: view } = await mustAsk(desk, 'room:watch', { roomId: teacher.roomId })
    expect(view).toMatchObject({ showing: null, nShowings: 0 })
  })
})
