/** Arrays packed into one row of bytes. Rules SE: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Packable, packArrays, packedLength, unpackArrays } from '../../../server/search/packed-arrays.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'

const array = fc.oneof(fc.uint8Array(), fc.uint16Array(), fc.uint32Array())
const packable = fc.letrec<{ part: Packable; value: Packable[string] }>((tie) => ({
  value: fc.oneof({ depthSize: 'small' }, array, fc.integer(), tie('part')),
  part: fc.dictionary(
    fc.string({ minLength: 1 }).filter((key) => key !== '__proto__'),
    tie('value'),
    { maxKeys: 5, noNullPrototype: true },
  ),
})).part

test('[SE43] what is packed into shared memory is read back as it was', () => {
  fc.assert(
    fc.property(packable, (value) => {
      const bytes = new Uint8Array(new SharedArrayBuffer(packedLength(value)))
      packArrays(value, bytes)
      expect(unpackArrays(bytes)).toEqual(value)
    }),
    { seed: SEED },
  )
})

test('[SE43] an array that is there twice takes its room once, and is read as views of the same memory', () => {
  const shared = new Uint16Array(1_000).fill(9)
  const bytes = new Uint8Array(packedLength({ a: shared, b: { c: shared } }))
  expect(bytes.length).toBeLessThan(2 * shared.byteLength)
  packArrays({ a: shared, b: { c: shared } }, bytes)
  const read = unpackArrays(bytes) as { a: Uint16Array; b: { c: Uint16Array } }
  read.a[5] = 77
  expect(read.b.c[5]).toBe(77)
})
