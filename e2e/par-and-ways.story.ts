/** Par and the two ways through a start: who sees them when. Rules CL: tests/RULES.md. */

import { lessonWay } from '../engine/method/lesson-way.ts'
import { CHROMEBOOK, expect, PHONE, PROJECTOR, test } from './classroom.ts'
import { BoardPage } from './models/board-page.ts'

test('[CL11] par is kept from the class until the teacher shows it or the round has ended; the ways stay at the desk', async ({
  classroom,
}) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  const code = await desk.code()
  // Looked up in the browser, with a table that is fetched on demand. No start of the top cross has another par.
  await expect(desk.samplePar).toHaveText(/^Par (6|11)$/)
  const kim = await (await classroom.student(CHROMEBOOK)).comeIn(code, 'Kim')
  const tom = await (await classroom.student(PHONE)).comeIn(code, 'Tom')
  const board = new BoardPage(await classroom.newPage(PROJECTOR))
  await board.page.goto(await desk.boardAddress())
  await expect(board.page.getByText('Tom')).toBeVisible()

  await desk.start.click()
  await kim.untilPlayable()
  await tom.untilPlayable()
  const par = await desk.parTurns()
  await expect(board.parCovered).toBeVisible()
  await expect(board.parTab).toHaveCount(0)
  await expect(kim.par).toHaveCount(0)
  await expect(desk.lessonSteps).toHaveCount(0)

  await desk.showPar.click()
  await expect(board.parTab).toHaveText(`par ${par}`)
  await expect(kim.par).toHaveText(`Par ${par}`)
  await desk.hidePar.click()
  await expect(board.parCovered).toBeVisible()
  await expect(kim.par).toHaveCount(0)

  await kim.type(lessonWay(await kim.position(), { from: 4, to: 4 }))
  await expect(kim.reached).toBeVisible()
  await desk.endRound()
  await expect(board.parTab).toHaveText(`par ${par}`)
  await expect(kim.parAtTheEnd).toContainText(`Par was ${par}.`)
  await expect(kim.parAtTheEnd).toContainText('You took')
  await expect(tom.parAtTheEnd).toHaveText(`Par was ${par}.`)
  await desk.see('Ways')
  await expect(desk.shortestWay).toContainText(`${par} turns, proven`)
  await expect(desk.lessonSteps.first()).toBeVisible()
  for (const page of [desk.page, board.page, kim.page, tom.page]) {
    await classroom.expectAccessible(page, `par and ways at ${page.url()}`)
  }
})

test('[CL11] over several stages the best known is told within a second or two, and called so until it is proven', async ({
  classroom,
}) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  await desk.page.getByRole('radio', { name: 'White cross' }).check()
  await desk.page.getByLabel('Play until').selectOption('7')
  await desk.start.click()
  await expect(desk.par).toHaveText(/^Best known \d+, at least \d+$/)
  await desk.see('Ways')
  await expect(desk.shortestWay).toContainText(/\d+ turns, best known; at least \d+/)
  await classroom.expectAccessible(desk.page, 'a desk with a best known way')
})
