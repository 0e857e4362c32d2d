/** The addresses under which students reach a room. */

import type { RoomCode } from '../../engine/contest/ids.ts'

/** Where the QR code leads: the come-in page with the code filled in. Plain HTTP unless this page itself is safe. */
export function comeInAddress(address: string, code: RoomCode, pageProtocol: string): string {
  return `${pageProtocol === 'https:' ? 'https' : 'http'}://${address}/${code}`
}
