/** The English catalogue: one area a file. It is the source; other languages have the same keys, or do not compile. */

import { bench } from './bench.ts'
import { board } from './board.ts'
import { classes } from './classes.ts'
import { coach } from './coach.ts'
import { common } from './common.ts'
import { desk } from './desk.ts'
import { hints } from './hints.ts'
import { join } from './join.ts'
import { lesson } from './lesson.ts'
import { plans } from './plans.ts'
import { practice } from './practice.ts'
import { refusals } from './refusals.ts'
import { showing } from './showing.ts'
import { written } from './written.ts'

export const en = {
  bench,
  board,
  classes,
  coach,
  common,
  desk,
  hints,
  join,
  lesson,
  plans,
  practice,
  refusals,
  showing,
  written,
} as const

/** What every language has to have: the keys of this one. */
export type Catalogue = Words<typeof en>

type Words<Text> = { readonly [Key in keyof Text]: Text[Key] extends string ? string : Words<Text[Key]> }
