/** A week of rounds to take home, on three days of it and after it. Rules CL: tests/RULES.md. */

import { lessonWay } from '../engine/method/lesson-way.ts'
import { expect, PHONE, test } from './classroom.ts'
import { BenchPage } from './models/bench-page.ts'

const HOURS_A_DAY = 24
const HOUR_MS = 3_600_000

test('[CL15] a take-home week: a round on the first day, another on the third, results after the deadline', async ({
  classroom,
}) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  const code = await desk.code()
  // In before the room is one to take home: the seat has to be found on another day all the same.
  const first = await (await classroom.student(PHONE)).comeIn(code, 'Mila')
  await desk.page.getByLabel('Lesson plan', { exact: true }).selectOption({ label: 'Take-home week' })
  await desk.page.getByRole('button', { name: 'Take it home' }).click()
  await desk.page.getByRole('button', { name: 'Open the room for taking home' }).click()

  await expect(first.page.getByRole('heading', { name: 'Your rounds' })).toBeVisible()
  await expect(first.page.getByText(/^Open until /)).toBeVisible()
  await classroom.expectAccessible(first.page, 'bench, rounds at home')
  await first.roundAtHome(2).getByRole('button').tap()
  await classroom.expectAccessible(first.page, 'bench, which cube')
  await first.page.getByRole('button', { name: /The cube on this screen/ }).tap()
  await first.untilPlayable()
  // Nobody waits for anybody: there is no clock.
  await expect(first.page.getByRole('timer')).toHaveCount(0)
  await first.tap(lessonWay(await first.position(), { from: 4, to: 4 }), 'tap')
  await expect(first.reached).toBeVisible()
  await first.page.getByRole('button', { name: 'Rounds' }).tap()
  await expect(first.roundAtHome(2)).toContainText(/Goal reached in \d+ turns/)

  // The browser's own keys: Forward to the round, which stays when the page is loaded again, and Back to the list.
  await first.page.goForward()
  await expect(first.reached).toBeVisible()
  await first.page.reload()
  await expect(first.reached).toBeVisible()
  await first.page.goBack()
  await expect(first.roundAtHome(2)).toContainText(/Goal reached in \d+ turns/)
  await first.roundAtHome(3).getByRole('button').tap()
  await expect(first.page.getByRole('button', { name: /The cube on this screen/ })).toBeVisible()
  // It was picked, and no turn was made there: the page knows it when the server is started again.
  await classroom.killAndRestart()
  await expect(first.page.getByText(/^No connection/).first()).toBeVisible()
  await expect(first.page.getByText(/^No connection/)).toHaveCount(0)
  await expect(first.page.getByRole('button', { name: /The cube on this screen/ })).toBeVisible()
  await first.page.goBack()
  await expect(first.page.getByRole('heading', { name: 'Your rounds' })).toBeVisible()
  // A clock that runs for days says so.
  await expect(desk.page.getByRole('timer')).toHaveText(/^\d+ days( \d+ h)?$/)

  // The third day: another start of the server, another visit to the page.
  await classroom.killAndRestart({ movedHours: 2 * HOURS_A_DAY })
  const page = await first.page.context().newPage()
  await first.page.close()
  await page.clock.install({ time: Date.now() + 2 * HOURS_A_DAY * HOUR_MS })
  await page.goto(`${classroom.url()}/`)
  const third = new BenchPage(page)
  await expect(page.getByText('Mila, at home')).toBeVisible()
  await expect(third.roundAtHome(2)).toContainText(/Goal reached in \d+ turns/)
  await expect(page.getByText('1 of 5 reached.')).toBeVisible()
  await third.roundAtHome(4).getByRole('button').tap()
  await page.getByRole('button', { name: /The cube on this screen/ }).tap()
  await expect(third.key('U')).toHaveAttribute('aria-disabled', 'false')
  await third.type(lessonWay(await third.position(), { from: 6, to: 6 }))
  await expect(third.reached).toBeVisible()
  await page.getByRole('button', { name: 'Rounds' }).tap()
  await expect(page.getByText('2 of 5 reached.')).toBeVisible()

  // In the middle of a third round the week runs out; what comes in then is answered kindly and takes no place.
  await third.roundAtHome(1).getByRole('button').tap()
  await page.getByRole('button', { name: /The cube on this screen/ }).tap()
  await third.key('R').tap()
  await third.expectTurns(1)
  const restarted = classroom.killAndRestart({ movedHours: 8 * HOURS_A_DAY })
  await expect(page.getByText(/^No connection/).first()).toBeVisible()
  await third.key('F').tap()
  await restarted
  await expect(third.ended).toBeVisible({ timeout: 30_000 })
  await expect(page.getByText(/^Your try came in after the end: 2 turns, goal not reached/)).toBeVisible()
  await page.getByRole('button', { name: 'All rounds' }).tap()
  await expect(page.getByRole('heading', { name: 'This is how it went' })).toBeVisible()
  await expect(page.getByText('2 of 5 reached.')).toBeVisible()
  await third.roundAtHome(2).getByRole('button').tap()
  await expect(third.ended).toBeVisible()
  await expect(page.getByText(/Goal reached in \d+ turns/).first()).toBeVisible()
  await classroom.expectAccessible(page, 'bench, a round at home is over')

  await expect(desk.page.getByText(/No connection/)).toHaveCount(0)
  const second = desk.page.getByRole('radio', { name: /^2 ·/ })
  // The choice holds when the server has taken it.
  await second.click({ force: true })
  await expect(second).toBeChecked()
  await expect(desk.page.getByText('Mila').first()).toBeVisible()
  await expect(desk.page.getByText(/best \d+/).first()).toBeVisible()
})

