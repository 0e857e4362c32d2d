/** The server as a process of its own, so that it can be killed like one. */

import { type ChildProcess, spawn } from 'node:child_process'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('../../..', import.meta.url))
/** Search tables that all tests share, so that each server need not make its own. */
const TABLES_DIR = join(ROOT, '.cache')
const READY_MS_MAX = 30_000

export type ServerProcess = {
  readonly child: ChildProcess
  readonly url: string
  readonly port: number
  /** Key of the one-time desk link. */
  readonly linkKey: string
  readonly output: () => string
  /** Sends a signal and waits until the process is gone. */
  kill(signal: NodeJS.Signals): Promise<{ code: number | null; signal: NodeJS.Signals | null }>
}

/**
 * Starts the server from source and waits until it says where to go.
 *
 * @param through a command that starts it, such as a tracer; the process has to stay our own child
 */
export async function aProcess(env: Record<string, string>, through: readonly string[] = []): Promise<ServerProcess> {
  const { child, output, exited } = spawnServer(env, through)
  await new Promise<void>((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error(`not ready in time:\n${output()}`)), READY_MS_MAX)
    child.stdout?.on('data', () => {
      if (!output().includes('Stop with Ctrl+C')) return
      clearTimeout(timer)
      resolve()
    })
    void exited.then(() => reject(new Error(`ended before it was ready:\n${output()}`)))
  })
  const link = /localhost:(\d+)\/desk\/enter#(\S+)/.exec(output())
  if (link === null) throw new Error(`no desk link in:\n${output()}`)
  const port = Number(link[1])
  return {
    child,
    port,
    url: `http://127.0.0.1:${port}`,
    linkKey: link[2],
    output,
    kill(signal) {
      child.kill(signal)
      return exited
    },
  }
}

/** Runs the server until it ends by itself, as it should when it refuses to start. */
export async function aRefusal(env: Record<string, string>): Promise<{ code: number | null; output: string }> {
  const { output, exited } = spawnServer(env)
  const { code } = await exited
  return { code, output: output() }
}

function spawnServer(env: Record<string, string>, through: readonly string[] = []) {
  const [command, ...args] = [...through, process.execPath, '--import', 'tsx', 'server/main.ts']
  const child = spawn(command, args, {
    cwd: ROOT,
    env: { ...process.env, TABLES_DIR, HOST: '127.0.0.1', PORT: '0', LOG_LEVEL: 'warn', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let text = ''
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => (text += part))
  const exited = new Promise<{ code: number | null; signal: NodeJS.Signals | null }>((resolve) => {
    child.on('exit', (code, signal) => resolve({ code, signal }))
  })
  return { child, output: () => text, exited }
}
