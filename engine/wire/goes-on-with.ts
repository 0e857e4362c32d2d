/** Apart from the schemas, so that a page need not load a parser to know it. */

import type { Shown } from './shown.ts'

/**
 * Is this the same showing, gone on? The teacher's own cube is shown anew with each turn; whoever looks at it from another
 * place, or has put it away, is not called back by that.
 */
export function goesOnWith(before: Shown, next: Shown): boolean {
  if (before.kind !== 'cube' || next.kind !== 'cube') return false
  return before.start === next.start && before.title === next.title && before.baseColour === next.baseColour
}
