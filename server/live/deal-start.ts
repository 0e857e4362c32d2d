/** Deals the start of a round. A rare par takes many draws: between them the event loop looks after everybody else. */

import { setImmediate as nextTurn } from 'node:timers/promises'
import type { RandomSource } from '../../engine/chance/random-source.ts'
import {
  drawRoundStart,
  START_DRAWS_MAX,
  someStartIsLeft,
  type WantedStart,
} from '../../engine/contest/draw-round-start.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { assert } from '../../engine/result.ts'
import { openParTables, type ParTables } from '../../engine/search/par/open-par-tables.ts'

/** Some ten milliseconds at 150,000 starts a second. */
const DRAWS_AT_A_TIME = 1_500

/** @returns a start as wanted, with the same chance for each; null when the settings leave none */
export async function dealStart(wanted: WantedStart, random: RandomSource): Promise<CubePosition | null> {
  const pars = await shippedPars()
  if (!someStartIsLeft(wanted, pars)) return null
  for (let nDraws = 0; nDraws < START_DRAWS_MAX; nDraws += DRAWS_AT_A_TIME) {
    const start = drawRoundStart(wanted, random, pars, DRAWS_AT_A_TIME)
    if (start !== null) return start
    await nextTurn()
  }
  throw new Error('The random source never gives a start that is wanted')
}

/** Do these settings leave a start to deal? Asked when they are set, long before the round. */
export async function leavesAStart(wanted: WantedStart): Promise<boolean> {
  return someStartIsLeft(wanted, await shippedPars())
}

async function shippedPars(): Promise<ParTables> {
  const pars = await openParTables()
  assert(pars.ok, 'the shipped pars can be read')
  return pars.value
}
