/**
 * The turn pad: six strips of three, standing where the six layers stand on the screen. Clockwise from the top the axes
 * of the cube point to top, back, right, bottom, front, left. An arrow shows which way the stickers at that strip go.
 */

import type { Face } from '../../../engine/cube/faces.ts'
import type { TurnName } from '../../../engine/cube/turns.ts'

const ARROWS = [
  'up',
  'down',
  'left',
  'right',
  'up-and-right',
  'down-and-right',
  'up-and-left',
  'down-and-left',
] as const
export type ArrowName = (typeof ARROWS)[number]

export type StripPlan = {
  readonly face: Face
  readonly first: { readonly turn: TurnName; readonly arrow: ArrowName }
  /** The half turn: its small cube with the layer blackened is the label of the strip for who cannot read. */
  readonly half: TurnName
  readonly last: { readonly turn: TurnName; readonly arrow: ArrowName }
}

/** In the order of the Tab key: around the cube from the top, the left hand before the right. */
export const PAD: readonly StripPlan[] = [
  { face: 'U', first: { turn: 'U', arrow: 'left' }, half: 'U2', last: { turn: "U'", arrow: 'right' } },
  { face: 'L', first: { turn: "L'", arrow: 'up' }, half: 'L2', last: { turn: 'L', arrow: 'down' } },
  { face: 'F', first: { turn: 'F', arrow: 'up-and-right' }, half: 'F2', last: { turn: "F'", arrow: 'down-and-right' } },
  { face: 'B', first: { turn: 'B', arrow: 'up-and-left' }, half: 'B2', last: { turn: "B'", arrow: 'down-and-left' } },
  { face: 'R', first: { turn: 'R', arrow: 'up' }, half: 'R2', last: { turn: "R'", arrow: 'down' } },
  { face: 'D', first: { turn: "D'", arrow: 'left' }, half: 'D2', last: { turn: 'D', arrow: 'right' } },
]

/** The re-holds on their pad, in pairs of one axis. */
export const RE_HOLDS = ['x', "x'", 'y', "y'", 'z', "z'"] as const satisfies readonly TurnName[]
