/** The pictures on keys: arrows, a small cube with its layer blackened, and a cube with the way that a re-hold takes. */

import type { Face } from '../../../engine/cube/faces.ts'
import { add, FACE_FRAMES, scale, type Vector } from '../../cube/cube-space.ts'
import { flatPath } from '../../cube/flat-drawing.ts'
import styles from './pad-pictures.module.css'
import type { ArrowName, RE_HOLDS } from './pad-plan.ts'

/** On a grid of 24. For front and back the arrow bends over the edge, as the stickers do. */
const ARROW_PATHS: Readonly<Record<ArrowName, string>> = {
  up: 'M12 21V4M5.5 10.5 12 4l6.5 6.5',
  down: 'M12 3v17M5.5 13.5 12 20l6.5-6.5',
  left: 'M21 12H4M10.5 5.5 4 12l6.5 6.5',
  right: 'M3 12h17M13.5 5.5 20 12l-6.5 6.5',
  'up-and-right': 'M4.5 20.5C4.5 11 9 7 19.500 7M13.5 1.5 19.5 7l-6 5.5',
  'down-and-right': 'M4.5 3.5C4.5 13 9 17 19.500 17M13.5 11.5l6 5.5-6 5.5',
  'up-and-left': 'M19.5 20.5C19.5 11 15 7 4.5 7M10.5 1.5 4.5 7l6 5.5',
  'down-and-left': 'M19.5 3.5C19.5 13 15 17 4.5 17M10.5 11.5 4.5 17l6 5.5',
}

export function ArrowPicture({ arrow }: { arrow: ArrowName }) {
  return (
    <svg className={styles.arrow} viewBox="0 0 24 24" aria-hidden="true">
      <path d={ARROW_PATHS[arrow]} />
    </svg>
  )
}

export function LayerPicture({ face }: { face: Face }) {
  return (
    <svg className={styles.layer} viewBox={SMALL_CUBE_BOX} aria-hidden="true">
      <path className={styles.black} d={BLACKENED[face]} />
      <path className={styles.wire} d={WIRE} />
    </svg>
  )
}

export function ReHoldPicture({ reHold }: { reHold: (typeof RE_HOLDS)[number] }) {
  return (
    <svg className={styles.reHold} viewBox={SMALL_CUBE_BOX} aria-hidden="true">
      <path className={styles.wire} d={WIRE} />
      <path className={styles.way} d={WAYS[reHold]} />
    </svg>
  )
}

const SMALL_CUBE_BOX = '-2.35 -2.6 4.7 5.2'

/** The three sides of the cube that are seen. */
const WIRE = (['U', 'F', 'R'] as const).map((face) => facePath(face, -1.5, 1.5, -1.5, 1.5)).join('')

/** The layer of each face, as far as it is seen: one unit deep. */
const BLACKENED: Readonly<Record<Face, string>> = {
  U: facePath('U', -1.5, 1.5, -1.5, 1.5) + facePath('F', -1.5, 1.5, -1.5, -0.5) + facePath('R', -1.5, 1.5, -1.5, -0.5),
  D: facePath('F', -1.5, 1.5, 0.5, 1.5) + facePath('R', -1.5, 1.5, 0.5, 1.5),
  F: facePath('F', -1.5, 1.5, -1.5, 1.5) + facePath('U', -1.5, 1.5, 0.5, 1.5) + facePath('R', -1.5, -0.5, -1.5, 1.5),
  B: facePath('U', -1.5, 1.5, -1.5, -0.5) + facePath('R', 0.5, 1.5, -1.5, 1.5),
  R: facePath('R', -1.5, 1.5, -1.5, 1.5) + facePath('U', 0.5, 1.5, -1.5, 1.5) + facePath('F', 0.5, 1.5, -1.5, 1.5),
  L: facePath('U', -1.5, -0.5, -1.5, 1.5) + facePath('F', -1.5, -0.5, -1.5, 1.5),
}

/** Over the edge between two faces: the way that the middles of the faces go when the whole cube is re-held. */
const WAYS: Readonly<Record<(typeof RE_HOLDS)[number], string>> = {
  x: wayPath([onFace('F', 0, 1.1), onFace('F', 0, -1.5), onFace('U', 0, -1.1)], [1, 0, 0]),
  "x'": wayPath([onFace('U', 0, -1.1), onFace('U', 0, 1.5), onFace('F', 0, 1.1)], [1, 0, 0]),
  y: wayPath([onFace('R', 1.1, 0), onFace('R', -1.5, 0), onFace('F', -1.1, 0)], [0, 1, 0]),
  "y'": wayPath([onFace('F', -1.1, 0), onFace('F', 1.5, 0), onFace('R', 1.1, 0)], [0, 1, 0]),
  z: wayPath([onFace('U', -1.1, 0), onFace('U', 1.5, 0), onFace('R', 0, 1.1)], [0, 0, 1]),
  "z'": wayPath([onFace('R', 0, 1.1), onFace('R', 0, -1.5), onFace('U', -1.1, 0)], [0, 0, 1]),
}

function onFace(face: Face, right: number, down: number): Vector {
  const frame = FACE_FRAMES[face]
  return add(scale(frame.out, 1.5), add(scale(frame.right, right), scale(frame.down, down)))
}

function facePath(face: Face, left: number, right: number, top: number, bottom: number): string {
  return flatPath(
    [onFace(face, left, top), onFace(face, right, top), onFace(face, right, bottom), onFace(face, left, bottom)],
    true,
  )
}

/** A line over an edge with an arrow head at its end, whose barbs lie in the plane of the last face. */
function wayPath(way: readonly [Vector, Vector, Vector], sideways: Vector): string {
  const [, edge, tip] = way
  const back = scale(add(edge, scale(tip, -1)), 0.7 / 2.6)
  const barb = (side: number) => add(tip, add(back, scale(sideways, 0.62 * side)))
  return flatPath(way) + flatPath([barb(1), tip, barb(-1)])
}
