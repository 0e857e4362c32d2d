/**
 * Reads bytes written as base64 text. Our own, because the engine knows neither the browser nor Node.
 * Source: RFC 4648, section 4. White space between characters is skipped, so that long texts can stand in lines.
 */

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'
const BITS_PER_CHARACTER = 6
const UNKNOWN = 255
const SKIPPED = 254

const MEANING_OF: Uint8Array = Uint8Array.from({ length: 128 }, (_, code) => {
  const character = String.fromCharCode(code)
  if (/[\s=]/.test(character)) return SKIPPED
  const value = ALPHABET.indexOf(character)
  return value < 0 ? UNKNOWN : value
})

/** @returns the bytes, or undefined when the text has a character that is not of the alphabet */
export function readBase64(text: string): Uint8Array | undefined {
  const bytes = new Uint8Array(Math.trunc((text.length * BITS_PER_CHARACTER) / 8))
  let [nBytes, bits, nBits] = [0, 0, 0]
  for (let index = 0; index < text.length; index++) {
    const meaning = MEANING_OF[text.charCodeAt(index)] ?? UNKNOWN
    if (meaning === UNKNOWN) return undefined
    if (meaning === SKIPPED) continue
    bits = ((bits << BITS_PER_CHARACTER) | meaning) & 0xffff
    nBits += BITS_PER_CHARACTER
    if (nBits < 8) continue
    nBits -= 8
    bytes[nBytes++] = bits >>> nBits
  }
  return bytes.subarray(0, nBytes)
}
