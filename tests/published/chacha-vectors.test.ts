/**
 * Source: RFC 8439, ChaCha20 and Poly1305 for IETF Protocols: section 2.3.2 (block function) and appendix A.1 (five
 * blocks of key stream).
 */

import { expect, test } from 'vitest'
import { chachaBlock, chachaSource } from '../../engine/chance/chacha-source.ts'

const ZERO_KEY = '00'.repeat(32)
const ZERO_NONCE = '00'.repeat(12)

test.each([
  [
    '2.3.2',
    '000102030405060708090a0b0c0d0e0f101112131415161718191a1b1c1d1e1f',
    1,
    '000000090000004a00000000',
    '10f1e7e4d13b5915500fdd1fa32071c4c7d1f4c733c068030422aa9ac3d46c4ed2826446079faa0914c2d705d98b02a2b5129cd1de164eb9cbd083e8a2503c4e',
  ],
  [
    'A.1, vector 1',
    ZERO_KEY,
    0,
    ZERO_NONCE,
    '76b8e0ada0f13d90405d6ae55386bd28bdd219b8a08ded1aa836efcc8b770dc7da41597c5157488d7724e03fb8d84a376a43b8f41518a11cc387b669b2ee6586',
  ],
  [
    'A.1, vector 2',
    ZERO_KEY,
    1,
    ZERO_NONCE,
    '9f07e7be5551387a98ba977c732d080dcb0f29a048e3656912c6533e32ee7aed29b721769ce64e43d57133b074d839d531ed1f28510afb45ace10a1f4b794d6f',
  ],
  [
    'A.1, vector 3',
    `${'00'.repeat(31)}01`,
    1,
    ZERO_NONCE,
    '3aeb5224ecf849929b9d828db1ced4dd832025e8018b8160b82284f3c949aa5a8eca00bbb4a73bdad192b5c42f73f2fd4e273644c8b36125a64addeb006c13a0',
  ],
  [
    'A.1, vector 4',
    `00ff${'00'.repeat(30)}`,
    2,
    ZERO_NONCE,
    '72d54dfbf12ec44b362692df94137f328fea8da73990265ec1bbbea1ae9af0ca13b25aa26cb4a648cb9b9d1be65b2c0924a66c54d545ec1b7374f4872e99f096',
  ],
  [
    'A.1, vector 5',
    ZERO_KEY,
    0,
    `${'00'.repeat(11)}02`,
    'c2c64d378cd536374ae204b9ef933fcd1a8b2288b3dfa49672ab765b54ee27c78a970e0e955c14f3a88e741b97c286f75f8fc299e8148362fa198a39531bed6d',
  ],
])('[CH1] RFC 8439, %s', (_, key, counter, nonce, keyStream) => {
  const words = chachaBlock(Buffer.from(key, 'hex'), counter, Buffer.from(nonce, 'hex'))
  const bytes = Buffer.alloc(64)
  words.forEach((word, index) => {
    bytes.writeUInt32LE(word, 4 * index)
  })
  expect(bytes.toString('hex')).toBe(keyStream)
})

test('[CH1] the source gives blocks 0, 1, 2 ... of the key stream with nonce 0', () => {
  const source = chachaSource(new Uint8Array(32))
  const words = Array.from({ length: 48 }, () => source.nextUint32())
  const blocks = [0, 1, 2].flatMap((counter) => [...chachaBlock(new Uint8Array(32), counter, new Uint8Array(12))])
  expect(words).toEqual(blocks)
})
