/** The pictures of the README: a room with the pretend class in the middle of a round, and two real students. */

import { fileURLToPath } from 'node:url'
import type { Page } from '@playwright/test'
import { lessonWay } from '../engine/method/lesson-way.ts'
import { CHROMEBOOK, expect, PHONE, PROJECTOR, test } from './classroom.ts'

const SHARP_PHONE = { ...PHONE, deviceScaleFactor: 2 }
/** By then the quickest of the pretend class have reached the goal and others are on their way. */
const MID_ROUND_MS = 45_000

const FOLDER = fileURLToPath(new URL('./pictures/', import.meta.url))
const take = (page: Page, name: string) => page.screenshot({ path: `${FOLDER}${name}.png`, animations: 'disabled' })

for (const theme of ['paper', 'slate'] as const) {
  const colorScheme = theme === 'paper' ? 'light' : 'dark'
  test(`pictures: ${theme}`, async ({ classroom }) => {
    const desk = await classroom.teacher({ ...CHROMEBOOK, colorScheme })
    await desk.openRoom.click()
    const code = await desk.code()
    const comeIn = await classroom.student({ ...SHARP_PHONE, colorScheme })
    await comeIn.code.fill(code)
    await comeIn.name.fill('Kim')
    await comeIn.name.blur()
    await take(comeIn.page, `come-in-phone-${theme}`)
    const kim = await comeIn.comeIn(code, 'Kim')
    const lou = await (await classroom.student({ ...CHROMEBOOK, colorScheme })).comeIn(code, 'Lou')
    await desk.pretendClass.click()
    await expect(desk.page.getByText('Vito')).toBeVisible()
    await take(desk.page, `desk-settings-1366-${theme}`)
    const board = await classroom.newPage({ ...PROJECTOR, colorScheme })
    await board.goto(await desk.boardAddress())
    await expect(board.getByText('Vito')).toBeVisible()
    await take(board, `gather-1920-${theme}`)

    await desk.start.click()
    await lou.untilPlayable()
    const way = lessonWay(await lou.position(), { from: 4, to: 4 })
    await lou.type(way.slice(0, -3))
    await kim.rightTrigger.tap()
    await kim.tap(way.slice(0, 3), 'tap')
    await board.waitForTimeout(MID_ROUND_MS)
    await take(kim.page, `bench-phone-${theme}`)
    await take(lou.page, `bench-1366-${theme}`)
    await lou.page.setViewportSize(PROJECTOR.viewport!)
    await lou.page.waitForTimeout(500)
    await take(lou.page, `bench-1920-${theme}`)
    await take(board, `board-1920-${theme}`)
    await board.setViewportSize(CHROMEBOOK.viewport!)
    await board.waitForTimeout(1_500)
    await take(board, `board-1366-${theme}`)
    await board.setViewportSize(PHONE.viewport!)
    await board.waitForTimeout(1_500)
    await take(board, `board-phone-${theme}`)
    await take(desk.page, `desk-running-1366-${theme}`)
    await desk.page.setViewportSize(PROJECTOR.viewport!)
    await desk.page.waitForTimeout(500)
    await take(desk.page, `desk-running-1920-${theme}`)
    await desk.page.setViewportSize(PHONE.viewport!)
    await desk.page.waitForTimeout(500)
    await take(desk.page, `desk-running-phone-${theme}`)
    await lou.type(way.slice(-3))
    await expect(lou.reached).toBeVisible()
    await lou.page.setViewportSize(CHROMEBOOK.viewport!)
    await lou.page.waitForTimeout(1_800)
    await take(lou.page, `bench-reached-1366-${theme}`)
    await desk.page.setViewportSize(CHROMEBOOK.viewport!)
    await desk.endRound()
    await expect(lou.ended).toBeVisible()
    await board.setViewportSize(PROJECTOR.viewport!)
    await board.waitForTimeout(4_000)
    await take(board, `board-ended-1920-${theme}`)
    await take(lou.page, `bench-ended-1366-${theme}`)
    await take(kim.page, `bench-ended-phone-${theme}`)
    await take(desk.page, `desk-ended-1366-${theme}`)
  })
}
