/** What both large tables need to know of corner twists. */

import { turnTable } from './coordinate.ts'
import { TWIST } from './orientation.ts'
import { conjugateTable } from './symmetry-classes.ts'

/** Twists after turns and after symmetries; 150 kB. */
export type TwistTables = {
  /** `[twist * 18 + turn]` */
  readonly twistTurns: Uint16Array
  /** `[symmetry * 2187 + twist]` */
  readonly twistConjugates: Uint16Array
}

/** @returns both tables, made in some 50 ms */
export function buildTwistTables(): TwistTables {
  return { twistTurns: turnTable(TWIST), twistConjugates: conjugateTable(TWIST) }
}
