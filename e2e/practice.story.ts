/** Solo practice, from the way in to the next start. Rules CL: tests/RULES.md. */

import { countOuterBlockTurns } from '../engine/cube/outer-block-turns.ts'
import { caseOf } from '../engine/method/cases.ts'
import { lessonWay } from '../engine/method/lesson-way.ts'
import { CHROMEBOOK, expect, PHONE, test } from './classroom.ts'
import { PracticePage } from './models/practice-page.ts'

for (const theme of ['paper', 'slate'] as const) {
  test(`[CL20] a child practises alone, with hints, and is shown par and the lesson way: ${theme}`, async ({
    classroom,
  }) => {
    const { expectAccessible } = classroom
    const comeIn = await classroom.student({ ...PHONE, colorScheme: theme === 'paper' ? 'light' : 'dark' })
    await comeIn.page.getByRole('link', { name: 'Practise alone' }).tap()
    const practice = new PracticePage(comeIn.page)
    await practice.choice(/Yellow cross/).check()
    await practice.choice('corner shape').check()
    await expectAccessible(practice.page, 'practice, choosing')
    const bench = await practice.start()
    const start = await bench.position()
    expect(caseOf(start, 4)).toBe('corner-shape')

    await expect(practice.hint).toContainText('free')
    await practice.hint.tap()
    await expect(practice.rungs).toHaveCount(1)
    await expect(practice.rungs.first()).toContainText('Look at the top edges.')
    await practice.hint.tap()
    await expectAccessible(practice.page, 'practice, hints')
    await practice.hint.tap()
    await expect(practice.rungs).toHaveCount(3)
    await expect(practice.hint).toHaveCount(0)
    await bench.expectTurns(0)

    const way = lessonWay(start, { from: 4, to: 4 })
    await bench.tap(way.slice(0, -1), 'tap')
    // Amid the sequence the layers are broken, and the hint still stands, with what is left.
    await expect(practice.rungs).toHaveCount(4)
    await expect(practice.rungs.last()).toHaveText('You are in the middle of it: F’ is left.')
    await bench.tap(way.slice(-1), 'tap')
    await expect(bench.reached).toBeVisible()
    await expect(practice.rungs).toHaveCount(0)
    await expect(practice.par).toBeVisible()
    await expect(practice.lessonWay).toHaveText(`Lesson way: ${countOuterBlockTurns(way)} turns`)
    await expectAccessible(practice.page, 'practice, reached')

    await practice.sameAgain.tap()
    await bench.expectTurns(0)
    expect(await bench.position()).toEqual(start)
    await bench.tap(lessonWay(start, { from: 4, to: 4 }), 'tap')
    await practice.another.tap()
    await bench.expectTurns(0)
    expect(caseOf(await bench.position(), 4)).toBe('corner-shape')

    // What was chosen is still chosen another time.
    await practice.page.reload()
    await expect(practice.choice('corner shape')).toBeChecked()
  })
}

test('[CL21] practice goes on without a network, by keyboard, and nothing leaves the page', async ({ classroom }) => {
  const page = await classroom.newPage(CHROMEBOOK)
  await page.goto(`${classroom.url()}/practice`)
  const practice = new PracticePage(page)
  await practice.choice(/All home/).check()
  await page.waitForLoadState('networkidle')
  const sent: string[] = []
  page.on('request', (request) => sent.push(request.url()))
  await page.context().setOffline(true)

  const bench = await practice.start()
  await page.keyboard.press('h')
  await expect(practice.rungs).toHaveCount(1)
  await bench.type(lessonWay(await bench.position(), { from: 7, to: 7 }))
  await expect(bench.reached).toBeVisible()
  await expect(practice.par).toBeVisible()
  await practice.lessonWay.click()
  await expect(page.getByRole('dialog')).toBeVisible()
  await page.keyboard.press('Escape')
  await practice.another.click()
  await bench.expectTurns(0)
  await practice.otherGoal.click()
  await practice.choice(/First layer/).check()
  await practice.start()
  expect(sent).toEqual([])
})
