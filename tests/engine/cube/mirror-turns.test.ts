import { expect, test } from 'vitest'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { stickerPermutation } from '../../../engine/cube/generators.ts'
import { mirrorTurns } from '../../../engine/cube/mirror-turns.ts'
import { STICKER_PLACES, stickerIndexAt } from '../../../engine/cube/sticker-places.ts'
import { TURN_NAMES, turnOf } from '../../../engine/cube/turns.ts'
import { turns } from './arbitraries.ts'

/** Where a mirror at the side shows each sticker. */
const MIRRORED = STICKER_PLACES.map(({ cell: [x, y, z], facing: [u, v, w] }) => stickerIndexAt([-x, y, z], [-u, v, w]))

test.each(TURN_NAMES)('[CU14] the mirror image of %s does in the mirror what the turn does', (name) => {
  const [mirrored] = mirrorTurns([turnOf(name)])
  const seenInMirror = stickerPermutation(mirrored)
  stickerPermutation(turnOf(name)).forEach((target, source) => {
    expect(seenInMirror[MIRRORED[source]]).toBe(MIRRORED[target])
  })
})

test.each([
  ["U R U' R'", "U' L' U L"],
  ['M x', 'M x'],
  ['Rw y S2', "Lw' y' S2"],
])('[CU14] the mirror image of %s is %s', (written, mirrored) => {
  expect(formatTurns(mirrorTurns(turns(written)))).toBe(mirrored)
})
