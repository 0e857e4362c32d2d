/**
 * A whole lesson before the accessibility checker: every screen that it brings, in every look. What a round alone shows is in
 * every-screen-is-accessible.story.ts. Rules CL: tests/RULES.md.
 */

import { turnName, turnOf } from '../engine/cube/turns.ts'
import { lessonWay } from '../engine/method/lesson-way.ts'
import { checkEveryLook } from './check-every-look.ts'
import { CHROMEBOOK, type Classroom, expect, PHONE, PROJECTOR, test } from './classroom.ts'
import type { ComeInPage } from './models/come-in-page.ts'
import type { DeskPage } from './models/desk-page.ts'
import { PracticePage } from './models/practice-page.ts'

const YELLOW_CROSS = { from: 4, to: 4 } as const
const STILL = { colorScheme: 'light', reducedMotion: 'reduce' } as const
const STILL_CHROMEBOOK = { ...CHROMEBOOK, ...STILL }
const STILL_PHONE = { ...PHONE, ...STILL }

test('[CL8] preparing a lesson and letting the class in passes the accessibility checker', async ({ classroom }) => {
  const desk = await classroom.teacher(STILL_CHROMEBOOK)
  const { page } = desk
  await desk.goTo('Classes')
  await checkEveryLook(page, 'desk, no class yet')
  await page.getByRole('button', { name: 'New class' }).click()
  await page.getByRole('textbox', { name: 'Title' }).fill('Thursday')
  await page.getByRole('textbox', { name: 'Names' }).fill('Amaru\nBine\nCosmo\nBine')
  await checkEveryLook(page, 'desk, a new class with a name too many')
  await page.getByRole('textbox', { name: 'Names' }).fill('Amaru\nBine\nCosmo')
  await page.getByRole('button', { name: 'Keep' }).click()
  await checkEveryLook(page, 'desk, classes')
  await page.getByRole('button', { name: /^Open Thursday/ }).click()
  await checkEveryLook(page, 'desk, a class open')

  await page.getByRole('button', { name: 'All classes' }).click()
  await desk.goTo('Lesson plans')
  await page.getByRole('button', { name: /^Open Stage 4/ }).click()
  await page.getByRole('button', { name: 'Keep' }).click()
  await expect(page.getByRole('button', { name: /^Delete Stage 4/ })).toBeVisible()
  await checkEveryLook(page, 'desk, lesson plans')
  await page
    .getByRole('button', { name: /^Open Stage 4/ })
    .first()
    .click()
  await checkEveryLook(page, 'desk, a lesson plan open')
  await page.getByRole('button', { name: 'Use this plan' }).click()
  const code = await desk.code()
  await page.getByRole('button', { name: 'Rooms' }).click()
  await checkEveryLook(page, 'desk, open rooms')
  await page.getByRole('button', { name: new RegExp(`^Go to room ${code}`) }).click()

  await page.getByRole('radio', { name: 'from a class' }).check({ force: true })
  await page.getByText('I let each one in').click()
  await page.getByText('More rules').click()
  const comeIn = await classroom.student(STILL_PHONE)
  await comeIn.code.fill(code)
  await expect(comeIn.page.getByRole('radio', { name: 'Bine' })).toBeAttached()
  await checkEveryLook(comeIn.page, 'come in, names of a class')
  await comeIn.page.getByRole('radio', { name: 'Bine' }).check({ force: true })
  await comeIn.goIn.tap()
  await expect(comeIn.page.getByRole('heading', { name: 'At the door' })).toBeVisible()
  await checkEveryLook(comeIn.page, 'come in, at the door')
  await expect(page.getByText('1 is waiting at the door')).toBeVisible()
  await checkEveryLook(page, 'desk, planning with a plan, a door and a knock')
  await page.getByRole('button', { name: 'Not now' }).click()
  await expect(comeIn.page.getByText('Your teacher did not let you in this time.')).toBeVisible()
  await checkEveryLook(comeIn.page, 'come in, turned away')
})