test('[CL15] a take-home room comes of a room that was played in, or of the first page of the desk, and that room stays', async ({
  classroom,
}) => {
  const desk = await classroom.teacher()
  const { page } = desk
  await desk.openRoom.click()
  const code = await desk.code()
  await page.getByRole('checkbox', { name: 'I let each one in' }).check({ force: true })
  await desk.start.click()
  await desk.endRound()
  await page.getByRole('button', { name: 'Settings' }).click()
  await page.getByRole('button', { name: 'Take this round home' }).click()
  await classroom.expectAccessible(page, 'desk, taking a round home')
  await page.getByRole('button', { name: 'Open a new room for taking home' }).click()
  await expect(page.getByText(/^open until /)).toBeVisible()
  const atHome = await desk.code()
  expect(atHome).not.toBe(code)
  const mila = await classroom.student(PHONE)
  await mila.code.fill(atHome)
  await mila.name.fill('Mila')
  await mila.goIn.click()
  await page.getByRole('button', { name: 'Let in' }).click()
  await expect(mila.page.getByRole('heading', { name: 'Your rounds' })).toBeVisible()

  // The room of before is as it was.
  await page.goBack()
  await expect(page.getByText(code).first()).toBeVisible()
  await expect(page.getByText('Round 1 is over')).toBeVisible()

  await page.getByRole('button', { name: 'Rooms' }).click()
  await page.getByRole('button', { name: 'Take-home room' }).click()
  await page.getByLabel('Lesson plan', { exact: true }).selectOption({ label: 'Take-home week' })
  await classroom.expectAccessible(page, 'desk, beginning a take-home room')
  // A day that has gone: it is said, and no room is left behind.
  await page.evaluate("document.querySelector('form').noValidate = true")
  await page.getByLabel('Open until').fill('2020-01-01T10:00')
  await page.getByRole('button', { name: 'Open a new room for taking home' }).click()
  await expect(page.getByText(/^No room was opened. Choose a day/)).toBeVisible()
  await expect(page.getByRole('button', { name: /^Go to room/ })).toHaveCount(2)
  await page.getByLabel('Open until').fill(nextWeek())
  await page.getByRole('button', { name: 'Open a new room for taking home' }).click()
  await expect(page.getByText(/^open until /)).toBeVisible()
  await expect(page.getByRole('radio', { name: /^5 ·/ })).toBeAttached()
})

function nextWeek(): string {
  return new Date(Date.now() + 7 * HOURS_A_DAY * HOUR_MS).toISOString().slice(0, 16)
}
