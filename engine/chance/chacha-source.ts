/**
 * The random source of the engine: the key stream of ChaCha20, read as 32-bit words. Its seed of 256 bits is wider than
 * the 65.2 bits that number all positions, so that every position can be drawn.
 * Source: RFC 8439, section 2.3 (block function), here with nonce 0 and a block counter that begins at 0.
 */

import { assert, err, ok, type Result } from '../result.ts'
import type { RandomSource } from './random-source.ts'

/** Length of a seed. */
export const SEED_BYTES = 32

/** Length of the nonce of RFC 8439. */
const NONCE_BYTES = 12

/** Why a written seed could not be read. */
export type SeedFault =
  /** Not 64 hexadecimal digits. Data: how many characters there are. Do: complete it. */
  | { readonly code: 'chance/seed-length'; readonly nCharacters: number }
  /** A character is no hexadecimal digit. Data: the character and its 0-based place. Do: correct it. */
  | { readonly code: 'chance/seed-digit'; readonly token: string; readonly at: number }

const BLOCK_WORDS = 16
const N_DOUBLE_ROUNDS = 10

/** "expand 32-byte k" in ASCII, as four little-endian words. */
const CONSTANTS = [0x61707865, 0x3320646e, 0x79622d32, 0x6b206574] as const

/** The words that each quarter round mixes: four columns, then four diagonals. */
const QUARTER_ROUNDS = [
  [0, 4, 8, 12],
  [1, 5, 9, 13],
  [2, 6, 10, 14],
  [3, 7, 11, 15],
  [0, 5, 10, 15],
  [1, 6, 11, 12],
  [2, 7, 8, 13],
  [3, 4, 9, 14],
] as const

/**
 * @param seed 32 bytes, kept as they are now
 * @returns a source that gives the same words for the same seed. It ends, with an assertion, after 2^36 words.
 */
export function chachaSource(seed: Uint8Array): RandomSource {
  const key = seed.slice()
  const nonce = new Uint8Array(NONCE_BYTES)
  let counter = 0
  let block = chachaBlock(key, counter, nonce)
  let word = 0
  return {
    nextUint32() {
      if (word === BLOCK_WORDS) {
        counter++
        assert(counter < 2 ** 32, 'the block counter has not run out')
        block = chachaBlock(key, counter, nonce)
        word = 0
      }
      return block[word++]
    },
  }
}

/**
 * One block of key stream.
 *
 * @param key 32 bytes @param counter 0..2^32-1 @param nonce 12 bytes
 * @returns 16 words; the key stream is their bytes, each word's lowest byte first
 */
export function chachaBlock(key: Uint8Array, counter: number, nonce: Uint8Array): Uint32Array {
  assert(key.length === SEED_BYTES && nonce.length === NONCE_BYTES, 'key and nonce have their lengths')
  const start = Uint32Array.from([...CONSTANTS, ...wordsOf(key), counter, ...wordsOf(nonce)])
  const state = start.slice()
  for (let round = 0; round < N_DOUBLE_ROUNDS; round++) {
    for (const [a, b, c, d] of QUARTER_ROUNDS) mixQuarter(state, a, b, c, d)
  }
  for (let index = 0; index < BLOCK_WORDS; index++) state[index] += start[index]
  return state
}

/** @param text 64 hexadecimal digits in either case @returns 32 bytes */
export function seedFromHex(text: string): Result<Uint8Array, SeedFault> {
  const at = text.search(/[^0-9a-f]/iu)
  if (at >= 0) return err({ code: 'chance/seed-digit', token: [...text.slice(at, at + 2)][0], at })
  if (text.length !== 2 * SEED_BYTES) return err({ code: 'chance/seed-length', nCharacters: text.length })
  return ok(
    Uint8Array.from({ length: SEED_BYTES }, (_, index) => Number.parseInt(text.slice(2 * index, 2 * index + 2), 16)),
  )
}

/** RFC 8439, section 2.1. Typed arrays of 32 bits wrap the additions. */
function mixQuarter(state: Uint32Array, a: number, b: number, c: number, d: number): void {
  addThenRotate(state, a, b, d, 16)
  addThenRotate(state, c, d, b, 12)
  addThenRotate(state, a, b, d, 8)
  addThenRotate(state, c, d, b, 7)
}

function addThenRotate(state: Uint32Array, sum: number, addend: number, rotated: number, nBits: number): void {
  state[sum] += state[addend]
  const mixed = state[rotated] ^ state[sum]
  state[rotated] = (mixed << nBits) | (mixed >>> (32 - nBits))
}

function wordsOf(bytes: Uint8Array): number[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  return Array.from({ length: bytes.length / 4 }, (_, index) => view.getUint32(4 * index, true))
}
