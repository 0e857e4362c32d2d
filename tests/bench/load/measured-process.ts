/** A server in a process of its own, with the processor time and memory that it used, as Linux tells them. */

import { type ChildProcess, spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('../../..', import.meta.url))
/** Clock ticks of /proc a second; 100 on every Linux that Node runs on. */
const TICKS_A_SECOND = 100

export type MeasuredProcess = {
  readonly child: ChildProcess
  /** What it printed when it was ready. */
  readonly output: string
  /** Seconds of processor time so far; null where /proc is not there. */
  cpuSeconds(): number | null
  rssMegabytes(): number | null
  kill(): Promise<void>
}

export function startMeasured(
  args: string[],
  isReady: RegExp,
  env: Record<string, string> = {},
): Promise<MeasuredProcess> {
  const child = spawn(process.execPath, args, {
    cwd: ROOT,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  let output = ''
  const exited = new Promise<void>((resolve) => child.once('exit', () => resolve()))
  return new Promise((resolve, reject) => {
    void exited.then(() => reject(new Error(`a server ended early:\n${output}`)))
    child.stdout.on('data', (part) => {
      output += part
      if (!isReady.test(output)) return
      resolve({
        child,
        output,
        cpuSeconds: () => cpuSeconds(child.pid),
        rssMegabytes: () => rssMegabytes(child.pid),
        kill: async () => {
          child.kill('SIGKILL')
          await exited
        },
      })
    })
  })
}

function cpuSeconds(pid: number | undefined): number | null {
  try {
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1].split(' ')
    return (Number(fields[11]) + Number(fields[12])) / TICKS_A_SECOND
  } catch {
    return null
  }
}

function rssMegabytes(pid: number | undefined): number | null {
  try {
    const line = /VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))
    return line === null ? null : Math.round(Number(line[1]) / 1024)
  } catch {
    return null
  }
}
