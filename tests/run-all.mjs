/**
 * Everything that has to hold before a change lands: types, lint and formatting, unused code, unit and integration tests,
 * then the stories in a real browser. Ends with one line, 'N passed, N failed'; each check that is no test counts as one.
 */

import { spawn } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..')
const REPORTS = join(ROOT, '.cache', 'reports')
rmSync(REPORTS, { recursive: true, force: true })
mkdirSync(REPORTS, { recursive: true })

const UNIT_REPORT = join(REPORTS, 'unit.json')
const BROWSER_REPORT = join(REPORTS, 'browser.json')

const checks = [
  { what: 'Types and boundaries', command: ['tsc', '-b'] },
  {
    what: 'Lint and formatting',
    command: ['biome', 'check', '--config-path=tests/lint/lint-rules.json', '--error-on-warnings', '.'],
  },
  { what: 'Unused code', command: ['knip', '--config', 'tests/lint/unused-rules.json'] },
  { what: 'Search tables', command: ['tsx', 'tests/make-search-tables.ts'] },
]
const suites = [
  {
    what: 'Unit, published values, integration, faults',
    command: [
      'vitest',
      'run',
      '--config',
      'tests/vitest.config.ts',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${UNIT_REPORT}`,
    ],
    count: () => {
      const report = JSON.parse(readFileSync(UNIT_REPORT, 'utf8'))
      return {
        passed: report.numPassedTests,
        failed: report.numFailedTests + (report.success || report.numFailedTests > 0 ? 0 : 1),
      }
    },
  },
  {
    what: 'Stories in the browser',
    command: ['playwright', 'test', '--config', 'e2e/playwright.config.ts'],
    count: () => {
      const { stats } = JSON.parse(readFileSync(BROWSER_REPORT, 'utf8'))
      // A story that passes only when tried again is a failure: nothing here is tried again.
      return { passed: stats.expected, failed: stats.unexpected + stats.flaky }
    },
  },
]

let passed = 0
let failed = 0
const beganAt = Date.now()
for (const { what, command } of checks) {
  if (await run(what, command)) passed++
  else failed++
}
for (const { what, command, count } of suites) {
  const isGood = await run(what, command)
  try {
    const counted = count()
    passed += counted.passed
    failed += counted.failed
    if (!isGood && counted.failed === 0) failed++
  } catch (fault) {
    console.error(`${what} left no report: ${fault.message}`)
    failed++
  }
}
console.log(`\nTook ${Math.round((Date.now() - beganAt) / 1000)} s.`)
console.log(`${passed} passed, ${failed} failed`)
process.exit(failed === 0 && passed > 0 ? 0 : 1)

function run(what, command) {
  console.log(`\n── ${what}`)
  const began = Date.now()
  const [name, ...args] = command
  return new Promise((resolve) => {
    const child = spawn(join(ROOT, 'node_modules', '.bin', name), args, {
      cwd: ROOT,
      stdio: ['ignore', 'inherit', 'inherit'],
      shell: process.platform === 'win32',
    })
    child.on('error', (fault) => {
      console.error(fault.message)
      resolve(false)
    })
    child.on('close', (code) => {
      console.log(`── ${what}: ${code === 0 ? 'good' : 'FAILED'} (${Math.round((Date.now() - began) / 1000)} s)`)
      resolve(code === 0)
    })
  })
}
