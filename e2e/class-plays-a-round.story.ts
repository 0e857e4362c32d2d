/** The main job, in real browsers: a class plays a stage round. Rules CL: tests/RULES.md. */

import { countOuterBlockTurns } from '../engine/cube/outer-block-turns.ts'
import { lessonWay } from '../engine/method/lesson-way.ts'
import { CHROMEBOOK, expect, PHONE, PROJECTOR, test } from './classroom.ts'
import { BenchPage } from './models/bench-page.ts'

const YELLOW_CROSS = { from: 4, to: 4 } as const

test('[CL1] a teacher, three students and a viewer: from the printed link to the ranking', async ({ classroom }) => {
  const desk = await classroom.teacher()
  await expect(desk.page).toHaveURL(/\/desk$/)
  await desk.openRoom.click()
  const code = await desk.code()

  // One has only a keyboard, one only a finger on a small phone, one is on a bad network.
  const keyboardPage = await classroom.newPage(CHROMEBOOK)
  await keyboardPage.goto(`${classroom.url()}/`)
  await expect(keyboardPage.getByLabel('Room code')).toBeFocused()
  await keyboardPage.keyboard.type(code)
  await keyboardPage.keyboard.press('Tab')
  await keyboardPage.keyboard.type('Kim')
  await keyboardPage.keyboard.press('Enter')
  const kim = new BenchPage(keyboardPage)
  const tom = await (await classroom.student(PHONE)).comeIn(code.toLowerCase(), 'Tom')
  const una = await (await classroom.student(CHROMEBOOK)).comeIn(code, 'Una')
  await expect(desk.page.getByText('Kim')).toBeVisible()
  await expect(desk.page.getByText('Una')).toBeVisible()

  const viewerPage = await classroom.newPage(PROJECTOR)
  await viewerPage.goto(await desk.boardAddress())
  await expect(viewerPage.getByText('Tom')).toBeVisible()
  // No right stays in an address that a class can read.
  await expect(viewerPage).toHaveURL(/\/view$/)

  await desk.start.click()
  for (const bench of [kim, tom, una]) await bench.untilPlayable()
  const starts = await Promise.all([kim, tom, una].map(async (bench) => [...(await bench.position())].join()))
  expect(new Set(starts).size).toBe(1)
  const way = lessonWay(await kim.position(), YELLOW_CROSS)

  await kim.type(way)
  await expect(kim.reached).toBeVisible()

  await tom.tap(way.slice(0, 2), 'tap')
  await tom.takeBack.tap()
  // So few turns are put away without asking.
  await tom.startAgain.tap()
  await tom.tap(way, 'tap')
  await expect(tom.reached).toBeVisible()

  // Una turns, reloads in the middle, loses the network, turns on, and comes back.
  await una.tap(way.slice(0, 3))
  await una.page.reload()
  await una.untilPlayable()
  await una.expectTurns(countOuterBlockTurns(way.slice(0, 3)))
  await una.page.context().setOffline(true)
  await una.tap(way.slice(3))
  await expect(una.page.getByText(/No connection|when the connection is back/).first()).toBeVisible()
  await una.page.context().setOffline(false)
  await expect(una.reached).toBeVisible()

  await expect(viewerPage.getByText('of 3 reached', { exact: true })).toBeVisible()
  await desk.endRound()
  for (const bench of [kim, tom, una]) await expect(bench.ended).toBeVisible()
  await expect(viewerPage.getByText('The round is over').first()).toBeVisible()
  // All three went the same way, so they have the same count and the moment decides.
  await expect(kim.page.getByText('You are in place 1')).toBeVisible()
  await expect(desk.start).toBeVisible()
})

test('[CL2] from the printed link to the first acknowledged turn: five actions of the teacher at most, three of the student', async ({
  classroom,
}) => {
  let teacherActs = 0
  let studentActs = 0
  const desk = await classroom.teacher()
  teacherActs++ // opens the printed link
  await desk.openRoom.click()
  teacherActs++
  const code = await desk.code()

  const page = await classroom.newPage(PHONE)
  await page.goto(`${classroom.url()}/${code}`)
  studentActs++ // points the camera at the QR code
  await page.getByRole('button', { name: /^Go in/ }).tap()
  studentActs++
  const bench = new BenchPage(page)
  await expect(bench.pad).toBeVisible()
  await desk.start.click()
  teacherActs++
  await bench.untilPlayable()
  await bench.key('R').tap()
  studentActs++
  await expect(desk.page.getByText(/^1 turns?$/).first()).toBeVisible()
  expect(teacherActs).toBeLessThanOrEqual(5)
  expect(studentActs).toBeLessThanOrEqual(3)
})

test('[CL3] pause, go on, add time, end and void are seen on every screen', async ({ classroom }) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  const ada = await (await classroom.student()).comeIn(await desk.code(), 'Ada')
  await desk.start.click()
  await ada.untilPlayable()
  await desk.pause.click()
  await expect(ada.page.getByText('The round is paused')).toBeVisible()
  await expect(ada.key('U')).toHaveAttribute('aria-disabled', 'true')
  await desk.goOn.click()
  await expect(ada.key('U')).toHaveAttribute('aria-disabled', 'false')
  await desk.addMinute.click()
  await expect(ada.page.getByText(/^5:[0-5]\d/).first()).toBeVisible()
  await ada.stuck.click()
  await expect(desk.page.getByText('asked for help').first()).toBeVisible()
  await desk.page.getByRole('button', { name: 'Strike out' }).click()
  await desk.page.getByRole('dialog').getByRole('button', { name: 'Strike it out' }).click()
  await expect(ada.page.getByText('This round does not count')).toBeVisible()
  await desk.start.click()
  await ada.untilPlayable()
})

