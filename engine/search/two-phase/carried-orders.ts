/**
 * What phase 2 needs to know, carried along the word of phase 1. It is worked out only where phase 1 ends, and from one
 * such word to the next only from the first turn that differs.
 */

import type { CubePosition } from '../../cube/cube-position.ts'
import { N_FACE_TURNS } from './coordinate.ts'
import { CORNER_ORDER } from './corner-order.ts'
import { BASE_LAYER, MIDDLE_LAYER, placingOfLayer, TOP_LAYER } from './edge-layers.ts'
import type { Phase2Tables } from './phase-2-distances.ts'

const TOP = placingOfLayer(TOP_LAYER)
const MIDDLE = placingOfLayer(MIDDLE_LAYER)
const BASE = placingOfLayer(BASE_LAYER)

/** Orders along one word; the word is written by the search, which says with `cut` how far it stays the same. */
export class CarriedOrders {
  private readonly tables: Phase2Tables
  private readonly word: Uint8Array
  private readonly corners: Uint16Array
  private readonly tops: Uint16Array
  private readonly middles: Uint16Array
  private readonly bases: Uint16Array
  /** So many turns are worked out for corners and middle edges. */
  private nInner = 0
  /** So many turns are worked out for top and base edges: asked for less often, because corners rule out most words. */
  private nOuter = 0

  constructor(tables: Phase2Tables, word: Uint8Array) {
    this.tables = tables
    this.word = word
    const nDepths = word.length + 1
    this.corners = new Uint16Array(nDepths)
    this.tops = new Uint16Array(nDepths)
    this.middles = new Uint16Array(nDepths)
    this.bases = new Uint16Array(nDepths)
  }

  /** Begins anew: the word is empty and the position is this one. */
  start(position: CubePosition): void {
    this.corners[0] = CORNER_ORDER.rankOf(position)
    this.tops[0] = TOP.rankOf(position)
    this.middles[0] = MIDDLE.rankOf(position)
    this.bases[0] = BASE.rankOf(position)
    this.cut(0)
  }

  /** The turns of the word from this one on have changed. */
  cut(depth: number): void {
    if (this.nInner > depth) this.nInner = depth
    if (this.nOuter > depth) this.nOuter = depth
  }

  /** @returns the corner order after the first `nTurns` turns of the word */
  cornerOrder(nTurns: number): number {
    this.carryInner(nTurns)
    return this.corners[nTurns]
  }

  /** @returns the slice order after them; they lead into the subgroup */
  sliceOrder(nTurns: number): number {
    this.carryInner(nTurns)
    return this.tables.innerOrders[this.middles[nTurns]]
  }

  /** @returns the outer order after them; they lead into the subgroup */
  outerOrder(nTurns: number): number {
    const { placingTurns, innerOrders, outerPlacings } = this.tables
    for (; this.nOuter < nTurns; this.nOuter++) {
      const turn = this.word[this.nOuter]
      this.tops[this.nOuter + 1] = placingTurns[this.tops[this.nOuter] * N_FACE_TURNS + turn]
      this.bases[this.nOuter + 1] = placingTurns[this.bases[this.nOuter] * N_FACE_TURNS + turn]
    }
    return outerPlacings[this.tops[nTurns]] + innerOrders[this.bases[nTurns]]
  }

  private carryInner(nTurns: number): void {
    const { cornerOrderTurns, placingTurns } = this.tables
    for (; this.nInner < nTurns; this.nInner++) {
      const turn = this.word[this.nInner]
      this.corners[this.nInner + 1] = cornerOrderTurns[this.corners[this.nInner] * N_FACE_TURNS + turn]
      this.middles[this.nInner + 1] = placingTurns[this.middles[this.nInner] * N_FACE_TURNS + turn]
    }
  }
}
