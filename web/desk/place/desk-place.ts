/**
 * Where the desk is: its pages as values. A place is kept in the browser's history and comes back from there after a
 * reload, perhaps written by an older version of this page, so it is read like anything else from outside.
 */

import { z } from 'zod'
import type { RoomId } from '../../../engine/contest/ids.ts'
import { lessonPlanSchema } from '../../../engine/contest/plans/lesson-plan.ts'

const roomIdSchema = z.string().transform((id) => id as RoomId)

export const deskPlaceSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('rooms') }),
  z.object({ kind: z.literal('plans') }),
  z.object({ kind: z.literal('classes') }),
  z.object({
    kind: z.literal('plan'),
    /** Null for one that is not on the shelf. */
    planId: z.string().nullable(),
    /** As it was opened; what is on the shelf goes before it. */
    plan: lessonPlanSchema,
    isReadyMade: z.boolean(),
    /** What had become of it when it was put into use without being kept. */
    draft: lessonPlanSchema.nullable(),
  }),
  // A class is named only by its identifier: a browser writes its history to the disk, and names of children stay out of it.
  z.object({ kind: z.literal('class'), classId: z.string().nullable() }),
  z.object({ kind: z.literal('room'), roomId: roomIdSchema }),
  z.object({ kind: z.literal('demonstrate'), roomId: roomIdSchema }),
  z.object({ kind: z.literal('review'), roomId: roomIdSchema }),
])

export type DeskPlace = Readonly<z.infer<typeof deskPlaceSchema>>

/** A lesson plan that is open. */
export type PlanPlace = Extract<DeskPlace, { kind: 'plan' }>
/** A class that is open. */
export type ClassPlace = Extract<DeskPlace, { kind: 'class' }>
/** The pages of the desk outside a room. */
export type HomePlace = Exclude<DeskPlace, { roomId: RoomId }>
/** The pages of a room. */
export type RoomPlace = Extract<DeskPlace, { roomId: RoomId }>

/** The first page of the desk. */
export const ROOMS = { kind: 'rooms' } as const satisfies DeskPlace

/** @returns whether the place is in a room */
export function isInRoom(place: DeskPlace): place is RoomPlace {
  return 'roomId' in place
}
