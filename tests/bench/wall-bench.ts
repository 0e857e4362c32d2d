/**
 * The wall in a real browser: how evenly it draws while every cube of a class turns, on this processor and on one four
 * times slower. The baseline is the same page in the same run before the round has started, when nothing moves.
 */

import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium, type Page } from '@playwright/test'
import { COUNTDOWN_MS } from '../../engine/contest/limits.ts'
import { SOCKET_PATH } from '../../engine/wire/places.ts'
import { PROTOCOL_VERSION } from '../../engine/wire/version.ts'
import type { BenchView } from '../../engine/wire/views.ts'
import type { Figure } from './engine-bench.ts'
import { startMeasured } from './load/measured-process.ts'
import { RawClient } from './load/raw-client.ts'
import { type TurningStudent, turn } from './load/turning-students.ts'

const TURNS_A_SECOND = 2
const SECONDS = 10
const SLOWER = 4
/** A frame that took longer than this was one that the eye can miss: half as long again as one at 60 a second. */
const LATE_FRAME_MS = 25
/** A class, and the largest room, which the wall shows in pages. */
const CLASSES = [30, 300]

export async function benchWall(): Promise<Figure[]> {
  const figures: Figure[] = []
  for (const nStudents of CLASSES) figures.push(...(await wallOf(nStudents)))
  return figures
}

async function wallOf(nStudents: number): Promise<Figure[]> {
  const dataDir = mkdtempSync(join(tmpdir(), 'fairturn-wall-'))
  const env = {
    DATA_DIR: dataDir,
    TABLES_DIR: fileURLToPath(new URL('../../.cache', import.meta.url)),
    PORT: '0',
    HOST: '127.0.0.1',
    LOG_LEVEL: 'warn',
  }
  const server = await startMeasured(['dist/server/main.js'], /Stop with Ctrl\+C/, env)
  const [link, port] = /http:\/\/localhost:(\d+)\/desk\/enter#\S+/.exec(server.output) ?? []
  if (link === undefined) throw new Error('the server printed no desk link')
  const systemChromium = ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find((path) => existsSync(path))
  const browser = await chromium.launch({
    ...(systemChromium === undefined ? {} : { executablePath: systemChromium }),
    args: ['--no-sandbox', '--disable-gpu', '--use-angle=swiftshader'],
  })
  const students: TurningStudent[] = []
  try {
    const page = await browser.newPage({ viewport: { width: 1366, height: 768 } })
    await page.goto(link)
    await page.getByRole('button', { name: 'Open a room' }).click()
    const code = await page
      .getByText(/^[A-Z]{6}$/)
      .first()
      .textContent()
    for (let index = 0; index < nStudents; index++)
      students.push(await seat(`http://127.0.0.1:${port}`, code ?? '', index))
    await page.getByText(`Student ${nStudents - 1}`, { exact: true }).waitFor()
    const processor = await page.context().newCDPSession(page)
    const slower = (rate: number) => processor.send('Emulation.setCPUThrottlingRate', { rate })
    const figures = [...told(`wall of ${nStudents}, nothing moves`, await framesOf(page, async () => pause(4)))]
    await page.getByRole('button', { name: /^Start/ }).click()
    await pause(COUNTDOWN_MS / 1_000 + 1)
    await page.getByRole('region', { name: 'Wall' }).waitFor()
    const turning = () => turn(students, TURNS_A_SECOND, SECONDS)
    figures.push(...told(`wall of ${nStudents}, all turning`, await framesOf(page, turning)))
    await slower(SLOWER)
    figures.push(...told(`wall of ${nStudents}, ${SLOWER} x slower`, await framesOf(page, turning)))
    return figures
  } finally {
    for (const { client } of students) client.close()
    await browser.close()
    await server.kill()
    rmSync(dataDir, { recursive: true, force: true })
  }
}

async function seat(url: string, code: string, index: number): Promise<TurningStudent> {
  const client = await RawClient.connect(url, SOCKET_PATH, { protocol: PROTOCOL_VERSION })
  const student: TurningStudent = { client, roundId: '', nSent: 0, nHeld: 0, dueAtMs: 0, sentAtMs: new Map() }
  client.onEvent = (name, value) => {
    if (name === 'bench') student.roundId = (value as BenchView).round?.id ?? student.roundId
  }
  await client.ask('seat:join', { code, name: `Student ${index}` })
  return student
}

/** @returns milliseconds between one frame and the next, as the page itself sees them, while `work` goes on */
async function framesOf(page: Page, work: () => Promise<unknown>): Promise<number[]> {
  // As text: what is compiled for Node may name helpers that a page does not have.
  await page.evaluate(`
    window.frames60 = []
    requestAnimationFrame(function next(atMs) {
      window.frames60.push(atMs)
      window.next60 = requestAnimationFrame(next)
    })`)
  await work()
  const moments = (await page.evaluate('cancelAnimationFrame(window.next60), window.frames60')) as number[]
  return moments.slice(1).map((atMs, index) => atMs - moments[index])
}

function told(name: string, frames: number[]): Figure[] {
  const sorted = [...frames].sort((a, b) => a - b)
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]
  const late = frames.filter((ms) => ms > LATE_FRAME_MS).length / frames.length
  const seconds = frames.reduce((sum, ms) => sum + ms, 0) / 1_000
  const note = `p50 ${at(0.5).toFixed(1)} p95 ${at(0.95).toFixed(1)} p99 ${at(0.99).toFixed(1)} longest ${at(1).toFixed(0)} ms; ${(100 * late).toFixed(1)} % over ${LATE_FRAME_MS} ms`
  return [{ name, value: frames.length / seconds, unit: 'frames/s', note }]
}

function pause(seconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, seconds * 1_000))
}
