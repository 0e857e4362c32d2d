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
  /** Par of the first sample start beside the settings. */
  readonly samplePar: Locator
  /** What the teacher knows of par: "Par 11", "Best known 27, at least 15". */
  readonly par: Locator
  readonly showPar: Locator
  readonly hidePar: Locator
  /** The two ways through the start; see `see('Ways')`. */
  readonly ways: Locator
  readonly shortestWay: Locator
  readonly lessonWay: Locator
  readonly lessonSteps: Locator

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
    this.samplePar = page
      .getByRole('figure')
      .getByText(/^Par \d+$/)
      .first()
    this.par = page.getByRole('main').getByText(/^(Par \d+|Best known \d+, at least \d+)$/)
    this.showPar = page.getByRole('button', { name: 'Show par to the class' })
    this.hidePar = page.getByRole('button', { name: 'Hide par from the class' })
    this.ways = page.getByRole('group').filter({ hasText: 'Ways through this start' })
    this.shortestWay = this.ways.getByRole('region', { name: /^Shortest/ })
    this.lessonWay = this.ways.getByRole('region', { name: 'Lesson way' })
    this.lessonSteps = this.lessonWay.getByRole('listitem').filter({ hasText: /Look (at|for)/ })
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

  /** What stands beside the wall: every cube, the lanes, or the ways through the start. */
  async see(face: 'Wall' | 'Board' | 'Ways'): Promise<void> {
    await this.page.getByRole('radio', { name: face, exact: true }).check({ force: true })
  }

  /** A page of the desk before a room. */
  async goTo(face: 'Rooms' | 'Lesson plans' | 'Classes'): Promise<void> {
    await this.page.getByRole('radio', { name: face, exact: true }).check({ force: true })
  }

  /** The square of a student on the wall. */
  square(name: string): Locator {
    return this.page.getByRole('region', { name: 'Wall' }).getByRole('button', { name: new RegExp(name) })
  }

  /** Turns of the round's par as the desk says them. */
  async parTurns(): Promise<number> {
    await expect(this.par).toBeVisible()
    return Number(/\d+/.exec((await this.par.textContent()) ?? '')?.[0])
  }

  /** Goes on with what is shown until so many turns are done; a re-hold on the way is a step, and counts none. */
  async stepOnTo(nTurns: number, press = (button: Locator): Promise<void> => button.click()): Promise<void> {
    const isThere = this.page.getByText(new RegExp(`after ${nTurns} turns? of`)).first()
    while (!(await isThere.isVisible())) {
      await press(this.page.getByRole('button', { name: 'One turn on' }))
    }
  }

  async endRound(): Promise<void> {
    await this.end.click()
    await this.page.getByRole('dialog').getByRole('button', { name: 'End round' }).click()
  }
}
