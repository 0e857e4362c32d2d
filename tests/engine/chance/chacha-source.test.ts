import { createCipheriv } from 'node:crypto'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { chachaSource, seedFromHex } from '../../../engine/chance/chacha-source.ts'
import { SEED } from '../cube/arbitraries.ts'

test('[CH2] the source gives the same words as another implementation of ChaCha20', () => {
  fc.assert(
    fc.property(fc.uint8Array({ minLength: 32, maxLength: 32 }), (seed) => {
      const stream = createCipheriv('chacha20', seed, Buffer.alloc(16)).update(Buffer.alloc(400))
      const source = chachaSource(seed)
      const words = Array.from({ length: 100 }, () => source.nextUint32())
      expect(words).toEqual(Array.from({ length: 100 }, (_, index) => stream.readUInt32LE(4 * index)))
    }),
    { seed: SEED },
  )
})

test('[CH2] changing the seed array afterwards does not change the source', () => {
  const seed = new Uint8Array(32)
  const source = chachaSource(seed)
  seed.fill(7)
  const untouched = chachaSource(new Uint8Array(32))
  for (let word = 0; word < 40; word++) expect(source.nextUint32()).toBe(untouched.nextUint32())
})

test.each([[0], [31], [33]])('[CH2] a seed of %i bytes is refused at once', (length) => {
  expect(() => chachaSource(new Uint8Array(length))).toThrow('lengths')
})

test('[CH5] 64 hexadecimal digits in either case are a seed', () => {
  expect(seedFromHex('00ff'.repeat(16))).toEqual(seedFromHex('00FF'.repeat(16)))
  expect(seedFromHex('0a'.repeat(32))).toEqual({ ok: true, value: new Uint8Array(32).fill(10) })
})

test.each([
  ['', { code: 'chance/seed-length', nCharacters: 0 }],
  ['ab'.repeat(31), { code: 'chance/seed-length', nCharacters: 62 }],
  ['a'.repeat(65), { code: 'chance/seed-length', nCharacters: 65 }],
  [`${'a'.repeat(10)}g${'a'.repeat(53)}`, { code: 'chance/seed-digit', token: 'g', at: 10 }],
  [` ${'a'.repeat(63)}`, { code: 'chance/seed-digit', token: ' ', at: 0 }],
  [`ab😀`, { code: 'chance/seed-digit', token: '😀', at: 2 }],
])('[CH5] %j is no seed', (text, error) => {
  expect(seedFromHex(text)).toEqual({ ok: false, error })
})
