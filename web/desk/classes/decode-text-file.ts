/** Text of a file, whichever of the usual encodings it has. */

/** The list of one class, in any encoding, is far smaller. */
export const LIST_FILE_BYTES_MAX = 200_000

/** School software writes UTF-8, spreadsheets UTF-16 or the old encoding of Windows: tried in this order. */
export function decodeTextFile(bytes: ArrayBuffer): string {
  const [first, second] = new Uint8Array(bytes)
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return new TextDecoder('windows-1252').decode(bytes)
  }
}
