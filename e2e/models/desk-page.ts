/** The teacher's desk. */

import { expect, type Locator, type Page } from '@playwright/test'

export class DeskPage {
  readonly page: Page
  readonly openRoom: Locator
  readonly start: Locator
  readonly pause: Locator
  readonly goOn: Locator
  readonly addMinute: Locator
  readonly end: Locator
  readonly pretendClass: Locator
  readonly openBoard: Locator
  readonly lock: Locator

  constructor(page: Page) {
    this.page = page
    this.openRoom = page.getByRole('button', { name: 'Open a room' })
    this.start = page.getByRole('button', { name: /^Start/ })
    this.pause = page.getByRole('button', { name: 'Pause' })
    this.goOn = page.getByRole('button', { name: 'Go on' })
    this.addMinute = page.getByRole('button', { name: '1 minute' })
    this.end = page.getByRole('button', { name: 'End round' })
    this.pretendClass = page.getByRole('button', { name: 'Pretend class' })
    this.openBoard = page.getByRole('link', { name: 'Open the board' })
    this.lock = page.getByRole('checkbox', { name: /Lock the room/ })
  }

  async code(): Promise<string> {
    const shown = this.page.getByText(/^[A-Z]{6}$/).first()
    await expect(shown).toBeVisible()
    return (await shown.textContent()) ?? ''
  }

  /** Address of the board, with its key behind the `#`. */
  async boardAddress(): Promise<string> {
    const link = await this.openBoard.getAttribute('href')
    return new URL(link ?? '', this.page.url()).href
  }

  async lockRoom(): Promise<void> {
    await this.page.getByText('Lock the room').click()
    await expect(this.lock).toBeChecked()
  }

  async endRound(): Promise<void> {
    await this.end.click()
    await this.page.getByRole('dialog').getByRole('button', { name: 'End round' }).click()
  }
}
