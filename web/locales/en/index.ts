/** The English catalogue: one area a file. It is the source; other languages have the same keys, or do not compile. */

import { bench } from './bench.ts'
import { board } from './board.ts'
import { common } from './common.ts'
import { desk } from './desk.ts'
import { join } from './join.ts'
import { lesson } from './lesson.ts'
import { refusals } from './refusals.ts'

export const en = { bench, board, common, desk, join, lesson, refusals } as const

/** What every language has to have: the keys of this one. */
export type Catalogue = Words<typeof en>

type Words<Text> = { readonly [Key in keyof Text]: Text[Key] extends string ? string : Words<Text[Key]> }
