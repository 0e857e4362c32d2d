/** A teacher without a mouse: everything is reached by Tab, chosen by the arrow keys, and pressed by Enter or Space. */

import { expect, type Locator, type Page } from '@playwright/test'

/** More stops than any page of ours has. */
const STOPS_MAX = 400

/** Presses Tab until the focus is there. Fails when it never comes there: then a keyboard cannot reach it. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeVisible()
  for (let stop = 0; stop < STOPS_MAX; stop++) {
    if (await target.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`Tab never comes to ${target}`)
}

export async function pressKey(page: Page, target: Locator, key: 'Enter' | 'Space' = 'Enter'): Promise<void> {
  await tabTo(page, target)
  await page.keyboard.press(key)
}

/** Chooses one of a radio group: Tab comes to the group, the arrow keys go through it. */
export async function chooseByArrows(page: Page, radio: Locator): Promise<void> {
  await expect(radio).toBeAttached()
  const group = await radio.getAttribute('name')
  const inGroup = page.locator(`input[type="radio"][name="${group}"]`)
  for (let stop = 0; stop < STOPS_MAX; stop++) {
    const isIn = await inGroup.evaluateAll((radios) => radios.some((each) => each === document.activeElement))
    if (isIn) break
    await page.keyboard.press('Tab')
  }
  for (let step = 0; step < STOPS_MAX && !(await radio.isChecked()); step++) await page.keyboard.press('ArrowRight')
  await expect(radio).toBeChecked()
}

/** Chooses from a list that opens: Tab comes to it, the arrow keys go through it. */
export async function selectByArrows(page: Page, list: Locator, label: string): Promise<void> {
  await tabTo(page, list)
  const shown = () => list.evaluate((element) => (element as HTMLSelectElement).selectedOptions[0]?.label)
  for (let step = 0; step < STOPS_MAX && (await shown()) !== label; step++) await page.keyboard.press('ArrowDown')
  expect(await shown()).toBe(label)
}