test('[CL8] showing, watching, helping and looking back pass the accessibility checker', async ({ classroom }) => {
  const desk = await classroom.teacher(STILL_CHROMEBOOK)
  const { page } = desk
  const { code, board } = await openRoom(classroom, desk)
  await page.getByText('More rules').click()
  await page.getByRole('radio', { name: 'and what to do' }).check({ force: true })
  const ada = await (await classroom.student(STILL_PHONE)).comeIn(code, 'Ada')
  await desk.pretendClass.click()
  await expect(page.getByText('Vito')).toBeVisible()

  // A cube in the teacher's hands.
  await page.getByRole('button', { name: 'Demonstrate' }).click()
  await page.getByRole('button', { name: 'Show to all' }).click()
  await page.keyboard.type('fur')
  for (const each of [ada.page, board]) await expect(each.getByText('after 3 turns of 3')).toBeAttached()
  await checkEveryLook(page, 'desk, demonstrating the own cube')
  await checkEveryLook(ada.page, 'bench, shown a cube')
  await checkEveryLook(board, 'board, shown a cube')
  await ada.page.getByRole('button', { name: 'One turn back' }).tap()
  await expect(ada.page.getByText('You look by yourself.')).toBeVisible()
  await checkEveryLook(ada.page, 'bench, shown a cube at its own pace')
  await page.getByRole('button', { name: 'Back', exact: true }).click()
  await expect(page.getByText('The class sees what you show.')).toBeVisible()
  await ada.page.getByRole('button', { name: 'To my cube' }).tap()
  await checkEveryLook(ada.page, 'bench, what is shown put away')
  await page.getByRole('button', { name: 'Stop showing' }).click()

  await desk.start.click()
  await ada.untilPlayable()
  const way = lessonWay(await ada.position(), YELLOW_CROSS)
  for (let level = 1; level <= 3; level++) await ada.hint.tap()
  await checkEveryLook(ada.page, 'bench, a hint')
  await ada.tap(way.slice(0, 2), 'tap')

  await desk.square('Ada').click()
  await expect(page.getByRole('button', { name: 'Check how you hold it' })).toBeVisible()
  await page.getByRole('button', { name: 'Check how you hold it' }).click()
  await expect(ada.page.getByText('Check how you hold it')).toBeVisible()
  await checkEveryLook(page, 'desk, a student chosen on the wall')
  await checkEveryLook(ada.page, 'bench, a nudge')
  // A hint stays while a piece is ringed and a sentence waits behind it; no key leaves the screen of a phone for them.
  await page.getByRole('button', { name: 'Hint 3' }).click()
  await expect(ada.page.getByText('From your teacher', { exact: true })).toBeVisible()
  await page.getByRole('button', { name: 'Point at a piece' }).click()
  await checkEveryLook(page, 'desk, pointing at a piece')
  // As wide as before it begins anew.
  await page.getByRole('button', { name: 'Point at a piece' }).click()
  await page.getByRole('combobox', { name: 'Piece' }).selectOption({ index: 1 })
  await page.getByRole('button', { name: 'Point at a piece' }).last().click()
  await expect(ada.page.getByText(/: it is at the /)).toBeVisible()
  // Three rungs, and what is left of the sequence that was begun.
  await expect(ada.page.getByRole('region', { name: 'Hint' }).getByRole('listitem')).toHaveCount(4)
  for (const key of [ada.key('U'), ada.key('D2'), ada.reHold, ada.stuck]) await expect(key).toBeInViewport({ ratio: 1 })
  await checkEveryLook(ada.page, 'bench, a hint and a pointer')
  await ada.page.getByRole('status').getByRole('button', { name: 'All right' }).first().tap()
  await expect(ada.page.getByText('Check how you hold it')).toBeVisible()
  await page.getByRole('button', { name: 'Name and seat' }).click()
  await checkEveryLook(page, 'desk, name and seat')
  await page.keyboard.press('Escape')
  await page.getByRole('button', { name: 'Close', exact: true }).click()
  await checkEveryLook(page, 'desk, the wall')
  await page.getByRole('button', { name: 'Nudge all' }).click()
  await checkEveryLook(page, 'desk, a nudge for all')
  await page.keyboard.press('Escape')
  for (const face of ['Board', 'Ways'] as const) {
    await desk.see(face)
    await checkEveryLook(page, `desk, the face ${face}`)
  }
  await page.getByRole('button', { name: 'Demonstrate' }).click()
  await page.getByLabel('Show', { exact: true }).selectOption({ label: 'The lesson way' })
  await page.getByRole('button', { name: 'Show to all' }).click()
  await desk.stepOnTo(1)
  await page.getByRole('combobox', { name: 'Point at' }).selectOption({ index: 3 })
  for (const each of [ada.page, board]) await expect(each.getByText(/^after 1 turn of/)).toBeAttached()
  await checkEveryLook(page, 'desk, demonstrating the lesson way')
  await checkEveryLook(ada.page, 'bench, shown the lesson way')
  await checkEveryLook(board, 'board, shown the lesson way')
  await page.getByRole('button', { name: 'Stop showing' }).click()
  await page.getByRole('button', { name: 'Back', exact: true }).click()

  // To and fro, since the lesson way may be as short as can be, and then nothing costs more than it has to.
  await ada.tap([turnOf('D'), turnOf("D'"), ...way.slice(2)], 'tap')
  await expect(ada.reached).toBeVisible()
  await checkEveryLook(ada.page, 'bench, goal reached')
  await desk.endRound()
  await expect(ada.ended).toBeVisible()
  await checkEveryLook(ada.page, 'bench, ended with a hint')
  await page.getByRole('button', { name: 'Review' }).click()
  await page.getByText('Class follows me').click()
  await desk.stepOnTo(1)
  for (const each of [ada.page, board]) await expect(each.getByText(/after 1 turn of/).first()).toBeAttached()
  await checkEveryLook(page, 'desk, review')
  await checkEveryLook(ada.page, 'bench, shown a review')
  await checkEveryLook(board, 'board, shown a review')
  await page.getByRole('radio', { name: 'What cost most' }).check({ force: true })
  await expect(page.getByText('From 1 round.')).toBeVisible()
  await checkEveryLook(page, 'desk, what cost most')
})

