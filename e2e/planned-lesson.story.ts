/** A whole lesson from a plan: three rounds with eight students, by a teacher who has only a keyboard. Rules CL: tests/RULES.md. */

import { lessonWay } from '../engine/method/lesson-way.ts'
import { CHROMEBOOK, expect, PHONE, PROJECTOR, test } from './classroom.ts'
import { chooseByArrows, pressKey, selectByArrows, tabTo } from './keyboard.ts'
import type { BenchPage } from './models/bench-page.ts'

const NAMES = ['Amaru', 'Bine', 'Cosmo', 'Dafne', 'Esme', 'Farid', 'Grete', 'Ilko']
const YELLOW_CROSS = { from: 4, to: 4 } as const

test('[CL12] a planned lesson of three rounds with eight students, the teacher at the keyboard alone', async ({
  classroom,
}) => {
  test.setTimeout(180_000)
  const desk = await classroom.teacher(CHROMEBOOK)
  const { page } = desk
  const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' })

  // The class: names typed one a line, kept for next week.
  await chooseByArrows(page, page.getByRole('radio', { name: 'Classes' }))
  await pressKey(page, button('New class'))
  await tabTo(page, page.getByRole('textbox', { name: 'Title' }))
  await page.keyboard.type('Thursday')
  await tabTo(page, page.getByRole('textbox', { name: 'Names' }))
  await page.keyboard.insertText(NAMES.join('\n'))
  await pressKey(page, button('Keep'))
  await expect(page.getByText('8 names')).toBeVisible()

  // The plan: a ready-made one opens a room of its own.
  await chooseByArrows(page, page.getByRole('radio', { name: 'Lesson plans' }))
  await pressKey(page, button('Use Stage 4: Yellow cross'))
  const code = await desk.code()
  await chooseByArrows(page, page.getByRole('radio', { name: 'from a class' }))

  const benches: BenchPage[] = []
  for (const [index, name] of NAMES.entries()) {
    benches.push(await (await classroom.student(index % 2 === 0 ? CHROMEBOOK : PHONE)).pick(code, name))
  }
  const [amaru, bine, cosmo] = benches
  await expect(page.getByText('Ilko')).toBeVisible()
  const board = await classroom.newPage(PROJECTOR)
  await board.goto(await desk.boardAddress())
  await expect(board.getByText('Ilko')).toBeVisible()

  // Part 1, a worked example: the teacher's own cube is live on every bench and on the board.
  await pressKey(page, button('Demonstrate'))
  await selectByArrows(page, page.getByLabel('Show', { exact: true }), 'From a finished cube')
  await pressKey(page, button('Show to all'))
  await expect(amaru.page.getByRole('heading', { name: 'Your teacher shows' })).toBeVisible()
  await page.keyboard.press('f')
  await page.keyboard.press('u')
  await expect(amaru.page.getByText('after 2 turns of 2')).toBeAttached()
  await expect(board.getByText('after 2 turns of 2')).toBeAttached()
  // A student may step back alone, and come back to the teacher.
  await bine.page.getByRole('button', { name: 'One turn back' }).click()
  await page.keyboard.press('r')
  await expect(amaru.page.getByText('after 3 turns of 3')).toBeAttached()
  await expect(bine.page.getByText('You look by yourself.')).toBeVisible()
  await bine.page.getByRole('button', { name: 'Back to the teacher' }).click()
  await expect(bine.page.getByText('after 3 turns of 3')).toBeAttached()
  await pressKey(page, button('Stop showing'))
  await expect(amaru.page.getByRole('heading', { name: 'Your teacher shows' })).toBeHidden()
  await pressKey(page, button('Back'))

  // Part 2, a guided round with hints.
  await pressKey(page, button('Next part'))
  await pressKey(page, button('Start'))
  for (const bench of benches) await bench.untilPlayable()
  await cosmo.page.getByRole('button', { name: /^Hint/ }).click()
  await expect(cosmo.page.getByText(/Look at the/).first()).toBeVisible()
  await pressKey(page, desk.square('Bine'))
  await pressKey(page, button('Check how you hold it'))
  await expect(bine.page.getByText('Check how you hold it')).toBeVisible()
  await pressKey(page, button('Close'))
  const way = lessonWay(await amaru.position(), YELLOW_CROSS)
  await amaru.type(way)
  await cosmo.type(way)
  await bine.type(way)
  for (const bench of [amaru, bine, cosmo]) await expect(bench.reached).toBeVisible()
  await expect(board.getByText('of 8 reached', { exact: true })).toBeVisible()
  // In a guided round nobody is compared before the class; the desk has the footnote.
  await chooseByArrows(page, page.getByRole('radio', { name: 'Board', exact: true }))
  await expect(page.getByText(/1 hint up to level 1/)).toBeVisible()
  await chooseByArrows(page, page.getByRole('radio', { name: 'Wall', exact: true }))
  await pressKey(page, button('End round'))
  await pressKey(page, page.getByRole('dialog').getByRole('button', { name: 'End round' }))
  for (const bench of benches) await expect(bench.ended).toBeVisible()

  // Parts 3 and 4: an open round, and a harder one; nobody leaves the room.
  for (const number of [2, 3]) {
    await pressKey(page, button('Next part'))
    await pressKey(page, button(`Start round ${number}`))
    for (const bench of benches) await bench.untilPlayable()
    const next = lessonWay(await amaru.position(), YELLOW_CROSS)
    for (const bench of [amaru, cosmo]) await bench.type(next)
    for (const bench of [amaru, cosmo]) await expect(bench.reached).toBeVisible()
    await pressKey(page, button('End round'))
    await pressKey(page, page.getByRole('dialog').getByRole('button', { name: 'End round' }))
    for (const bench of benches) await expect(bench.ended).toBeVisible()
  }

  // Part 5, the review: the class follows the teacher's mark; names can be hidden.
  await pressKey(page, button('Next part'))
  await expect(page.getByRole('heading', { name: 'Review' })).toBeVisible()
  await pressKey(page, page.getByRole('checkbox', { name: 'Class follows me' }), 'Space')
  await expect(amaru.page.getByRole('heading', { name: 'Your teacher shows' })).toBeVisible()
  await expect(board.getByRole('button', { name: 'Amaru' })).toBeVisible()
  await pressKey(page, page.getByRole('checkbox', { name: 'Hide names' }), 'Space')
  await expect(board.getByRole('button', { name: 'Student A' })).toBeVisible()
  await expect(board.getByText('Amaru')).toHaveCount(0)
  await desk.stepOnTo(1, (onward) => pressKey(page, onward))
  await expect(board.getByText(/after 1 turn of/)).toBeVisible()
  await chooseByArrows(page, page.getByRole('radio', { name: 'What cost most' }))
  await expect(page.getByText('From 3 rounds.')).toBeVisible()
  await expect(page.getByRole('region', { name: 'What cost most' }).getByRole('listitem').first()).toBeVisible()
  for (const each of [page, board, amaru.page]) await classroom.expectAccessible(each, `a review at ${each.url()}`)
})
