/** A page that was loaded before the server was renewed. Rules CL: tests/RULES.md. */

import { PROTOCOL_VERSION } from '../engine/wire/version.ts'
import { expect, PHONE, test } from './classroom.ts'
import { ComeInPage } from './models/come-in-page.ts'

test('[CL10] a page of an older version says so and can be loaded again', async ({ classroom }) => {
  const desk = await classroom.teacher()
  await desk.openRoom.click()
  const code = await desk.code()
  const page = await classroom.newPage(PHONE)
  // The page as an older version would have sent it: the same files, another protocol.
  let nAged = 0
  await page.route('**/assets/*.js', async (route) => {
    const response = await route.fetch()
    const now = await response.text()
    const older = now.replace(`auth:{protocol:${PROTOCOL_VERSION}}`, 'auth:{protocol:0}')
    if (older !== now) nAged++
    // Assets may be kept for ever, and an aged one must not be.
    await route.fulfill({ response, body: older, headers: { ...response.headers(), 'cache-control': 'no-store' } })
  })
  await page.goto(`${classroom.url()}/${code}`)
  // With a code in its address the page asks what that room's door wants, and hears of it before anything is pressed.
  await expect(page.getByText('This page is from an older version').first()).toBeVisible()
  expect(nAged).toBe(1)

  await page.unroute('**/assets/*.js')
  await page.getByRole('button', { name: 'Load again' }).tap()
  await new ComeInPage(page).comeIn(code, 'Ada')
})
