/**
 * The 54 turns of the notation: their names, and what each does in space.
 * Source: World Cube Association, Regulations 2024, article 12a (face, wide and whole-cube turns); the slice turns M, E
 * and S as in article 12a13 of the Regulations of 2009: M turns with L, E with D, S with F.
 */

import { assert } from '../result.ts'
import { FACES, type Face } from './faces.ts'

const AMOUNTS = ['', "'", '2'] as const
const SLICES = ['M', 'E', 'S'] as const
const RE_HOLDS = ['x', 'y', 'z'] as const

type Amount = (typeof AMOUNTS)[number]
type Slice = (typeof SLICES)[number]
type ReHold = (typeof RE_HOLDS)[number]

/** What a turn takes along: one outer layer, that and the layer beside it, the middle layer, or the whole cube. */
export type TurnKind = 'face' | 'wide' | 'slice' | 're-hold'

/** The part of a turn's name before its amount. */
export type TurnLetters = Face | `${Face}w` | Slice | ReHold

/** A turn in the one spelling that the engine writes. */
export type TurnName = `${TurnLetters}${Amount}`

declare const turnBrand: unique symbol

/** Index 0..53 into `TURN_NAMES`. */
export type Turn = number & { readonly [turnBrand]: true }

type TurnFamily = {
  readonly letters: TurnLetters
  readonly kind: TurnKind
  readonly axis: Face
  readonly layers: readonly number[]
}

const SLICE_AXES: Readonly<Record<Slice, Face>> = { M: 'L', E: 'D', S: 'F' }
const RE_HOLD_AXES: Readonly<Record<ReHold, Face>> = { x: 'R', y: 'U', z: 'F' }

const FAMILIES: readonly TurnFamily[] = [
  ...FACES.map((face): TurnFamily => ({ letters: face, kind: 'face', axis: face, layers: [1] })),
  ...FACES.map((face): TurnFamily => ({ letters: `${face}w`, kind: 'wide', axis: face, layers: [1, 0] })),
  ...SLICES.map((slice): TurnFamily => ({ letters: slice, kind: 'slice', axis: SLICE_AXES[slice], layers: [0] })),
  ...RE_HOLDS.map(
    (hold): TurnFamily => ({ letters: hold, kind: 're-hold', axis: RE_HOLD_AXES[hold], layers: [1, 0, -1] }),
  ),
]

/** All 54: 18 face turns, 18 wide turns, 9 slice turns, 9 re-holds; each family as quarter, quarter back, half. */
export const TURN_NAMES: readonly TurnName[] = FAMILIES.flatMap(({ letters }) =>
  AMOUNTS.map((amount): TurnName => `${letters}${amount}`),
)

/** The same 54 as numbers. */
export const ALL_TURNS: readonly Turn[] = TURN_NAMES.map((_, index) => index as Turn)

/** The 18 turns of one outer layer. */
export const FACE_TURNS: readonly Turn[] = ALL_TURNS.filter((turn) => turnKind(turn) === 'face')

const TURN_BY_NAME: ReadonlyMap<string, Turn> = new Map(TURN_NAMES.map((name, index) => [name, index as Turn]))

/** @returns the turn with this name */
export function turnOf(name: TurnName): Turn {
  const turn = TURN_BY_NAME.get(name)
  assert(turn !== undefined, `${name} names a turn`)
  return turn
}

/** @returns the turn with this name if it is one of the 54 canonical names, else undefined */
export function turnNamed(name: string): Turn | undefined {
  return TURN_BY_NAME.get(name)
}

/** A whole number 0..53 is a turn; anything else that came from outside is not. */
export function isTurn(value: unknown): value is Turn {
  return typeof value === 'number' && Number.isInteger(value) && 0 <= value && value < TURN_NAMES.length
}

/** @returns the name in the engine's spelling; inverse: `turnOf` */
export function turnName(turn: Turn): TurnName {
  return TURN_NAMES[turn]
}

/** @returns what the turn takes along */
export function turnKind(turn: Turn): TurnKind {
  return familyOf(turn).kind
}

/** @returns the name without its amount: `R`, `Rw`, `M`, `x` */
export function turnLetters(turn: Turn): TurnLetters {
  return familyOf(turn).letters
}

/** @returns the face seen from which the turn goes clockwise: R for R, Rw and x, L for M */
export function turnAxis(turn: Turn): Face {
  return familyOf(turn).axis
}

/** @returns the layers that go along: 1 is the layer of the axis face, 0 the middle one, -1 the far one */
export function turnLayers(turn: Turn): readonly number[] {
  return familyOf(turn).layers
}

/** @returns clockwise quarter turns: 1, 2, or 3 for a quarter turn back */
export function turnQuarters(turn: Turn): 1 | 2 | 3 {
  const amount = AMOUNTS[turn % AMOUNTS.length]
  if (amount === '') return 1
  return amount === '2' ? 2 : 3
}

/** @returns the turn that undoes this one */
export function inverseTurn(turn: Turn): Turn {
  const quarters = turnQuarters(turn)
  if (quarters === 2) return turn
  return (quarters === 1 ? turn + 1 : turn - 1) as Turn
}

/** @returns the turns that undo these: each one's inverse, last first */
export function inverseTurns(turns: readonly Turn[]): Turn[] {
  return turns.map(inverseTurn).reverse()
}

function familyOf(turn: Turn): TurnFamily {
  return FAMILIES[Math.trunc(turn / AMOUNTS.length)]
}
