/** The cube under a finger or a mouse. Rules CL: tests/RULES.md. */

import { CHROMEBOOK, expect, test } from './classroom.ts'

test('[CL9] dragging a sticker turns its layer and counts; dragging beside the cube looks around and does not', async ({
  classroom,
}) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  const ada = await (await classroom.student(CHROMEBOOK)).comeIn(await desk.code(), 'Ada')
  await desk.start.click()
  await ada.untilPlayable()
  const before = [...(await ada.position())]
  const pad = await ada.pad.boundingBox()
  if (pad === null) throw new Error('the pad is not on the screen')
  const middle = { x: pad.x + pad.width / 2, y: pad.y + pad.height / 2 }

  // On the right face, upwards: the layer that goes with it turns.
  await ada.page.mouse.move(middle.x + 80, middle.y + 40)
  await ada.page.mouse.down()
  await ada.page.mouse.move(middle.x + 80, middle.y - 70, { steps: 12 })
  await ada.page.mouse.up()
  await ada.expectTurns(1)
  expect([...(await ada.position())]).not.toEqual(before)
  await ada.takeBack.click()
  await ada.expectTurns(0)
  expect([...(await ada.position())]).toEqual(before)

  // Beside the cube.
  await ada.page.mouse.move(middle.x - 160, middle.y - 175)
  await ada.page.mouse.down()
  await ada.page.mouse.move(middle.x - 60, middle.y - 150, { steps: 12 })
  await ada.page.mouse.up()
  await expect(ada.page.getByRole('button', { name: 'See the front' })).toBeVisible()
  await ada.page.keyboard.press('ArrowLeft')
  await ada.page.keyboard.press('0')
  await expect(ada.page.getByRole('button', { name: 'See the front' })).toBeHidden()
  await ada.expectTurns(0)
  expect([...(await ada.position())]).toEqual(before)
})
