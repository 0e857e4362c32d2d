/**
 * One screen before the accessibility checker, as it is or in every look it has: as wide as a Chromebook and as narrow as a
 * phone, on paper and on slate. A theme changes colours and nothing else, so on slate the contrasts alone are measured again.
 */

import { AxeBuilder } from '@axe-core/playwright'
import { expect, type Page } from '@playwright/test'

const LOOKS = [
  { name: 'wide', viewport: { width: 1366, height: 768 } },
  { name: 'narrow', viewport: { width: 360, height: 640 } },
] as const
/** WCAG 2.2 A and AA as far as a tool can see. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

/**
 * Leaves the page on paper and as wide as it was. Goes on after a violation, so that one run tells all of them.
 * @param page whose theme follows the system, and which was opened with `reducedMotion`: what fades in is pale meanwhile
 */
export async function checkEveryLook(page: Page, what: string): Promise<void> {
  const before = page.viewportSize()
  for (const { name, viewport } of LOOKS) {
    await page.setViewportSize(viewport)
    await expectNone(onePage(page).withTags(TAGS), `${what}, ${name}, on paper`)
    await wear(page, 'slate')
    await expectNone(onePage(page).withRules(['color-contrast']), `${what}, ${name}, on slate`)
    await wear(page, 'paper')
  }
  if (before !== null) await page.setViewportSize(before)
}

/** One screen as it is now, in the look that it has. */
export async function checkThisLook(page: Page, what: string): Promise<void> {
  await untilStill(page)
  await expectNone(onePage(page).withTags(TAGS), what)
}

/** What fades in is pale meanwhile, and its contrast is that of nothing that stays. What goes on for ever is not waited for. */
async function untilStill(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const ending = document
      .getAnimations()
      .filter((each) => each.effect?.getComputedTiming().endTime !== Number.POSITIVE_INFINITY)
    // One that is called off has ended too.
    await Promise.allSettled(ending.map((each) => each.finished))
  })
}

/** Our pages have no frames; without a look for them a check takes half the time. */
function onePage(page: Page): AxeBuilder {
  return new AxeBuilder({ page }).setLegacyMode(true)
}

async function expectNone(checker: AxeBuilder, what: string): Promise<void> {
  const { violations } = await checker.analyze()
  const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)
  expect.soft(found, `${what}, has no violation`).toEqual([])
}

async function wear(page: Page, theme: 'paper' | 'slate'): Promise<void> {
  await page.emulateMedia({ colorScheme: theme === 'paper' ? 'light' : 'dark' })
  await expect(page.locator(`html[data-theme="${theme}"]`)).toBeAttached()
}
