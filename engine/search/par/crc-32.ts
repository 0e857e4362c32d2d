/**
 * The check sum by which damage to the shipped tables is noticed: 32 bits, reflected polynomial EDB88320.
 * Source: ISO 3309 and ITU-T V.42, 8.1.1.6.2; table method as in the annex of RFC 1952, section 8. Published check value:
 * CBF43926 for the nine digits "123456789".
 */

const POLYNOMIAL = 0xedb88320

const REMAINDERS: Uint32Array = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte
  for (let bit = 0; bit < 8; bit++) remainder = remainder & 1 ? (remainder >>> 1) ^ POLYNOMIAL : remainder >>> 1
  return remainder
})

/** @returns the check sum, 0..2^32-1 */
export function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff
  for (let index = 0; index < bytes.length; index++) sum = REMAINDERS[(sum ^ bytes[index]) & 0xff] ^ (sum >>> 8)
  return (sum ^ 0xffffffff) >>> 0
}
