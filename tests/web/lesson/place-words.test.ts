/** The twenty places in words. */

import type { TFunction } from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import { CORNER_PLACES, EDGE_PLACES } from '../../../engine/cube/piece-places.ts'
import { placeWords } from '../../../web/parts/lesson/place-words.ts'
import { inEnglish } from '../english.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

test('[WO3] each place has words of its own, which name exactly its faces', () => {
  const names = [...CORNER_PLACES, ...EDGE_PLACES].map(({ name }) => name)
  const words = names.map((name) => placeWords(t, name))
  expect(new Set(words).size).toBe(20)
  const letter = { top: 'U', bottom: 'D', front: 'F', back: 'B', right: 'R', left: 'L' } as Record<string, string>
  for (const [index, name] of names.entries()) {
    const faces = words[index].split(' ').map((word) => letter[word])
    expect(faces.sort()).toEqual([...name].sort())
  }
})

test('[WO3] the faces may be named in any order', () => {
  expect(placeWords(t, 'ULB')).toBe('top back left')
  expect(placeWords(t, 'UBL')).toBe('top back left')
})
