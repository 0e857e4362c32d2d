/**
 * The only geometry of the engine: a cube of 27 cells with coordinates -1, 0 and 1, and quarter turns about its axes.
 * x points right, y up, z towards the holder. Every table about turns is derived from this file.
 */

import type { Face } from './faces.ts'

/** A cell of the cube or a direction: three coordinates, each -1, 0 or 1. */
export type Vector = readonly [x: number, y: number, z: number]

/** The direction in which each face looks. */
export const FACE_NORMALS: Readonly<Record<Face, Vector>> = {
  U: [0, 1, 0],
  R: [1, 0, 0],
  F: [0, 0, 1],
  D: [0, -1, 0],
  L: [-1, 0, 0],
  B: [0, 0, -1],
}

/** @returns the scalar product: for a cell and a face normal the layer 1, 0 or -1 in which the cell lies */
export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

/** @returns the vector product, right-handed */
export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

/** @returns the sum */
export function add(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
}

/** @returns the vector times a number */
export function scale(a: Vector, factor: number): Vector {
  return [a[0] * factor, a[1] * factor, a[2] * factor]
}

/** Equal in all three coordinates? */
export function sameVector(a: Vector, b: Vector): boolean {
  return a[0] === b[0] && a[1] === b[1] && a[2] === b[2]
}

/**
 * Turns a vector by 90 degrees about an axis, clockwise for someone who looks at the face on that axis from outside.
 * The part along the axis stays; the rest becomes its cross product with the axis.
 */
export function quarterTurned(vector: Vector, axis: Vector): Vector {
  return add(cross(vector, axis), scale(axis, dot(vector, axis)))
}
