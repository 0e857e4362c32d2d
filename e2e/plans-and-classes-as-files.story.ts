/** Lesson plans and classes go out as files and come back, in the built pages of a real browser. Rules CL: tests/RULES.md. */

import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { CHROMEBOOK, expect, test } from './classroom.ts'

/** Presses what saves a file. @returns its name and its text */
async function savedFile(page: Page, button: string): Promise<{ name: string; text: string }> {
  const coming = page.waitForEvent('download')
  await page.getByRole('button', { name: button, exact: true }).click()
  const file = await coming
  return { name: file.suggestedFilename(), text: readFileSync(await file.path(), 'utf8') }
}

/** Gives a file to what opens one. */
async function openFile(page: Page, button: string, name: string, content: Buffer): Promise<void> {
  const asking = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: button, exact: true }).click()
  await (await asking).setFiles({ name, mimeType: '', buffer: content })
}

test('[CL16] a lesson plan is saved to a file, deleted, and opened from the file as it was', async ({ classroom }) => {
  const desk = await classroom.teacher(CHROMEBOOK)
  const { page } = desk
  await desk.goTo('Lesson plans')
  await page.getByRole('button', { name: /^Open Stage 5: Yellow face/ }).click()
  await page.getByRole('textbox', { name: 'Title' }).fill('Thursday: the top, “Größe 5”')
  await page.getByRole('button', { name: 'Remove' }).last().click()
  const parts = await page.getByRole('main').getByRole('listitem').allInnerTexts()
  expect(parts.length).toBeGreaterThan(2)
  const { name, text } = await savedFile(page, 'Save to a file')
  expect(name).toBe('Thursday-the-top-Größe-5.json')

  await page.getByRole('button', { name: 'All plans' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Leave' }).click()
  await expect(page.getByText('Thursday: the top')).toHaveCount(0)
  await openFile(page, 'Open a file', 'torn.json', Buffer.from(text.slice(0, -40)))
  await expect(page.getByText('This file cannot be read; perhaps it is cut off.')).toBeVisible()
  await openFile(page, 'Open a file', name, Buffer.from(text))
  await expect(page.getByRole('textbox', { name: 'Title' })).toHaveValue('Thursday: the top, “Größe 5”')
  expect(await page.getByRole('main').getByRole('listitem').allInnerTexts()).toEqual(parts)
  await page.getByRole('button', { name: 'Keep', exact: true }).click()
  await expect(page.getByText('Thursday: the top')).toBeVisible()
})

test('[CL16] a class is read from the table of a spreadsheet, put right, and saved so that it reads back', async ({
  classroom,
}) => {
  const desk = await classroom.teacher(CHROMEBOOK)
  const { page } = desk
  await desk.goTo('Classes')
  await page.getByRole('button', { name: 'New class' }).click()
  await page.getByRole('textbox', { name: 'Title' }).fill('7b')
  // As a spreadsheet of a German Windows writes it: semicolons, one byte a letter.
  const table = 'Nr;Vorname;Gruppe\r\n1;Jörg;A\r\n2;Zoë;B\r\n3;"Ana-María";A\r\n4;Zoë;A\r\n'
  await openFile(page, 'Read a CSV file', 'klasse.csv', Buffer.from(table, 'latin1'))
  await expect(page.getByText('Stands in line 3 already.')).toBeVisible()
  await page.getByRole('button', { name: 'Write “Zoë 2”' }).click()
  await page.getByRole('button', { name: 'Keep', exact: true }).click()
  await expect(page.getByText('4 names')).toBeVisible()

  await page.getByRole('button', { name: /^Open 7b/ }).click()
  const { name, text } = await savedFile(page, 'Save as CSV')
  expect(name).toBe('7b.csv')
  expect(text).toBe('\uFEFFname\r\nJörg\r\nZoë\r\nAna-María\r\nZoë 2\r\n')
  await page.getByRole('button', { name: 'Delete the class' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Delete the class' }).click()
  await expect(page.getByText('No class yet.')).toBeVisible()
  await page.getByRole('button', { name: 'New class' }).click()
  await openFile(page, 'Read a CSV file', name, Buffer.from(text))
  await page.getByRole('button', { name: 'Keep', exact: true }).click()
  await expect(page.getByText('4 names')).toBeVisible()
  await expect(page.getByText(/Jörg.*Zoë 2/)).toBeVisible()
})
