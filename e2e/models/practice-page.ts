/** Solo practice: the choice, the bench, and what follows at the goal. */

import { expect, type Locator, type Page } from '@playwright/test'
import { BenchPage } from './bench-page.ts'

export class PracticePage {
  readonly page: Page
  readonly begin: Locator
  readonly bench: BenchPage
  readonly hint: Locator
  readonly rungs: Locator
  readonly otherGoal: Locator
  readonly sameAgain: Locator
  readonly another: Locator
  readonly par: Locator
  readonly lessonWay: Locator

  constructor(page: Page) {
    this.page = page
    this.begin = page.getByRole('button', { name: 'Begin' })
    this.bench = new BenchPage(page)
    const ladder = page.getByRole('region', { name: 'Hint' })
    this.hint = this.bench.hint
    this.rungs = ladder.getByRole('listitem')
    this.otherGoal = page.getByRole('button', { name: 'Other goal' })
    this.sameAgain = page.getByRole('button', { name: 'The same again' })
    this.another = page.getByRole('button', { name: 'Another start' })
    this.par = page.getByText(/^(Par is \d+ turns?\.|That is par)/)
    this.lessonWay = page.getByRole('button', { name: /^Lesson way: \d+ turns?$/ })
  }

  /** @param name of a goal, a case, a colour, or how far hints go */
  choice(name: string | RegExp): Locator {
    return this.page.getByRole('radio', { name })
  }

  async start(): Promise<BenchPage> {
    await this.begin.click()
    await expect(this.bench.key('U')).toHaveAttribute('aria-disabled', 'false')
    return this.bench
  }
}
