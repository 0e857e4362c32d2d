/**
 * Starts as the round would deal them, drawn in this browser and kept by nobody. A rare par takes many draws, so they are
 * made a few at a time, and the page stays awake.
 */

import { useEffect, useState } from 'react'
import { chachaSource } from '../../../engine/chance/chacha-source.ts'
import {
  drawRoundStart,
  START_DRAWS_MAX,
  someStartIsLeft,
  type WantedStart,
} from '../../../engine/contest/draw-round-start.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import type { ParTables } from '../../../engine/search/par/open-par-tables.ts'

/** A start and its par; null for several stages in one go, where only a search knows it. */
export type SampleStart = { readonly start: CubePosition; readonly par: number | null }

export type SampleStarts =
  /** Those drawn before stay to be seen until there are new ones. */
  | { readonly state: 'drawing' | 'drawn'; readonly starts: readonly SampleStart[] }
  /** Stage, cases and pars leave none. */
  | { readonly state: 'none' }

const N_SAMPLES = 3
/** Some ten milliseconds on a slow Chromebook. */
const DRAWS_AT_A_TIME = 500

export function useSampleStarts(wanted: WantedStart, tables: ParTables | null, seed: Uint8Array): SampleStarts {
  const { from, to, cases, parFrom, parTo } = wanted
  const [samples, setSamples] = useState<SampleStarts>({ state: 'drawing', starts: [] })
  useEffect(() => {
    if (tables === null) return
    const asked = { from, to, cases, parFrom, parTo }
    if (!someStartIsLeft(asked, tables)) return setSamples({ state: 'none' })
    const random = chachaSource(seed)
    const starts: SampleStart[] = []
    let timer: ReturnType<typeof setTimeout> | undefined
    let nDraws = 0
    const draw = () => {
      const start = drawRoundStart(asked, random, tables, DRAWS_AT_A_TIME)
      nDraws += DRAWS_AT_A_TIME
      if (start !== null) starts.push({ start, par: from === to ? tables.parOf(start, from) : null })
      if (starts.length === N_SAMPLES || nDraws > START_DRAWS_MAX) setSamples({ state: 'drawn', starts })
      else if (start !== null && nDraws <= N_SAMPLES * DRAWS_AT_A_TIME) draw()
      else timer = setTimeout(draw)
    }
    setSamples((last) => ({ state: 'drawing', starts: last.state === 'none' ? [] : last.starts }))
    draw()
    return () => clearTimeout(timer)
  }, [from, to, cases, parFrom, parTo, tables, seed])
  return samples
}
