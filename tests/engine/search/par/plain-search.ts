/**
 * The fewest turns to a goal, found in the plainest way: breadth first from the start and from the solved cube, over whole
 * positions, until the two searches meet. Knows nothing of the code it is held against but the cube and its turns.
 */

import { applyTurn } from '../../../../engine/cube/apply-turn.ts'
import { CENTRES_AT, type CubePosition, copyCube, EDGES_AT, solvedCube } from '../../../../engine/cube/cube-position.ts'
import { cornerPiece, cornerTwist, edgeFlip, edgePiece } from '../../../../engine/cube/piece-code.ts'
import { FACE_TURNS, inverseTurn } from '../../../../engine/cube/turns.ts'
import { BASE_CORNERS, BASE_EDGES, MIDDLE_EDGES } from '../../../../engine/method/goal-part.ts'
import type { Stage } from '../../../../engine/method/stages.ts'

type Layer = Map<string, CubePosition>

/** How much of a piece the goal of a stage looks at. */
const NOTHING = 0
const ONLY_TURN = 1
const ALL = 2

/** Depth of the search from the solved cube; the other one goes as deep as needed. */
const BACK_TURNS = 4

/** What the goal of the stage sees of a position: two positions that it cannot tell apart give the same text. */
function sightOf(stage: Stage): (position: CubePosition) => string {
  const interest = (isCorner: boolean, home: number) => {
    if (BASE_EDGES.includes(home)) return ALL
    if (BASE_CORNERS.includes(home)) return stage >= 2 ? ALL : NOTHING
    if (MIDDLE_EDGES.includes(home)) return stage >= 3 ? ALL : NOTHING
    if (isCorner) return stage >= 6 ? ALL : stage === 5 ? ONLY_TURN : NOTHING
    return stage === 7 ? ALL : stage >= 4 ? ONLY_TURN : NOTHING
  }
  const character = (place: number, code: number) => {
    const isCorner = place < EDGES_AT
    const home = isCorner ? cornerPiece(code) : EDGES_AT + edgePiece(code)
    const turned = isCorner ? cornerTwist(code) : edgeFlip(code)
    return String.fromCharCode([46, 48 + turned, 65 + code][interest(isCorner, home)])
  }
  const characters = Array.from({ length: CENTRES_AT }, (_, place) =>
    Array.from({ length: 24 }, (_, code) => character(place, code)),
  )
  return (position) => {
    let text = ''
    for (let place = 0; place < CENTRES_AT; place++) text += characters[place][position[place]]
    return text
  }
}

const backLayers = new Map<Stage, Layer[]>()

/** @returns the fewest turns from the start to the goal of the stage, or undefined when there are more than `turnsMax` */
export function fewestTurns(start: CubePosition, stage: Stage, turnsMax: number): number | undefined {
  const sight = sightOf(stage)
  const back = backLayers.get(stage) ?? layersFrom(solvedCube(), sight, BACK_TURNS)
  backLayers.set(stage, back)
  const known = new Set<string>()
  let front: Layer = new Map([[sight(start), start]])
  for (let nTurns = 0; ; nTurns++) {
    // The first meeting is with the last layer, but for starts nearer than that, which meet another one at once.
    const met = back.findIndex((layer) => [...front.keys()].some((key) => layer.has(key)))
    if (met >= 0) return nTurns + met <= turnsMax ? nTurns + met : undefined
    if (nTurns + BACK_TURNS >= turnsMax) return undefined
    front = nextLayer(front, known, sight)
  }
}

function layersFrom(position: CubePosition, sight: (position: CubePosition) => string, nTurns: number): Layer[] {
  const layers: Layer[] = [new Map([[sight(position), position]])]
  const known = new Set<string>()
  while (layers.length <= nTurns) layers.push(nextLayer(layers[layers.length - 1], known, sight))
  return layers
}

function nextLayer(layer: Layer, known: Set<string>, sight: (position: CubePosition) => string): Layer {
  for (const key of layer.keys()) known.add(key)
  const next: Layer = new Map()
  for (const position of layer.values()) {
    for (const turn of FACE_TURNS) {
      applyTurn(position, turn)
      const key = sight(position)
      if (!known.has(key) && !next.has(key)) next.set(key, copyCube(position))
      applyTurn(position, inverseTurn(turn))
    }
  }
  return next
}
