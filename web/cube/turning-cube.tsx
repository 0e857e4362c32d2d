/**
 * The cube on the bench: 54 tiles in CSS 3D. A drag on a sticker turns its layer, a drag beside the cube looks around it.
 * It draws where the cube stands and reports turns; whether a turn counts is decided elsewhere.
 */

import { type CSSProperties, memo, useLayoutEffect, useMemo, useState } from 'react'
import type { Colour } from '../../engine/cube/colour-scheme.ts'
import { stickersOf } from '../../engine/cube/stickers.ts'
import type { Turn } from '../../engine/cube/turns.ts'
import { classNames } from '../ui/class-names.ts'
import { FACE_ROTATIONS, STICKER_PLACES } from './cube-space.ts'
import { type Layers, outlineSides, rotationOf } from './layer-rotation.ts'
import type { Look } from './look-around.ts'
import { ReHoldGhost } from './re-hold-ghost.tsx'
import { layerMotion, N_PLATES } from './rotate-layers.ts'
import { useShownTurns } from './show-turns.ts'
import colourStyles from './sticker-colours.module.css'
import { coloursByHomeFace, type MarkStyle } from './sticker-colours.ts'
import { StickerMark } from './sticker-mark.tsx'
import styles from './turning-cube.module.css'
import type { CubeInHand } from './turns-between.ts'
import { useCubeDrag } from './use-cube-drag.ts'

export type TurningCubeProps = {
  readonly cube: CubeInHand
  readonly baseColour: Colour
  readonly marks: MarkStyle
  /** Whether a drag on a sticker turns. Looking around is always allowed. */
  readonly turnable: boolean
  readonly onTurn: (turn: Turn) => void
  readonly look: Look
  readonly onLook: (look: Look) => void
  /** The layers that the hand is about to turn. */
  readonly outlined?: Layers | null | undefined
  /** In a demonstration a re-hold comes in slowly, with a ghost of the old front, so that everybody can do it along. */
  readonly slowReHolds?: boolean
  /** Stickers that a pointer rings. */
  readonly pointed?: readonly number[] | undefined
}

export const TurningCube = memo(function TurningCube(props: TurningCubeProps) {
  const {
    cube,
    baseColour,
    marks,
    turnable,
    onTurn,
    look,
    onLook,
    outlined = null,
    slowReHolds = false,
    pointed = NOTHING,
  } = props
  // Made once: the tiles never change, only their colours do.
  const [{ tiles, plates, motion }] = useState(drawnCube)
  const { position, coming, ghost, onCameIn, showAll } = useShownTurns(cube, slowReHolds)
  const drag = useCubeDrag({ motion, look, onLook, turnable, onTurn, showAll })

  // Each turn comes in once; `serial` tells two equal turns apart.
  // biome-ignore lint/correctness/useExhaustiveDependencies: everything else belongs to the same turn.
  useLayoutEffect(() => {
    if (coming === null) return
    const rotation = rotationOf(coming.turn)
    motion.comeIn(rotation, drag.takeReleased(coming.turn) ?? -rotation.degrees, coming.ms, onCameIn)
    return motion.stop
  }, [coming?.serial])

  const stickers = useMemo(() => stickersOf(position), [position])
  const colours = coloursByHomeFace(baseColour)
  const lookedAt = { transform: `rotateX(${look.pitch}deg) rotateY(${look.yaw}deg)` }
  return (
    <div className={styles.around} dir="ltr" {...drag.handlers} aria-hidden="true">
      <div className={styles.cube} style={lookedAt}>
        {PLATES.map((plate) => (
          <div key={plate} className={styles.plate} ref={keepIn(plates, plate)} />
        ))}
        {STICKER_PLACES.map((place, index) => {
          const colour = colours[stickers[index]]
          return (
            <div
              key={place.index}
              className={classNames(
                styles.tile,
                colourStyles[colour],
                LIGHTS[place.face],
                pointed.includes(index) && styles.pointed,
              )}
              style={
                outlined === null ? TILE_STYLES[index] : { ...TILE_STYLES[index], ...outlineStyle(index, outlined) }
              }
              data-sticker={index}
              ref={keepIn(tiles, index)}
            >
              <i className={styles.sticker}>
                {marks !== 'plain' && (
                  <svg aria-hidden="true" viewBox="-.41 -.41 .82 .82">
                    <StickerMark colour={colour} marks={marks} />
                  </svg>
                )}
              </i>
            </div>
          )
        })}
      </div>
      {ghost !== null && (
        <div className={styles.cube} style={lookedAt} key={ghost.serial}>
          <ReHoldGhost ghost={ghost} />
        </div>
      )}
    </div>
  )
})

const NOTHING: readonly number[] = []

const PLATES = Array.from({ length: N_PLATES }, (_, plate) => plate)

/** Light: front 2 %, right 8 % darker, and so their opposites. */
const LIGHTS = {
  U: '',
  D: styles.sideLight,
  F: styles.frontLight,
  B: styles.frontLight,
  R: styles.sideLight,
  L: styles.sideLight,
}

const TILE_STYLES: readonly CSSProperties[] = STICKER_PLACES.map(({ face, row, column }) => ({
  transform: `${FACE_ROTATIONS[face]} translate3d(calc(var(--piece-side) * ${column - 1}), calc(var(--piece-side) * ${row - 1}), var(--half-side))`,
}))

function outlineStyle(index: number, layers: Layers): CSSProperties {
  const sides = outlineSides(STICKER_PLACES[index], layers)
  if (sides === null) return {}
  // Where the outline does not run it goes on into the next tile, so there it must reach the edge.
  const onSides = (length: string) => sides.map((runs) => (runs ? length : '0px')).join(' ')
  return {
    '--outline': onSides('var(--outline-width)'),
    '--outline-inset': onSides('var(--outline-gap)'),
  } as CSSProperties
}

function drawnCube() {
  const tiles: (HTMLElement | null)[] = []
  const plates: (HTMLElement | null)[] = []
  return { tiles, plates, motion: layerMotion({ tiles, plates }) }
}

function keepIn(list: (HTMLElement | null)[], index: number) {
  return (element: HTMLElement | null) => {
    list[index] = element
  }
}
