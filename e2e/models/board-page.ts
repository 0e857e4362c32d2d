/** The board on the projector. */

import type { Locator, Page } from '@playwright/test'

export class BoardPage {
  readonly page: Page
  readonly lanes: Locator
  /** The hatched block that stands where par will. */
  readonly parCovered: Locator
  /** What par is, in the still column. */
  readonly par: Locator
  /** The tab of par's bar in the ruler; there only while par is shown, and then so is the bar. */
  readonly parTab: Locator

  constructor(page: Page) {
    this.page = page
    this.lanes = page.getByRole('region', { name: 'Lanes' })
    this.parCovered = page.getByText('Par, covered')
    this.par = page.getByRole('complementary').getByRole('definition')
    this.parTab = this.lanes.getByText(/^(par|best known) \d+/)
  }
}
