import { crc32 as crc32OfNode } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { err, ok } from '../../../../engine/result.ts'
import { readBits, widthFor, writeBits } from '../../../../engine/search/par/bit-stream.ts'
import { crc32 } from '../../../../engine/search/par/crc-32.ts'
import { openedOnce, type PackedTable, unpackTable } from '../../../../engine/search/par/packed-table.ts'
import { PAR_TABLE_DATA } from '../../../../engine/search/par/par-table-data.ts'
import { readBase64 } from '../../../../engine/search/par/read-base64.ts'
import { SHORTEST_SOLUTION_DATA } from '../../../../engine/search/par/shortest-solution-data.ts'
import { readStagePars } from '../../../../engine/search/par/stage-pars.ts'
import { SEED } from '../../cube/arbitraries.ts'

const bytesOf = (text: string) => Uint8Array.from(text, (character) => character.charCodeAt(0))

/** The table with one character of its text exchanged for another of the alphabet. */
function withFlippedCharacter(table: PackedTable, at: number): PackedTable {
  const other = table.base64[at] === 'A' ? 'B' : 'A'
  return { ...table, base64: table.base64.slice(0, at) + other + table.base64.slice(at + 1) }
}

describe('how the tables are shipped', () => {
  // Source: the check value that goes with the polynomial in ISO 3309 and RFC 1952 implementations; Node's zlib beside it.
  test('[SE5] the check sum gives the published check value and agrees with another implementation', () => {
    expect(crc32(bytesOf('123456789'))).toBe(0xcbf43926)
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(crc32(bytes)).toBe(crc32OfNode(bytes))
      }),
      { seed: SEED },
    )
  })

  // Source: RFC 4648, section 10.
  test.each([
    ['', ''],
    ['Zg==', 'f'],
    ['Zm8=', 'fo'],
    ['Zm9v', 'foo'],
    ['Zm9vYg==', 'foob'],
    ['Zm9vYmE=', 'fooba'],
    ['Zm9v\nYmFy\n', 'foobar'],
  ])('[SE5] %j is read as %j', (base64, text) => {
    expect(readBase64(base64)).toEqual(bytesOf(text))
  })

  test('[SE5] what another implementation writes is read back; other characters are refused', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(readBase64(Buffer.from(bytes).toString('base64'))).toEqual(bytes)
      }),
      { seed: SEED },
    )
    expect(['Zm9*', 'Zm9-', 'Zm9_', 'Zm9é', 'Zm9€'].map(readBase64)).toEqual(new Array(5).fill(undefined))
  })

  test('[SE5] numbers of any width up to 53 bits stand one behind the other', () => {
    const aNumber = fc
      .integer({ min: 0, max: 53 })
      .chain((width) => fc.record({ width: fc.constant(width), value: fc.maxSafeNat().map((n) => n % 2 ** width) }))
    fc.assert(
      fc.property(fc.array(aNumber, { maxLength: 20 }), (numbers) => {
        const bytes = new Uint8Array(200)
        let at = 0
        for (const { width, value } of numbers) {
          writeBits(bytes, at, width, value)
          at += width
        }
        at = 0
        for (const { width, value } of numbers) {
          expect(readBits(bytes, at, width)).toBe(value)
          at += width
        }
      }),
      { seed: SEED },
    )
    expect([1, 2, 3, 4, 5, 18, 243].map(widthFor)).toEqual([0, 1, 2, 2, 3, 5, 8])
  })

  test('[SE6] a flipped character anywhere is noticed', () => {
    const places = [1, 200, 5_000, PAR_TABLE_DATA.base64.length - 3]
    for (const at of places) {
      expect(readStagePars(withFlippedCharacter(PAR_TABLE_DATA, at))).toEqual(
        err({ code: 'search/par-data-damaged', what: 'pars' }),
      )
      expect(unpackTable(withFlippedCharacter(SHORTEST_SOLUTION_DATA, at), 'solutions')).toEqual(
        err({ code: 'search/par-data-damaged', what: 'solutions' }),
      )
    }
    expect(readStagePars({ ...PAR_TABLE_DATA, base64: PAR_TABLE_DATA.base64.slice(0, -200) }).ok).toBe(false)
    expect(readStagePars({ ...PAR_TABLE_DATA, base64: `${PAR_TABLE_DATA.base64}*` }).ok).toBe(false)
    expect(readStagePars(PAR_TABLE_DATA).ok).toBe(true)
  })

  test('[SE6] tables that cannot be loaded are a fault, and the next call tries again; then they are kept', async () => {
    const loads = [Promise.reject(new Error('no net')), Promise.resolve(PAR_TABLE_DATA)]
    let nLoads = 0
    const open = openedOnce(
      'pars',
      () => loads[nLoads++],
      (packed) => ok({ crc32: packed.crc32 }),
    )
    expect(await open()).toEqual(err({ code: 'search/par-data-missing', what: 'pars' }))
    const opened = await open()
    expect(opened).toEqual(ok({ crc32: PAR_TABLE_DATA.crc32 }))
    expect(await open()).toBe(opened)
    expect(nLoads).toBe(2)
  })
})
