/** A club night with real cubes: set up alike, turned by hand, written down. Rules CL: tests/RULES.md. */

import { countOuterBlockTurns } from '../engine/cube/outer-block-turns.ts'
import { turnName } from '../engine/cube/turns.ts'
import { lessonWay } from '../engine/method/lesson-way.ts'
import { CHROMEBOOK, expect, PHONE, PROJECTOR, test } from './classroom.ts'

const YELLOW_CROSS = { from: 4, to: 4 } as const

test('[CL13] three real cubes: set up, ready, written with a fault and without, ranked as those on screens', async ({
  classroom,
}) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  const code = await desk.code()
  await desk.page.getByText('More rules').click()
  await desk.page.getByRole('radio', { name: 'real cubes', exact: true }).check({ force: true })
  await desk.page.getByRole('radio', { name: 'what to look for' }).check({ force: true })
  await desk.page.getByLabel('A hint costs').selectOption({ label: '1 turn' })
  const kim = await (await classroom.student(CHROMEBOOK)).comeIn(code, 'Kim')
  const tom = await (await classroom.student(PHONE)).comeIn(code, 'Tom')
  const una = await (await classroom.student(CHROMEBOOK)).comeIn(code, 'Una')
  const board = await classroom.newPage(PROJECTOR)
  await board.goto(await desk.boardAddress())
  await desk.page.getByRole('button', { name: 'Set up round 1' }).click()

  // All three bring a cube to the same start, and show that it stands there.
  const start = await kim.setUpRealCube()
  expect([...(await tom.setUpRealCube())]).toEqual([...start])
  // A page that is loaded again in the middle of the setup goes on where the cube in the hands stands.
  await expect(una.page.getByRole('button', { name: 'Next turn' })).toBeVisible()
  for (let turn = 1; turn <= 3; turn++) await una.page.getByRole('button', { name: 'Next turn' }).click()
  await una.page.reload()
  await expect(una.page.getByText(/^turn 3 of/)).toBeVisible()
  await una.setUpRealCube()
  await classroom.expectAccessible(una.page, 'bench, which picture does the cube show')
  for (const bench of [kim, tom, una]) {
    await bench.answerReady(start)
    await expect(bench.page.getByText('Your cube is ready')).toBeVisible()
  }
  await expect(desk.page.getByText('3 of 3 cubes are ready')).toBeVisible()
  await una.page.reload()
  await expect(una.page.getByText('Your cube is ready')).toBeVisible()
  await classroom.expectAccessible(una.page, 'bench, the cube is ready')

  await desk.page.getByRole('button', { name: 'Start round 1' }).click()
  const way = lessonWay(start, YELLOW_CROSS)
  const nTurns = countOuterBlockTurns(way)
  const written = way.map(turnName).join(' ')

  // Kim slips while typing: the token is marked, and nothing can be sent until it is put right.
  await expect(kim.written).toBeVisible()
  await kim.written.fill(written.replace(/^\S+/, 'q'))
  await expect(kim.page.getByText('“q” is no turn.')).toBeVisible()
  await expect(kim.page.locator('mark')).toHaveText('q')
  await expect(kim.send).toHaveAttribute('aria-disabled', 'true')
  await kim.written.fill(written)
  await kim.send.click()
  await expect(kim.reached).toBeVisible()
  await expect(board.getByText('of 3 reached', { exact: true })).toBeVisible()

  // Una asks for a hint on her way, which goes on from her writing, and loads the page again in the middle: what she has
  // written is still there, and so is the hint, in the words, in the count and in what is sent.
  await una.written.fill(way.slice(0, 1).map(turnName).join(' '))
  await expect(una.page.getByText('costs 1 turn')).toBeVisible()
  await una.page.getByRole('button', { name: /^Hint/ }).click()
  await expect(una.page.getByText('1 of them for 1 hint')).toBeVisible()
  await classroom.expectAccessible(una.page, 'bench, a hint for what is written')
  await una.page.reload()
  await expect(una.page.getByText('1 of them for 1 hint')).toBeVisible()
  await expect(una.page.getByRole('region', { name: 'Hint' }).getByRole('listitem').first()).toContainText('Look at')
  await una.written.fill(written)
  await expect(una.page.getByRole('region', { name: 'Hint' })).toHaveCount(0)
  await una.page.reload()
  await expect(una.written).toHaveValue(written)
  await una.send.click()
  await expect(una.page.getByText(`Goal reached in ${nTurns + 1} turns`)).toBeVisible()

  // Tom forgets the last turn, is told where he stands, sends all the same, and then a way that reaches the goal.
  await tom.written.fill(way.slice(0, -1).map(turnName).join(' '))
  await classroom.expectAccessible(tom.page, 'bench, writing turns down')
  await tom.send.tap()
  await expect(tom.page.getByText('These turns do not reach the goal.')).toBeVisible()
  await tom.page.getByRole('button', { name: 'Send all the same' }).tap()
  await expect(tom.page.getByText(/^Try 1 went out/)).toBeVisible()
  await tom.written.fill(`U U' ${written}`)
  await tom.send.tap()
  await expect(tom.page.getByText(`Goal reached in ${nTurns + 2} turns`)).toBeVisible()
  await expect(tom.page.getByRole('listitem').filter({ hasText: 'Try 2' })).toContainText('goal reached')
  await expect(board.getByText('3', { exact: true }).first()).toBeVisible()

  await desk.endRound()
  for (const bench of [kim, tom, una]) await expect(bench.ended).toBeVisible()
  const rows = kim.page.getByRole('table').getByRole('row')
  await expect(rows).toHaveCount(4)
  for (const [index, name] of ['Kim', 'Una', 'Tom'].entries()) {
    const row = rows.nth(index + 1)
    await expect(row).toContainText(name)
    await expect(row).toContainText(String(nTurns + index))
    await expect(row).toContainText('on a real cube')
  }
  await expect(kim.page.getByText('You are in place 1')).toBeVisible()
  await expect(tom.page.getByText('You are in place 3')).toBeVisible()
  await desk.page.getByRole('radio', { name: 'Board', exact: true }).check({ force: true })
  const footnotes = desk.page.getByRole('list', { name: 'Footnotes of the ranking' })
  await expect(footnotes).toContainText('on a real cube')
  await expect(footnotes.getByRole('listitem').filter({ hasText: 'Una' })).toContainText('1 hint up to level 1')
  await classroom.expectAccessible(kim.page, 'bench, ended after a real cube')
})
