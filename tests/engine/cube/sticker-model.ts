/**
 * A second model of the cube, written for the tests and free of `engine/`: 54 points in space and nothing else.
 *
 * A sticker is the point two steps from the cube's centre along its face and at most one step along the others, so that
 * the one coordinate of size 2 is the face. Turns are coordinate swaps, written down for three axes.
 */

type Point = readonly [number, number, number]

/** How a clockwise quarter turn seen from right, from above and from in front maps a point. */
const CLOCKWISE = {
  x: ([x, y, z]: Point): Point => [x, z, -y],
  y: ([x, y, z]: Point): Point => [-z, y, x],
  z: ([x, y, z]: Point): Point => [y, -x, z],
} as const

const AXIS_PLACE = { x: 0, y: 1, z: 2 } as const

/** Axis, quarter turns clockwise seen from its positive end, and the coordinates along it that go along. */
type Family = readonly [axis: keyof typeof CLOCKWISE, quarters: 1 | 3, from: number, to: number]

const FAMILIES: Readonly<Record<string, Family>> = {
  R: ['x', 1, 1, 2],
  L: ['x', 3, -2, -1],
  U: ['y', 1, 1, 2],
  D: ['y', 3, -2, -1],
  F: ['z', 1, 1, 2],
  B: ['z', 3, -2, -1],
  Rw: ['x', 1, 0, 2],
  Lw: ['x', 3, -2, 0],
  Uw: ['y', 1, 0, 2],
  Dw: ['y', 3, -2, 0],
  Fw: ['z', 1, 0, 2],
  Bw: ['z', 3, -2, 0],
  M: ['x', 3, 0, 0],
  E: ['y', 3, 0, 0],
  S: ['z', 1, 0, 0],
  x: ['x', 1, -2, 2],
  y: ['y', 1, -2, 2],
  z: ['z', 1, -2, 2],
}

/** Reading order of the 54 points: six faces, each by its own two loops. */
const POINTS: readonly Point[] = [
  ...face((row, column) => [column, 2, row]),
  ...face((row, column) => [2, -row, -column]),
  ...face((row, column) => [column, -row, 2]),
  ...face((row, column) => [column, -2, -row]),
  ...face((row, column) => [-2, -row, column]),
  ...face((row, column) => [-column, -row, -2]),
]

const INDEX_OF_POINT = new Map(POINTS.map((point, index) => [point.join(), index]))

export const SOLVED_PICTURE = 'URFDLB'.replace(/./g, (letter) => letter.repeat(9))

/** @returns the picture after one turn, given by its name */
export function turnPicture(picture: string, name: string): string {
  const [, letters, amount] = /^([URFDLB]w?|[MESxyz])(['2]?)$/.exec(name) ?? []
  const [axis, sense, from, to] = FAMILIES[letters]
  const quarters = (sense * { '': 1, "'": 3, '2': 2 }[amount as '' | "'" | '2']) % 4
  const turned = picture.split('')
  POINTS.forEach((point, index) => {
    const along = point[AXIS_PLACE[axis]]
    if (along < from || to < along) return
    let target = point
    for (let quarter = 0; quarter < quarters; quarter++) target = CLOCKWISE[axis](target)
    turned[INDEX_OF_POINT.get(target.join()) as number] = picture[index]
  })
  return turned.join('')
}

function face(pointAt: (row: number, column: number) => Point): Point[] {
  return [-1, 0, 1].flatMap((row) => [-1, 0, 1].map((column) => pointAt(row, column)))
}
