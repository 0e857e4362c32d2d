/** Every screen, in the states that a class meets, before the accessibility checker. Rules CL: tests/RULES.md. */

import { CHROMEBOOK, expect, PHONE, PROJECTOR, test } from './classroom.ts'

for (const theme of ['paper', 'slate'] as const) {
  const colorScheme = theme === 'paper' ? 'light' : 'dark'

  test(`[CL8] every screen passes the accessibility checker: ${theme}`, async ({ classroom }) => {
    const { expectAccessible } = classroom
    const comeIn = await classroom.student({ ...PHONE, colorScheme })
    await expectAccessible(comeIn.page, 'come in')
    await comeIn.goIn.tap()
    await expectAccessible(comeIn.page, 'come in, refused')

    const signedOut = await classroom.newPage({ ...CHROMEBOOK, colorScheme })
    await signedOut.goto(`${classroom.url()}/desk`)
    await expect(signedOut.getByText('The desk is closed')).toBeVisible()
    await expectAccessible(signedOut, 'desk, signed out')

    const desk = await classroom.teacher({ ...CHROMEBOOK, colorScheme })
    await expectAccessible(desk.page, 'desk, rooms')
    await desk.openRoom.click()
    const code = await desk.code()
    await desk.page.getByText('More rules').click()
    await expectAccessible(desk.page, 'desk, settings')

    const board = await classroom.newPage({ ...PROJECTOR, colorScheme })
    await board.goto(await desk.boardAddress())
    await expect(board.getByText(code.slice(0, 1)).first()).toBeVisible()
    await expectAccessible(board, 'board, gathering')

    const ada = await comeIn.comeIn(code, 'Ada')
    await expectAccessible(ada.page, 'bench, waiting')
    const bo = await (await classroom.student({ ...CHROMEBOOK, colorScheme })).comeIn(code, 'Bo')
    await desk.start.click()
    await expect(ada.page.getByText('Look at the goal')).toBeVisible()
    await expectAccessible(ada.page, 'bench, countdown')
    await ada.untilPlayable()
    await ada.key('R').tap()
    await ada.rightTrigger.tap()
    await expectAccessible(ada.page, 'bench, running on a phone')
    await expectAccessible(bo.page, 'bench, running on a Chromebook')
    await bo.page.getByRole('button', { name: 'Settings', exact: true }).click()
    await expectAccessible(bo.page, 'bench, settings')
    await bo.page.keyboard.press('Escape')
    await expectAccessible(desk.page, 'desk, running')
    await expectAccessible(board, 'board, running')
    await desk.pause.click()
    await expect(ada.page.getByText('The round is paused')).toBeVisible()
    await expectAccessible(ada.page, 'bench, paused')
    await desk.endRound()
    await expect(ada.ended).toBeVisible()
    await expectAccessible(ada.page, 'bench, ended')
    await expectAccessible(desk.page, 'desk, ended')
    await expectAccessible(board, 'board, ended')
    // Four times as large, as somebody with weak eyes has it.
    await ada.page.setViewportSize({ width: 320, height: 256 })
    await expectAccessible(ada.page, 'bench, ended, at 400 %')
  })
}
