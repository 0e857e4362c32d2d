/** Whole numbers of chosen widths, one behind the other in bytes, highest bit first. Knows nothing of cubes. */

const BITS_PER_BYTE = 8

/** @returns the fewest bits in which any of `nValues` values can be written: 0 for one value, 1 for two, 2 for three */
export function widthFor(nValues: number): number {
  let width = 0
  for (let nWritable = 1; nWritable < nValues; nWritable *= 2) width++
  return width
}

/** @returns the bytes that hold `nBits` bits */
export function bytesFor(nBits: number): number {
  return Math.ceil(nBits / BITS_PER_BYTE)
}

/** @param value a whole number below 2^width @param width 0..53 @param atBit where its highest bit goes */
export function writeBits(bytes: Uint8Array, atBit: number, width: number, value: number): void {
  let rest = value
  for (let bit = atBit + width - 1; bit >= atBit; bit--) {
    bytes[Math.trunc(bit / BITS_PER_BYTE)] |= (rest % 2) << (BITS_PER_BYTE - 1 - (bit % BITS_PER_BYTE))
    rest = Math.trunc(rest / 2)
  }
}

/** @returns what `writeBits` wrote there with this width */
export function readBits(bytes: Uint8Array, atBit: number, width: number): number {
  let value = 0
  for (let bit = atBit; bit < atBit + width; bit++) {
    value = value * 2 + ((bytes[Math.trunc(bit / BITS_PER_BYTE)] >>> (BITS_PER_BYTE - 1 - (bit % BITS_PER_BYTE))) & 1)
  }
  return value
}
