/**
 * What a class is shown by its teacher, on every bench and on the projector: a cube with its turns, or solutions beside each
 * other. The desk sends it whole, and then only how far it has gone.
 */

import { z } from 'zod'
import { TRY_STEPS_MAX } from '../contest/limits.ts'
import { PIECE_NAMES } from '../contest/nudges.ts'
import { COLOURS } from '../cube/colour-scheme.ts'
import { parseStickers } from '../cube/stickers.ts'
import { TURN_NAMES } from '../cube/turns.ts'
import { STAGES } from '../method/stages.ts'
import { SHOWN_TITLE_LENGTH_MAX, SHOWN_WAYS_MAX, TYPED_NAME_LENGTH_MAX } from './limits.ts'

const stickers = z
  .string()
  .length(54)
  .refine((text) => parseStickers(text).ok, 'is no legal cube')
const turns = z.array(z.enum(TURN_NAMES)).max(TRY_STEPS_MAX).readonly()
const title = z.string().trim().max(SHOWN_TITLE_LENGTH_MAX)

/** Where a showing stands; the small part that changes all the time. */
export const showingAtSchema = z.strictObject({
  /** Turns done of the chosen way; in a review, of the way that the mark stands on. */
  at: z.int().min(0).max(TRY_STEPS_MAX),
  /** Which of the ways is looked at; 0 where there is one. */
  chosen: z
    .int()
    .min(0)
    .max(SHOWN_WAYS_MAX - 1),
  /** A piece by its home place, ringed on every screen; null for none. */
  pointer: z.enum(PIECE_NAMES as [string, ...string[]]).nullable(),
})

/** Whose turns a way is. `letter` hides a name: A, B, C. */
const wayOwner = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('shortest') }),
  z.strictObject({ kind: z.literal('best-known') }),
  z.strictObject({ kind: z.literal('lesson') }),
  z.strictObject({ kind: z.literal('name'), name: z.string().trim().min(1).max(TYPED_NAME_LENGTH_MAX) }),
  z.strictObject({ kind: z.literal('letter'), letter: z.string().regex(/^[A-H]$/) }),
])

/** Counted turns that a solution's hints cost; they have no square of their own. */
const hintTurns = z.int().min(0).max(10_000)

/** A cube that the teacher turns, or one of the ways through a start, turned slowly. */
const shownCubeSchema = z.strictObject({
  kind: z.literal('cube'),
  title,
  start: stickers,
  baseColour: z.enum(COLOURS),
  turns,
})

/** Solutions of one start beside each other. */
const shownReviewSchema = z.strictObject({
  kind: z.literal('review'),
  roundNumber: z.int().min(1),
  from: z.literal([...STAGES]),
  to: z.literal([...STAGES]),
  start: stickers,
  baseColour: z.enum(COLOURS),
  ways: z
    .array(z.strictObject({ owner: wayOwner, turns, reached: z.boolean(), hintTurns }))
    .min(1)
    .max(SHOWN_WAYS_MAX)
    .readonly(),
})

/** What is shown, without how far it has gone. */
export const shownSchema = z.discriminatedUnion('kind', [shownCubeSchema, shownReviewSchema])

export type ShownCube = z.output<typeof shownCubeSchema>
export type ShownReview = z.output<typeof shownReviewSchema>
export type ShownWay = ShownReview['ways'][number]
export type Shown = z.output<typeof shownSchema>
export type ShowingAt = z.output<typeof showingAtSchema>
/** Everything of it: what a screen is told when it comes in. `version` rises with each showing that does not go on with the last. */
export type Showing = { readonly version: number; readonly shown: Shown; readonly at: ShowingAt }