test('[CL8] real cubes, taking home and practice pass the accessibility checker', async ({ classroom }) => {
  const desk = await classroom.teacher(STILL_CHROMEBOOK)
  const { page } = desk
  const { code, board } = await openRoom(classroom, desk)
  await page.getByText('More rules').click()
  await page.getByRole('radio', { name: 'real cubes', exact: true }).check({ force: true })
  const ada = await (await classroom.student(STILL_PHONE)).comeIn(code, 'Ada')
  await page.getByRole('button', { name: 'Set up round 1' }).click()
  await expect(ada.page.getByRole('list', { name: 'The turns of the setup' })).toBeVisible()
  await checkEveryLook(ada.page, 'bench, a real cube is set up')
  await checkEveryLook(page, 'desk, real cubes are set up')
  await checkEveryLook(board, 'board, real cubes are set up')
  const start = await ada.setUpRealCube()
  await checkEveryLook(ada.page, 'bench, which picture does the cube show')
  await ada.answerReady(start)
  await expect(ada.page.getByText('Your cube is ready')).toBeVisible()
  await checkEveryLook(ada.page, 'bench, the cube is ready')
  await page.getByRole('button', { name: 'Start round 1' }).click()
  const written = lessonWay(start, YELLOW_CROSS).map(turnName).join(' ')
  await ada.written.fill(written.replace(/^\S+/, 'q'))
  await checkEveryLook(ada.page, 'bench, a slip in what is written')
  await ada.written.fill(written.replace(/\s\S+$/, ''))
  await ada.send.tap()
  await expect(ada.page.getByText('These turns do not reach the goal.')).toBeVisible()
  await checkEveryLook(ada.page, 'bench, written and astray')

  await page.getByRole('button', { name: 'Rooms' }).click()
  await desk.openRoom.click()
  await expect(page.getByText(code)).toBeHidden()
  await page.getByLabel('Lesson plan', { exact: true }).selectOption({ label: 'Take-home week' })
  await page.getByRole('button', { name: 'Take it home' }).click()
  await checkEveryLook(page, 'desk, until when to take home')
  const homeCode = await desk.code()
  await page.getByRole('button', { name: 'Open the room for taking home' }).click()
  await expect(page.getByText(/^open until/)).toBeVisible()
  const atHome = await classroom.student(STILL_PHONE)
  await goHome(atHome, homeCode)
  await checkEveryLook(atHome.page, 'bench, rounds at home')
  await checkEveryLook(page, 'desk, a take-home room')
  await atHome.page.getByRole('listitem').filter({ hasText: 'Round 2 ·' }).getByRole('button').tap()
  await checkEveryLook(atHome.page, 'bench, which cube')

  const practice = new PracticePage(await classroom.newPage(STILL_PHONE))
  await practice.page.goto(`${classroom.url()}/practice`)
  await practice.choice(/Yellow cross/).check({ force: true })
  await checkEveryLook(practice.page, 'practice, choosing')
  const bench = await practice.start()
  await practice.hint.tap()
  await checkEveryLook(practice.page, 'practice, a hint')
  await bench.tap(lessonWay(await bench.position(), YELLOW_CROSS), 'tap')
  await expect(practice.par).toBeVisible()
  await checkEveryLook(practice.page, 'practice, reached')
})

async function openRoom(classroom: Classroom, desk: DeskPage) {
  await desk.openRoom.click()
  const code = await desk.code()
  const board = await classroom.newPage({ ...PROJECTOR, ...STILL })
  await board.goto(await desk.boardAddress())
  await expect(board.getByText('Type the room code')).toBeVisible()
  return { code, board }
}

/** In a take-home room a list of rounds waits behind the door, not a pad of keys. */
async function goHome(comeIn: ComeInPage, code: string): Promise<void> {
  await comeIn.code.fill(code)
  await comeIn.name.fill('Mila')
  await comeIn.goIn.tap()
  await expect(comeIn.page.getByRole('heading', { name: 'Your rounds' })).toBeVisible()
}
