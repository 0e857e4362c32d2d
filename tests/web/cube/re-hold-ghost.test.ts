/** The ghost of the old front. Rules DR: tests/RULES.md. */

import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { beforeAll, expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { FACES, faceIndex } from '../../../engine/cube/faces.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { ALL_TURNS, turnKind, turnName } from '../../../engine/cube/turns.ts'
import { CubePicture } from '../../../web/cube/cube-picture.tsx'
import { FACE_FRAMES } from '../../../web/cube/cube-space.ts'
import { flatFrame } from '../../../web/cube/flat-drawing.ts'
import { frontGoesTo } from '../../../web/cube/layer-rotation.ts'
import { directionOnScreen } from '../../../web/cube/look-around.ts'
import { inEnglish } from '../english.ts'

beforeAll(async () => {
  await inEnglish()
})

const CENTRE = 4
const STICKERS_PER_FACE = 9

// Origin: the engine's cube, whose front centre is looked for after the re-hold.
test.each(ALL_TURNS.filter((turn) => turnKind(turn) === 're-hold').map((turn) => [turnName(turn), turn] as const))(
  '[DR8] in %s the front goes where the engine brings it',
  (_, turn) => {
    const stickers = stickersOf(afterTurns(solvedCube(), [turn]))
    const found = FACES.find((face) => stickers[faceIndex(face) * STICKERS_PER_FACE + CENTRE] === faceIndex('F'))
    expect(frontGoesTo(turn)).toBe(found)
  },
)

test('[DR8] the frame in the picture lies around the face, also where that is hidden', () => {
  for (const face of FACES) {
    const points = [...flatFrame(face).matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)])
    expect(points).toHaveLength(4)
    const centre = directionOnScreen(FACE_FRAMES[face].out, { pitch: -30, yaw: -36 })
    for (const axis of [0, 1]) {
      const mean = points.reduce((sum, point) => sum + point[axis], 0) / points.length
      expect(mean).toBeCloseTo(centre[axis] * 1.5, 2)
    }
  }
})

test('[DR8] a picture has a frame when it is asked for, dashed where the face is hidden, and else none', () => {
  const nPaths = (ghost: 'L' | 'R' | null) => {
    const picture = createElement(CubePicture, {
      stickers: stickersOf(solvedCube()),
      baseColour: 'white',
      label: '',
      ghost,
    })
    return renderToStaticMarkup(picture)
  }
  expect(nPaths(null)).not.toContain('ghost')
  expect(nPaths('R')).toMatch(/ghostDark.*ghostLight/)
  expect(nPaths('L')).toMatch(/ghostDark.*ghostThrough/)
})
