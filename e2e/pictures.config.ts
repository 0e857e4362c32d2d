import { defineConfig } from '@playwright/test'
import stories from './playwright.config.ts'

/** Takes the pictures of the README from the screens as they are: `npm run pictures`. */
export default defineConfig({
  ...stories,
  testMatch: '**/take-pictures.ts',
  timeout: 300_000,
  reporter: [['list']],
})
