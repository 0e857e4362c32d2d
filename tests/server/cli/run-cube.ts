/** Runs the command line as a script does: a process, its lines, its exit code. */

import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('../../..', import.meta.url))

/** Command and arguments in front of a command's own. */
export const CUBE = [process.execPath, '--import', 'tsx', 'server/cli/main.ts'] as const

/** What a process is started with: search tables are shared by all tests, and made at the first run. */
export const PLACE = { cwd: ROOT, env: { ...process.env, DATA_DIR: '.cache' } }

/** @returns how it ended, the lines of standard output, and what stands on standard error */
export function cube(
  args: readonly string[],
  input: string | Uint8Array = '',
  environment: Record<string, string> = {},
) {
  const [node, ...front] = CUBE
  const run = spawnSync(node, [...front, ...args], {
    ...PLACE,
    env: { ...PLACE.env, ...environment },
    input,
    encoding: 'utf8',
  })
  return { exit: run.status, lines: run.stdout.split('\n').filter((line) => line !== ''), complaint: run.stderr }
}

/** @returns the arguments of a question */
export function question(command: string, stage: string, scramble: string, ...more: string[]): string[] {
  return [command, '--stage', stage, '--scramble', scramble, ...more]
}