test('[CL4] the server is killed in the middle of a round: the class plays on where it stood', async ({
  classroom,
}) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  const ada = await (await classroom.student()).comeIn(await desk.code(), 'Ada')
  await desk.start.click()
  await ada.untilPlayable()
  const way = lessonWay(await ada.position(), YELLOW_CROSS)
  await ada.type(way.slice(0, 4))
  await classroom.killAndRestart()
  await ada.type(way.slice(4))
  await expect(ada.reached).toBeVisible({ timeout: 30_000 })
  await expect(desk.page.getByText(/No connection/)).toHaveCount(0)
  await expect(desk.page.getByRole('button', { name: 'Pause' })).toBeVisible()
  await desk.endRound()
  await expect(ada.page.getByText('You are in place 1')).toBeVisible()
})

test('[CL4] the server is killed while the teacher shows something: the class sees it again, and on', async ({
  classroom,
}) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  const code = await desk.code()
  const ada = await (await classroom.student()).comeIn(code, 'Ada')
  const boardPage = await classroom.newPage(PROJECTOR)
  await boardPage.goto(await desk.boardAddress())
  await desk.page.getByRole('button', { name: 'Demonstrate' }).click()
  await desk.page.getByLabel('Show', { exact: true }).selectOption({ label: 'From a finished cube' })
  await desk.page.getByRole('button', { name: 'Show to all' }).click()
  await desk.page.keyboard.press('f')
  await desk.page.keyboard.press('u')
  for (const page of [ada.page, boardPage]) await expect(page.getByText('after 2 turns of 2')).toBeAttached()
  await classroom.killAndRestart()
  await expect(desk.page.getByText(/No connection/)).toHaveCount(0)
  // It is the restarted server that shows it: whoever comes in now sees it, and it goes on.
  const bo = await classroom.student()
  await bo.code.fill(code)
  await bo.name.fill('Bo')
  await bo.goIn.click()
  await expect(bo.page.getByText('after 2 turns of 2')).toBeAttached()
  await desk.page.keyboard.press('r')
  for (const page of [ada.page, boardPage, bo.page]) {
    await expect(page.getByText('after 3 turns of 3')).toBeAttached({ timeout: 30_000 })
  }
  // Stopped before the next restart, it stays away.
  await desk.page.getByRole('button', { name: 'Stop showing' }).click()
  await expect(ada.page.getByRole('heading', { name: 'Your teacher shows' })).toBeHidden()
  await classroom.killAndRestart()
  await expect(ada.page.getByText(/^No connection/)).toHaveCount(0)
  await expect(desk.page.getByText(/No connection/)).toHaveCount(0)
  await expect(desk.page.getByRole('button', { name: 'Show to all' })).toBeVisible()
  await expect(ada.page.getByRole('heading', { name: 'Your teacher shows' })).toBeHidden()
})

test('[CL5] a second tab takes the seat over, the first says so and can take it back', async ({ classroom }) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  const first = await (await classroom.student()).comeIn(await desk.code(), 'Ada')
  const tab = await first.page.context().newPage()
  await tab.goto(`${classroom.url()}/`)
  await expect(new BenchPage(tab).pad).toBeVisible()
  await expect(first.page.getByText('You are playing somewhere else')).toBeVisible()
  await first.page.getByRole('button', { name: 'Go on here' }).click()
  await expect(first.pad).toBeVisible()
  await expect(tab.getByText('You are playing somewhere else')).toBeVisible()
})

test('[CL6] wrong code, rude name, taken name, locked room: each says what to do, beside its field', async ({
  classroom,
}) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  const code = await desk.code()
  await (await classroom.student()).comeIn(code, 'Ada')
  const page = await classroom.student(PHONE)
  const tries: [string, string, RegExp][] = [
    ['BADBAD', 'Bo', /There is no room with this code/],
    [code, 'sh1thead', /Choose another name/],
    [code, 'ada', /Somebody here has this name/],
  ]
  for (const [typed, name, words] of tries) {
    await page.code.fill(typed)
    await page.name.fill(name)
    await page.goIn.click()
    await expect(page.page.getByText(words)).toBeVisible()
  }
  await desk.lockRoom()
  await page.name.fill('Bo')
  await page.goIn.click()
  await expect(page.page.getByText(/The room is locked/)).toBeVisible()
})

test('[CL7] one click seats a pretend class that really plays, marked on every screen', async ({ classroom }) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  await desk.pretendClass.click()
  await expect(desk.page.getByText('Vito')).toBeVisible()
  const viewerPage = await classroom.newPage(PROJECTOR)
  await viewerPage.goto(await desk.boardAddress())
  await desk.start.click()
  await expect(viewerPage.getByText('pretend class').first()).toBeVisible()
  await expect(viewerPage.getByText('of 12 reached', { exact: true })).toBeVisible()
  // The quickest needs about ten seconds; somebody reaches the goal well within two minutes.
  await expect(desk.page.getByText(/best \d+/).first()).toBeVisible({ timeout: 90_000 })
})
