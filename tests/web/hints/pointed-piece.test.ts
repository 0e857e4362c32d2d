/** Where the pointer of a hint stands. Rules HT: tests/RULES.md. */

import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { FACES } from '../../../engine/cube/faces.ts'
import { centreAt } from '../../../engine/cube/hold.ts'
import { CORNER_PLACES, EDGE_PLACES } from '../../../engine/cube/piece-places.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import { drawStart } from '../../../engine/method/draw-start.ts'
import type { LookFor } from '../../../engine/method/way/lesson-step.ts'
import { nextLessonStep } from '../../../engine/method/way/lesson-steps.ts'
import { SEEN_FACES } from '../../../web/cube/flat-drawing.ts'
import { pointedPicture } from '../../../web/parts/hints/pointed-piece.ts'
import { sourceNumbered } from '../../engine/method/starts.ts'

const seenStickers = (picture: NonNullable<ReturnType<typeof pointedPicture>>) =>
  picture.stickers.filter((index) => SEEN_FACES[picture.view].some((face) => face === FACES[Math.trunc(index / 9)]))

test.each([1, 2, 3] as const)('[HT4] at stage %i the pointer is on the piece of the hint, and is seen', (stage) => {
  for (let number = 0; number < 60; number++) {
    const position = drawStart({ span: { from: stage, to: stage }, random: sourceNumbered(number) })
    const step = nextLessonStep(position, { from: stage, to: stage })
    const lookFor = step?.lookFor
    if (lookFor === undefined || !('piece' in lookFor) || lookFor.piece === null)
      throw new Error('a piece is looked for')
    const picture = pointedPicture(position, lookFor)
    if (picture === null) throw new Error('a piece has a picture')
    const shown = stickersOf(picture.position)
    const colours = picture.stickers.map((index) => FACES[shown[index]]).sort()
    expect(colours).toEqual(lookFor.piece.colours.map(({ colour }) => colour).sort())
    expect(seenStickers(picture).length).toBeGreaterThan(0)
  }
})

test('[HT4] wherever a piece is, one picture shows it; from behind only what no other shows', () => {
  const fromBehind = [...CORNER_PLACES, ...EDGE_PLACES].filter(({ name }) => {
    const lookFor: LookFor = {
      key: 'look/edge-between',
      caseId: 'edge-between',
      piece: { home: name, at: name, colours: [] },
    }
    const picture = pointedPicture(solvedCube(), lookFor)
    expect(picture !== null && seenStickers(picture).length).toBeGreaterThan(0)
    return picture?.fromBehind
  })
  expect(fromBehind.map(({ name }) => [...name].sort().join(''))).toEqual(['BL'])
})

test.each(['x', "x'", 'x2', 'z', "z'"] as const)('[HT4] a base that is not down is pointed at, after %s', (reHold) => {
  const position = afterTurns(solvedCube(), [turnOf(reHold)])
  const picture = pointedPicture(position, { key: 'look/base-not-down' })
  if (picture === null) throw new Error('the base has a picture')
  const [sticker] = seenStickers(picture)
  expect(centreAt(picture.position, FACES[Math.trunc(sticker / 9)])).toBe('D')
})

test('[HT4] a case of the last layer has no pointer', () => {
  const position = drawStart({ span: { from: 4, to: 4 }, random: sourceNumbered(1) })
  const step = nextLessonStep(position, { from: 4, to: 4 })
  expect(step !== undefined && pointedPicture(position, step.lookFor)).toBeNull()
})
