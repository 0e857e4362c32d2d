/**
 * Load: R rooms of N students who each turn T times a second, on loopback, beside the same traffic to a bare WebSocket echo
 * and a bare Socket.IO echo in the same run. At the end the server is killed and its data file is asked for every
 * acknowledged turn.
 *
 *   npm run load -- --rooms 34 --students 30 --rate 3 [--seconds 20]
 */

import { mkdtempSync, rmSync } from 'node:fs'
import { loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import Database from 'better-sqlite3'
import { TRY_STEPS_MAX } from '../../engine/contest/limits.ts'
import { SOCKET_PATH } from '../../engine/wire/places.ts'
import { PROTOCOL_VERSION } from '../../engine/wire/version.ts'
import { type MeasuredProcess, startMeasured } from './load/measured-process.ts'
import { RawClient } from './load/raw-client.ts'
import { seatSchool } from './load/school.ts'
import { type TurningResult, type TurningStudent, turn } from './load/turning-students.ts'

/** Until code is compiled and pipes are full. */
const WARM_UP_SECONDS = 2

const { values } = parseArgs({
  options: {
    rooms: { type: 'string', default: '34' },
    students: { type: 'string', default: '30' },
    rate: { type: 'string', default: '3' },
    seconds: { type: 'string', default: '20' },
  },
})
const wish = {
  rooms: bounded('rooms', values.rooms, 1, 200),
  students: bounded('students', values.students, 1, 300),
  rate: bounded('rate', values.rate, 0.1, 20),
  seconds: bounded('seconds', values.seconds, 2, 180),
}
if ((wish.seconds + WARM_UP_SECONDS) * wish.rate > TRY_STEPS_MAX) {
  console.error(
    `At this rate a try is full after ${Math.floor(TRY_STEPS_MAX / wish.rate)} s, and turns would be refused`,
  )
  process.exit(2)
}
const nStudents = wish.rooms * wish.students
const OWN_DELAY_MS_MAX = 20

type Row = TurningResult & { what: string; cpuPercent: number | null; rssMegabytes: number | null; extra: string }

console.log(
  `${wish.rooms} rooms of ${wish.students} students, ${wish.rate} turns a second each, ${wish.seconds} s a run; load average ${loadavg()[0].toFixed(2)}`,
)
const rows: Row[] = [await echo('ws'), await echo('socket.io'), await fairturn(), await echo('socket.io')]
report(rows)

async function echo(kind: 'ws' | 'socket.io'): Promise<Row> {
  const server = await startMeasured(
    ['--import', 'tsx', fileURLToPath(new URL('./load/echo-server.ts', import.meta.url)), kind],
    /listening \d+/,
  )
  const url = `http://127.0.0.1:${/listening (\d+)/.exec(server.output)![1]}`
  const students: TurningStudent[] = []
  for (let index = 0; index < nStudents; index++) {
    const client = await RawClient.connect(url, SOCKET_PATH, { protocol: PROTOCOL_VERSION })
    students.push({ client, roundId: 'x'.repeat(16), nSent: 0, nHeld: 0, dueAtMs: 0, sentAtMs: new Map() })
  }
  const row = await measure(`bare ${kind} echo`, server, students)
  for (const student of students) student.client.close()
  await server.kill()
  return row
}

async function fairturn(): Promise<Row> {
  const dataDir = mkdtempSync(join(tmpdir(), 'fairturn-load-'))
  const env = {
    DATA_DIR: dataDir,
    TABLES_DIR: fileURLToPath(new URL('../../.cache', import.meta.url)),
    PORT: '0',
    HOST: '127.0.0.1',
    LOG_LEVEL: 'warn',
  }
  const server = await startMeasured(['dist/server/main.js'], /Stop with Ctrl\+C/, env)
  const [, port, linkKey] = /localhost:(\d+)\/desk\/enter#(\S+)/.exec(server.output)!
  const school = await seatSchool(`http://127.0.0.1:${port}`, linkKey, wish.rooms, wish.students)
  const row = await measure('Fairturn', server, school.students)
  // The hardest stop there is: nothing may be left to write.
  await server.kill()
  const lost = countLost(dataDir, school.students)
  row.extra = `square on a desk p50 ${ms(school.boardDelays.percentile(0.5))} p99 ${ms(school.boardDelays.percentile(0.99))}; after kill -9: ${lost.nAcknowledged} acknowledged turns, ${lost.nLost} lost`
  for (const client of school.clients) client.close()
  rmSync(dataDir, { recursive: true, force: true })
  if (lost.nLost > 0) process.exitCode = 1
  return row
}

async function measure(what: string, server: MeasuredProcess, students: readonly TurningStudent[]): Promise<Row> {
  await turn(students, wish.rate, WARM_UP_SECONDS)
  const before = server.cpuSeconds()
  const beganAtMs = performance.now()
  const result = await turn(students, wish.rate, wish.seconds)
  const seconds = (performance.now() - beganAtMs) / 1000
  const after = server.cpuSeconds()
  const cpuPercent = before === null || after === null ? null : (100 * (after - before)) / seconds
  return { ...result, what, cpuPercent, rssMegabytes: server.rssMegabytes(), extra: '' }
}

function countLost(
  dataDir: string,
  students: readonly { seatId: string; nHeld: number }[],
): { nAcknowledged: number; nLost: number } {
  const database = new Database(join(dataDir, 'fairturn.sqlite'))
  const count = database.prepare(
    'SELECT count(*) AS n FROM step JOIN try ON try.key = step.try_key WHERE try.seat_id = ?',
  )
  let nAcknowledged = 0
  let nLost = 0
  for (const { seatId, nHeld } of students) {
    const { n } = count.get(seatId) as { n: number }
    nAcknowledged += nHeld
    nLost += Math.max(0, nHeld - n)
  }
  database.close()
  return { nAcknowledged, nLost }
}

function report(all: readonly Row[]): void {
  console.table(
    all.map((row) => ({
      what: row.what,
      'turns/s': Math.round(row.nAnswered / wish.seconds),
      p50: ms(row.acknowledgements.percentile(0.5)),
      p95: ms(row.acknowledgements.percentile(0.95)),
      p99: ms(row.acknowledgements.percentile(0.99)),
      'p99.9': ms(row.acknowledgements.percentile(0.999)),
      refused: row.nRefused,
      unanswered: row.nSent - row.nAnswered,
      'cpu %': row.cpuPercent === null ? '-' : row.cpuPercent.toFixed(0),
      'rss MB': row.rssMegabytes ?? '-',
      'generator delay p99': ms(row.ownDelayMs),
    })),
  )
  const own = all.find((row) => row.what === 'Fairturn')!
  const bare = all.filter((row) => row.what === 'bare socket.io echo')
  const ratio = (share: number) => {
    const baseline = bare.reduce((sum, row) => sum + row.acknowledgements.percentile(share), 0) / bare.length
    return (own.acknowledgements.percentile(share) / baseline).toFixed(2)
  }
  console.log(
    `Fairturn beside the mean of both bare Socket.IO echoes: p50 x${ratio(0.5)}, p95 x${ratio(0.95)}, p99 x${ratio(0.99)}`,
  )
  console.log(own.extra)
  console.log(`load average at the end ${loadavg()[0].toFixed(2)}`)
  for (const row of all) {
    if (row.ownDelayMs > OWN_DELAY_MS_MAX)
      console.log(`The generator itself was late in "${row.what}": its figures are void.`)
  }
}

function ms(value: number): string {
  return `${value.toFixed(1)} ms`
}

function bounded(name: string, text: string, least: number, most: number): number {
  const value = Number(text)
  if (Number.isFinite(value) && value >= least && value <= most) return value
  console.error(`--${name} takes a number from ${least} to ${most}`)
  process.exit(2)
}
