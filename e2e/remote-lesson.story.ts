/** A lesson over a video call: 300 ms between, one packet in a hundred lost. Rules CL: tests/RULES.md. */

import { countOuterBlockTurns } from '../engine/cube/outer-block-turns.ts'
import { lessonWay } from '../engine/method/lesson-way.ts'
import { CHROMEBOOK, expect, PHONE, PROJECTOR, test } from './classroom.ts'
import { ComeInPage } from './models/come-in-page.ts'
import { openSlowLine } from './slow-line.ts'

const YELLOW_CROSS = { from: 4, to: 4 } as const
const ROUND_TRIP_MS = 300

test('[CL14] a remote lesson with 300 ms and one packet in a hundred lost: no turn is lost, the delay is shown, who follows sees what the teacher shows', async ({
  classroom,
}) => {
  test.setTimeout(120_000)
  const line = await openSlowLine({
    to: Number(new URL(classroom.url()).port),
    roundTripMs: ROUND_TRIP_MS,
    loss: 0.01,
    seed: 20261125,
  })
  const far = `http://127.0.0.1:${line.port}`
  const desk = await classroom.teacher(CHROMEBOOK)
  const { page } = desk
  await desk.openRoom.click()
  const code = await desk.code()
  const comeFar = async (name: string, options = CHROMEBOOK) => {
    const away = await classroom.newPage(options)
    // One link in the chat of the call: the code is in it.
    await away.goto(`${far}/${code}`)
    return new ComeInPage(away).comeIn(code, name)
  }
  const una = await comeFar('Una')
  const tom = await comeFar('Tom', PHONE)
  const kim = await (await classroom.student(CHROMEBOOK)).comeIn(code, 'Kim')
  // The board is what a teacher shares in the call.
  const board = await classroom.newPage(PROJECTOR)
  await board.goto((await desk.boardAddress()).replace(classroom.url(), far))
  await expect(board.getByText('Una')).toBeVisible()

  await desk.start.click()
  for (const bench of [una, tom, kim]) await bench.untilPlayable()
  const way = lessonWay(await kim.position(), YELLOW_CROSS)
  const nTurns = countOuterBlockTurns(way)
  await kim.type(way)
  await Promise.all([una.type(way), tom.tap(way, 'tap')])
  for (const bench of [una, tom, kim]) await expect(bench.reached).toContainText(`in ${nTurns} turns`)
  await expect(board.getByText('of 3 reached', { exact: true })).toBeVisible()

  // How far away each is: half of nothing is guessed, the server has measured it.
  await desk.square('Una').click()
  const delay = page.getByText(/Delay \d+ ms/)
  await expect(delay).toBeVisible()
  const delayMs = async () => Number(/Delay (\d+) ms/.exec((await delay.textContent()) ?? '')?.[1])
  expect(await delayMs()).toBeGreaterThanOrEqual(ROUND_TRIP_MS - 20)
  // A measurement into which a lost packet falls says how long that one took, a second and more; the next one does not.
  await expect.poll(delayMs, { timeout: 30_000 }).toBeLessThan(ROUND_TRIP_MS * 4)

  // The teacher shows Una's turns; whoever is far away follows a moment later.
  await page.getByRole('button', { name: 'Show to all' }).click()
  await page.getByRole('button', { name: 'Show to all' }).click()
  for (const bench of [una, tom, kim]) await expect(bench.page.getByText('The turns of Una')).toBeVisible()
  await desk.stepOnTo(3)
  for (const bench of [una, tom, kim]) await expect(bench.page.getByText(/after 3 turns of/)).toBeAttached()
  await expect(board.getByText(/after 3 turns of/)).toBeAttached()
  await page.getByRole('button', { name: 'Stop showing' }).click()
  await page.getByRole('button', { name: 'Back', exact: true }).click()
  await desk.endRound()
  for (const bench of [una, tom, kim]) await expect(bench.ended).toBeVisible()
  expect(line.nLost()).toBeGreaterThan(0)
  await line.close()
})
