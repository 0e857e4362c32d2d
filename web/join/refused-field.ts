/** Which field a refusal is about, so that the words stand beside it. */

import type { RefusalCode } from '../../engine/wire/refusal.ts'

export type RefusedField = 'code' | 'name' | 'page'

export function refusedField(code: RefusalCode): RefusedField {
  if (code === 'room/pick-a-name') return 'name'
  if (code === 'room/door-crowded') return 'page'
  if (code.startsWith('room/')) return 'code'
  if (code.startsWith('name/')) return 'name'
  return 'page'
}
