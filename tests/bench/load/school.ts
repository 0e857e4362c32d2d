/** A school in front of a real server: rooms with students, and for each room a desk and a projector that watch. */

import { COUNTDOWN_MS } from '../../../engine/contest/limits.ts'
import { DESK_ENTER_PATH, SOCKET_PATH } from '../../../engine/wire/places.ts'
import { PROTOCOL_VERSION } from '../../../engine/wire/version.ts'
import type { DeskView, Tick } from '../../../engine/wire/views.ts'
import { Latencies } from './latencies.ts'
import { RawClient } from './raw-client.ts'
import type { TurningStudent } from './turning-students.ts'

const AUTH = { protocol: PROTOCOL_VERSION }
/** Rooms opened or started one behind another without meeting the desk's own limit. */
const PAUSE_BETWEEN_MS = 90

export type School = {
  students: (TurningStudent & { seatId: string })[]
  /** From the moment a turn was due to its square on a desk. */
  boardDelays: Latencies
  clients: RawClient[]
}

export async function seatSchool(url: string, linkKey: string, nRooms: number, nStudents: number): Promise<School> {
  const cookie = await signIn(url, linkKey)
  const clients: RawClient[] = []
  const students: School['students'] = []
  const boardDelays = new Latencies()
  const bySeat = new Map<string, TurningStudent>()
  const connect = async (headers: Record<string, string> = {}) => {
    const client = await RawClient.connect(url, SOCKET_PATH, AUTH, headers)
    clients.push(client)
    return client
  }

  const rooms: { desk: RawClient; view: DeskView }[] = []
  for (let index = 0; index < nRooms; index++) {
    const desk = await connect({ cookie })
    await desk.ask('desk:enter', {})
    const { desk: view } = await desk.ask<{ desk: DeskView }>('room:open', {})
    const { roomId, settings } = { roomId: view.room.id, settings: { ...view.settings, from: 1, to: 1 } }
    await desk.ask('room:set', { roomId, settings })
    const viewer = await connect()
    await viewer.ask('viewer:enter', { key: view.room.viewerKey })
    desk.onEvent = (name, value) => {
      if (name !== 'desk:tick') return
      const nowMs = performance.now()
      for (const lane of (value as Tick).lanes) {
        const student = bySeat.get(lane.seatId)
        const dueAtMs = student?.sentAtMs.get(lane.turns)
        if (dueAtMs !== undefined) boardDelays.add(nowMs - dueAtMs)
        // Squares that came with this one count too, but only the newest is measured.
        for (let turns = lane.turns; student?.sentAtMs.delete(turns); turns--);
      }
    }
    rooms.push({ desk, view })
    for (let seat = 0; seat < nStudents; seat++) {
      const client = await connect()
      const joined = await client.ask<{ bench: { me: { seatId: string } } }>('seat:join', {
        code: view.room.code,
        name: `Student ${seat}`,
      })
      const student = {
        client,
        roundId: '',
        nSent: 0,
        nHeld: 0,
        dueAtMs: 0,
        sentAtMs: new Map(),
        seatId: joined.bench.me.seatId,
      }
      bySeat.set(student.seatId, student)
      students.push(student)
    }
  }
  for (const [index, { desk, view }] of rooms.entries()) {
    const { roundId } = await desk.ask<{ roundId: string }>('round:start', { roomId: view.room.id, number: 1 })
    for (const student of students.slice(index * nStudents, (index + 1) * nStudents)) student.roundId = roundId
    await new Promise((resolve) => setTimeout(resolve, PAUSE_BETWEEN_MS))
  }
  await new Promise((resolve) => setTimeout(resolve, COUNTDOWN_MS + 500))
  return { students, boardDelays, clients }
}

async function signIn(url: string, key: string): Promise<string> {
  const response = await fetch(url + DESK_ENTER_PATH, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ key }),
  })
  const cookie = response.headers.get('set-cookie')
  if (cookie === null) throw new Error('the desk link was refused')
  return cookie.split(';')[0]
}
