/**
 * Makes a fresh clone ready: installs what the lock file names and builds what has changed. Plain Node, because it runs
 * before anything is installed. When nothing has to be done it takes a tenth of a second.
 *
 *   node server/start/prepare.mjs                  install and build
 *   node server/start/prepare.mjs --install-only   install
 */

import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..')
const CACHE = join(ROOT, '.cache')
const SOURCES = ['engine', 'server', 'web', 'package-lock.json']
const NODE_MIN = [20, 19]

main().catch((fault) => {
  console.error(`\n  ${fault.message}\n`)
  process.exit(1)
})

async function main() {
  const [major, minor] = process.versions.node.split('.').map(Number)
  if (major < NODE_MIN[0] || (major === NODE_MIN[0] && minor < NODE_MIN[1])) {
    throw new Error(
      `Fairturn needs Node ${NODE_MIN.join('.')} or newer; this is ${process.versions.node}. Install a newer Node and start again.`,
    )
  }
  mkdirSync(CACHE, { recursive: true })
  await unlessStamped('installed', hashOfFiles(['package-lock.json']), existsSync(join(ROOT, 'node_modules')), () =>
    run('Installing libraries (the first time takes some minutes)', 'npm', ['ci', '--no-fund', '--no-audit']),
  )
  if (process.argv.includes('--install-only')) return
  await unlessStamped('built', hashOfFiles(SOURCES), existsSync(join(ROOT, 'dist')), () =>
    run('Building', process.execPath, [join('server', 'start', 'build.mjs')]),
  )
}

/** Does the work unless it was done for exactly this state before. */
async function unlessStamped(name, state, isThere, work) {
  const stamp = join(CACHE, `${name}.stamp`)
  if (isThere && existsSync(stamp) && readFileSync(stamp, 'utf8') === state) return
  await work()
  writeFileSync(stamp, state)
}

/** One hash over names, sizes and times of all files: enough to notice a change, cheap enough for every start. */
function hashOfFiles(places) {
  const hash = createHash('sha256')
  const visit = (path) => {
    const facts = statSync(path)
    if (facts.isDirectory()) {
      for (const name of readdirSync(path).sort()) visit(join(path, name))
      return
    }
    hash.update(`${relative(ROOT, path)} ${facts.size} ${facts.mtimeMs}\n`)
  }
  for (const place of places) visit(join(ROOT, place))
  return hash.digest('hex')
}

/** Runs a command quietly, with a line that shows it is alive; its output appears only when it fails. */
function run(what, command, args) {
  return new Promise((resolve, reject) => {
    const beganAt = Date.now()
    const child = spawn(command, args, {
      cwd: ROOT,
      stdio: ['ignore', 'pipe', 'pipe'],
      shell: process.platform === 'win32',
    })
    let output = ''
    child.stdout.on('data', (part) => (output += part))
    child.stderr.on('data', (part) => (output += part))
    const seconds = () => Math.round((Date.now() - beganAt) / 1000)
    const isTerminal = process.stdout.isTTY
    const say = (text) => process.stdout.write(isTerminal ? `\r  ${text}` : `  ${text}\n`)
    say(`${what} …`)
    const timer = setInterval(() => say(`${what} … ${seconds()} s`), isTerminal ? 1000 : 15_000)
    child.on('error', reject)
    child.on('close', (code) => {
      clearInterval(timer)
      if (code === 0) {
        say(`${what}: done in ${seconds()} s.${isTerminal ? '      \n' : ''}`)
        resolve()
      } else reject(new Error(`${what} failed.\n\n${output}`))
    })
  })
}
