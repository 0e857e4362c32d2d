/** The browser's own Back, Forward and Reload at the desk. Rules CL: tests/RULES.md. */

import { expect, type Page } from '@playwright/test'
import { CHROMEBOOK, test } from './classroom.ts'

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true })
const heading = (page: Page, name: string) => page.getByRole('heading', { name, exact: true })

test('[CL22] Back at the desk goes one page back and Forward on again, a reload stays, and what is shown stays shown', async ({
  classroom,
}) => {
  const desk = await classroom.teacher(CHROMEBOOK)
  const { page } = desk
  await desk.openRoom.click()
  const code = await desk.code()
  const ada = await (await classroom.student()).comeIn(code, 'Ada')

  // Into a demonstration, and out of it by the browser: the class goes on seeing it.
  await button(page, 'Demonstrate').click()
  await page.getByLabel('Show', { exact: true }).selectOption({ label: 'From a finished cube' })
  await button(page, 'Show to all').click()
  await expect(heading(ada.page, 'Your teacher shows')).toBeVisible()
  for (const key of ['r', 'u']) await page.keyboard.press(key)
  await page.goBack()
  await expect(heading(page, 'Demonstration')).toBeHidden()
  await expect(page.getByText('The class sees what you show.')).toBeVisible()
  await expect(heading(ada.page, 'Your teacher shows')).toBeVisible()
  await page.goForward()
  await expect(heading(page, 'Demonstration')).toBeVisible()
  // The cube in the teacher's hand is the one that the class sees, and goes on from there.
  await page.keyboard.press('f')
  await expect(ada.page.getByText(/^after 3 turns of 3/)).toBeAttached()
  await page.reload()
  await expect(page.getByText('The class sees this.')).toBeVisible()
  await page.keyboard.press('d')
  await expect(ada.page.getByText(/^after 4 turns of 4/)).toBeAttached()
  await button(page, 'Stop showing').click()
  await expect(heading(ada.page, 'Your teacher shows')).toBeHidden()
  await button(page, 'Back').click()
  await expect(desk.start).toBeVisible()

  // Out of the room and in again; the address has never said where.
  await page.goBack()
  await expect(desk.openRoom).toBeVisible()
  await page.goForward()
  await expect(page.getByText(code).first()).toBeVisible()
  await page.reload()
  await expect(page.getByText(code).first()).toBeVisible()
  await expect(page).toHaveURL(/\/desk$/)
  await button(page, 'Rooms').click()
  await expect(desk.openRoom).toBeVisible()

  // A room that is closed meanwhile is not there any more.
  await page.goForward()
  await page.getByRole('button', { name: 'Close the room' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Close the room' }).click()
  await expect(desk.openRoom).toBeVisible()
  await expect(page.getByText('No room is open.')).toBeVisible()
  await page.goForward()
  await expect(page.getByText('No room is open.')).toBeVisible()
  await desk.openRoom.click()
  expect(await desk.code()).not.toBe(code)
})

test('[CL23] unsaved work in a plan or a class is never lost by leaving: it is asked first', async ({ classroom }) => {
  const desk = await classroom.teacher(CHROMEBOOK)
  const { page } = desk
  const dialog = page.getByRole('dialog')
  await desk.goTo('Classes')
  await button(page, 'New class').click()
  const title = page.getByRole('textbox', { name: 'Title' })
  await title.fill('Thursday')
  await page.getByRole('textbox', { name: 'Names' }).fill('Amaru\nBine')

  // Asked by Back, and by another page of the desk; staying loses nothing.
  await page.goBack()
  await expect(dialog).toBeVisible()
  await button(page, 'Cancel').click()
  await expect(title).toHaveValue('Thursday')
  await page.getByRole('radio', { name: 'Rooms' }).click({ force: true })
  await expect(dialog).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(dialog).toBeHidden()
  await button(page, 'Keep').click()
  await expect(heading(page, 'Classes')).toBeVisible()
  await expect(page.getByText('2 names')).toBeVisible()

  // Kept: nothing is asked, and Forward opens what was kept.
  await page.goForward()
  await expect(title).toHaveValue('Thursday')
  await expect(page.getByRole('listitem').filter({ hasText: 'Amaru' })).toBeVisible()
  await page.reload()
  await expect(title).toHaveValue('Thursday')
  await page.goBack()
  await expect(heading(page, 'Classes')).toBeVisible()

  // A plan that is put into use as it stands is found as it stood on coming back from its room.
  await desk.goTo('Lesson plans')
  await page.getByRole('button', { name: /^Open Stage 4: Yellow cross/ }).click()
  await title.fill('Crosses')
  await page.getByRole('button', { name: 'Use this plan' }).click()
  await desk.code()
  await page.goBack()
  await expect(title).toHaveValue('Crosses')
  await page.goBack()
  await dialog.getByRole('button', { name: 'Leave' }).click()
  await expect(heading(page, 'Lesson plans')).toBeVisible()
})
