/** A classroom for a story: the built server on a data folder of its own, and people in browsers of their own. */

import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { type BrowserContextOptions, test as base, expect, type Page } from '@playwright/test'
import { checkThisLook } from './check-every-look.ts'
import { ComeInPage } from './models/come-in-page.ts'
import { DeskPage } from './models/desk-page.ts'

const ROOT = fileURLToPath(new URL('..', import.meta.url))

export const PHONE: BrowserContextOptions = { viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true }
export const CHROMEBOOK: BrowserContextOptions = { viewport: { width: 1366, height: 768 } }
export const PROJECTOR: BrowserContextOptions = { viewport: { width: 1920, height: 1080 } }

export type Classroom = {
  readonly url: () => string
  /** A page of a browser of its own; whatever it complains of fails the story. */
  newPage(options?: BrowserContextOptions): Promise<Page>
  /** A teacher who has opened the printed link. */
  teacher(options?: BrowserContextOptions): Promise<DeskPage>
  student(options?: BrowserContextOptions): Promise<ComeInPage>
  /** Kills the server without a warning and starts it again on the same port, with a clock that is so many hours ahead. */
  killAndRestart(wish?: { readonly movedHours: number }): Promise<void>
  /** WCAG 2.2 A and AA as far as a tool can see. */
  expectAccessible(page: Page, what: string): Promise<void>
}

type Server = { child: ChildProcess; port: number; link: string; exited: Promise<void> }

export const test = base.extend<{ classroom: Classroom }>({
  classroom: async ({ browser }, use) => {
    const dataDir = mkdtempSync(join(tmpdir(), 'fairturn-story-'))
    const complaints: string[] = []
    let server = await startServer(dataDir, 0)
    const newPage = async (options: BrowserContextOptions = CHROMEBOOK) => {
      const context = await browser.newContext(options)
      const page = await context.newPage()
      page.on('pageerror', (fault) => complaints.push(`${page.url()}: ${fault.message}`))
      page.on('console', (message) => {
        // A lost connection is part of some stories; the browser reports it, the page deals with it.
        if (message.type() === 'error' && !/net::ERR_|WebSocket/.test(message.text()))
          complaints.push(`${page.url()}: ${message.text()}`)
      })
      return page
    }
    await use({
      url: () => `http://127.0.0.1:${server.port}`,
      newPage,
      async teacher(options) {
        const page = await newPage(options)
        await page.goto(server.link.replace('localhost', '127.0.0.1'))
        const desk = new DeskPage(page)
        await expect(desk.openRoom).toBeVisible()
        return desk
      },
      async student(options) {
        const page = await newPage(options)
        await page.goto(`http://127.0.0.1:${server.port}/`)
        return new ComeInPage(page)
      },
      async killAndRestart({ movedHours } = { movedHours: 0 }) {
        server.child.kill('SIGKILL')
        await server.exited
        server = await startServer(dataDir, server.port, movedHours)
      },
      expectAccessible: checkThisLook,
    })
    server.child.kill('SIGTERM')
    await server.exited
    rmSync(dataDir, { recursive: true, force: true })
    expect(complaints).toEqual([])
  },
})

export { expect } from '@playwright/test'

function startServer(dataDir: string, port: number, movedHours = 0): Promise<Server> {
  const clock = movedHours === 0 ? [] : ['--import', pathToFileURL(join(ROOT, 'e2e', 'move-clock.mjs')).href]
  const child = spawn(process.execPath, [...clock, join(ROOT, 'dist', 'server', 'main.js')], {
    // All stories share the search tables.
    env: {
      ...process.env,
      TABLES_DIR: join(ROOT, '.cache'),
      DATA_DIR: dataDir,
      PORT: String(port),
      HOST: '127.0.0.1',
      LOG_LEVEL: 'warn',
      MOVED_HOURS: String(movedHours),
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let output = ''
  const exited = new Promise<void>((resolve) => child.once('exit', () => resolve()))
  return new Promise((resolve, reject) => {
    void exited.then(() => reject(new Error(`the server ended early:\n${output}`)))
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => (output += part))
    child.stdout.on('data', () => {
      const link = /http:\/\/localhost:(\d+)\/desk\/enter#\S+/.exec(output)
      if (link !== null && output.includes('Stop with Ctrl+C'))
        resolve({ child, port: Number(link[1]), link: link[0], exited })
    })
  })
}
