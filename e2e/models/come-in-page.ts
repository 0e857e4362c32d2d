/** The page on which a student comes in. */

import type { Locator, Page } from '@playwright/test'
import { BenchPage } from './bench-page.ts'

export class ComeInPage {
  readonly page: Page
  readonly code: Locator
  readonly name: Locator
  readonly goIn: Locator

  constructor(page: Page) {
    this.page = page
    this.code = page.getByLabel('Room code')
    this.name = page.getByLabel('Who are you?')
    this.goIn = page.getByRole('button', { name: /^Go in/ })
  }

  /** Picks a name of the teacher's list, which comes when the code is whole. */
  async pick(code: string, name: string): Promise<BenchPage> {
    await this.code.fill(code)
    await this.page.getByRole('radio', { name: new RegExp(`^${name}`) }).check({ force: true })
    await this.goIn.click()
    const bench = new BenchPage(this.page)
    await bench.pad.waitFor()
    return bench
  }

  async comeIn(code: string, name: string): Promise<BenchPage> {
    await this.code.fill(code)
    await this.name.fill(name)
    await this.goIn.click()
    const bench = new BenchPage(this.page)
    await bench.pad.waitFor()
    return bench
  }
}
