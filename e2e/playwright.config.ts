import { existsSync } from 'node:fs'
import { defineConfig } from '@playwright/test'

/** Playwright's own browser where it is installed; else the system's Chromium. */
const SYSTEM_CHROMIUM = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find((path) =>
  existsSync(path),
)

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.story.ts',
  outputDir: '../.cache/e2e',
  // One class at a time: each story has several browsers and a server of its own, and two cores to run on.
  workers: 1,
  // Never: a story that fails once has a reason.
  retries: 0,
  timeout: 120_000,
  expect: { timeout: 15_000 },
  forbidOnly: true,
  reporter: [['list'], ['json', { outputFile: '../.cache/reports/browser.json' }]],
  use: {
    viewport: { width: 1366, height: 768 },
    launchOptions: {
      ...(SYSTEM_CHROMIUM === undefined ? {} : { executablePath: SYSTEM_CHROMIUM }),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--use-angle=swiftshader',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
})
