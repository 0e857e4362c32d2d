/** Room codes. Rules RC: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { chachaSource } from '../../../engine/chance/chacha-source.ts'
import { drawRoomCode, readRoomCode } from '../../../engine/contest/room-code.ts'

describe('room codes', () => {
  const random = chachaSource(new Uint8Array(32).fill(7))
  const codes = Array.from({ length: 20_000 }, () => drawRoomCode(random))

  test('[RC1] are six letters in two syllables, without letters that are mistaken for others', () => {
    for (const code of codes) expect(code).toMatch(/^([BDFGHJKLMNPRSTVZ][AEIOU][BDFGKLMNPRSTVZ]){2}$/)
  })

  test('[RC2] use every letter of a place, none of them much more often than another', () => {
    const counts = new Map<string, number>()
    for (const code of codes) counts.set(code[0], (counts.get(code[0]) ?? 0) + 1)
    expect(counts.size).toBe(16)
    // Codes with a rude syllable are drawn again, which touches some letters more than others: hence no chi-square here.
    for (const n of counts.values()) expect(Math.abs(n - 20_000 / 16)).toBeLessThan(0.3 * (20_000 / 16))
  })

  test('[RC4] hold no syllable that nobody wants to read aloud', () => {
    // Each of the 1,120 syllables would be met about 36 times in so many codes.
    for (const code of codes) expect(code).not.toMatch(/FUK|FIK|TIT|NIG|NAZ|KIL|DIK|PIS|NEG|PEN/)
  })

  test('[RC3] reading what was drawn gives it back, however it was typed', () => {
    for (const code of codes.slice(0, 500)) {
      expect(readRoomCode(code)).toBe(code)
      expect(readRoomCode(` ${code.slice(0, 3).toLowerCase()}-${code.slice(3)} `.replaceAll('O', '0'))).toBe(code)
    }
    // Look-alikes are put right by the place they stand in.
    expect(['L1B0AT', 'BVDBAD', '8IDUAD', '5AL2IT'].map(readRoomCode)).toEqual([null, 'BUDBAD', 'BIDVAD', 'SALZIT'])
    for (const wrong of ['', 'BAD', 'BADBADD', 'AABBCC', 'QADBAD', 'ＢADBAD']) expect(readRoomCode(wrong)).toBeNull()
  })
})
