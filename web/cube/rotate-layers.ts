/**
 * Rotates layers of the cube that is drawn in CSS. Tiles are laid in place by `transform`; a rotation goes through the
 * separate property `rotate`, which the browser applies about the cube's centre, so a layer comes to rest by dropping it.
 * While a layer is out of line, black plates close the cut on both sides. Browsers without `rotate` show the cube still.
 */

import { AXES, type Axis, STICKER_PLACES } from './cube-space.ts'
import { isInLayers, type Layers } from './layer-rotation.ts'

export type DrawnCube = {
  /** By sticker index. */
  readonly tiles: readonly (HTMLElement | null)[]
  /** Two on each side of a cut; a layer has at most two cuts. */
  readonly plates: readonly (HTMLElement | null)[]
}

export const N_PLATES = 4

export type LayerMotion = {
  /** Holds the layers at so many degrees, as while a finger drags them. */
  readonly hold: (layers: Layers, degrees: number) => void
  /** Lets the layers come in from so many degrees. */
  readonly comeIn: (layers: Layers, fromDegrees: number, ms: number, onCameIn: () => void) => void
  /** Puts everything in line at once; whoever was coming in is not told. */
  readonly stop: () => void
}

/** One motion at a time: each ends the one before, so quick turns never pile up. */
export function layerMotion(cube: DrawnCube): LayerMotion {
  let running: Animation[] = []

  const stop = () => {
    const ended = running
    running = []
    for (const animation of ended) {
      animation.onfinish = null
      animation.cancel()
    }
    for (const part of [...cube.tiles, ...cube.plates]) part?.style.removeProperty('rotate')
    for (const plate of cube.plates) if (plate !== null) plate.style.display = 'none'
  }

  const hold = (layers: Layers, degrees: number) => {
    if (running.length > 0) stop()
    closeCuts(cube, layers)
    for (const part of partsOf(cube, layers)) part.style.setProperty('rotate', rotateBy(layers.axis, degrees))
  }

  const comeIn = (layers: Layers, fromDegrees: number, ms: number, onCameIn: () => void) => {
    stop()
    closeCuts(cube, layers)
    const frames = { rotate: [rotateBy(layers.axis, fromDegrees), rotateBy(layers.axis, 0)] }
    running = partsOf(cube, layers).map((part) => part.animate(frames, { duration: ms, easing: COME_IN_EASING }))
    running[0].onfinish = () => {
      stop()
      onCameIn()
    }
  }

  return { hold, comeIn, stop }
}

/** The same as --ease-turn of the tokens, which Web Animations cannot read. */
export const COME_IN_EASING = 'cubic-bezier(.3, .1, .2, 1)'

function partsOf(cube: DrawnCube, layers: Layers): HTMLElement[] {
  const tiles = cube.tiles.filter((_, index) => isInLayers(STICKER_PLACES[index].piece, layers))
  const plates = cube.plates.filter((plate) => plate?.dataset.turns === 'yes' && plate.style.display !== 'none')
  return [...tiles, ...plates].filter((part) => part !== null)
}

/** Lays a plate on each side of each cut between layers that turn and layers that stay. */
function closeCuts(cube: DrawnCube, { axis, layers }: Layers): void {
  const plates = cube.plates.filter((plate) => plate !== null)
  for (const plate of plates) plate.style.display = 'none'
  let next = 0
  for (const below of [-1, 0]) {
    const turnsBelow = layers.includes(below)
    const turnsAbove = layers.includes(below + 1)
    if (turnsBelow === turnsAbove) continue
    // One small cube is two thirds of the half side; the cut lies half of one beyond the layer below it.
    const cut = (below + 0.5) * (2 / 3)
    // The plate that looks up the axis closes the layers below it; the other one those above.
    layPlate(plates[next++], axis, cut, 1, turnsBelow)
    layPlate(plates[next++], axis, cut, -1, turnsAbove)
  }
}

const PLATE_ROTATIONS: Readonly<Record<Axis, readonly [up: string, down: string]>> = {
  x: ['rotateY(90deg)', 'rotateY(-90deg)'],
  y: ['rotateX(-90deg)', 'rotateX(90deg)'],
  z: ['rotateY(0deg)', 'rotateY(180deg)'],
}

function layPlate(plate: HTMLElement | undefined, axis: Axis, cut: number, looks: 1 | -1, turns: boolean): void {
  if (plate === undefined) return
  plate.style.transform = `${PLATE_ROTATIONS[axis][looks === 1 ? 0 : 1]} translateZ(calc(var(--half-side) * ${cut * looks}))`
  plate.style.removeProperty('rotate')
  plate.dataset.turns = turns ? 'yes' : 'no'
  plate.style.display = 'block'
}

/** @returns a value of the property `rotate` */
export function rotateBy(axis: Axis, degrees: number): string {
  return `${AXES.map((each) => (each === axis ? 1 : 0)).join(' ')} ${degrees}deg`
}
