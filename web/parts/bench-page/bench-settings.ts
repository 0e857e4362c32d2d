/** How a child likes the bench. */

import { MARK_STYLES, type MarkStyle } from '../../cube/sticker-colours.ts'
import { parseKept, useDeviceSettings } from '../../ui/device-settings.ts'

export type BenchSettings = {
  readonly marks: MarkStyle
  readonly showClock: boolean
  readonly shortcuts: boolean
  readonly cubeInWords: boolean
}

export const DEFAULT_BENCH_SETTINGS: BenchSettings = {
  marks: 'plain',
  showClock: true,
  shortcuts: true,
  cubeInWords: false,
}

const KEPT_AS = 'fairturn.bench'

export function useBenchSettings(): readonly [BenchSettings, (change: Partial<BenchSettings>) => void] {
  return useDeviceSettings(KEPT_AS, readBenchSettings)
}

/** Reads what was kept, perhaps by an older version: each setting that makes no sense falls back to its default. */
export function readBenchSettings(kept: string | null): BenchSettings {
  const read = parseKept(kept)
  const flag = (name: 'showClock' | 'shortcuts' | 'cubeInWords') => {
    const value = read[name]
    return typeof value === 'boolean' ? value : DEFAULT_BENCH_SETTINGS[name]
  }
  return {
    marks: MARK_STYLES.find((style) => style === read.marks) ?? DEFAULT_BENCH_SETTINGS.marks,
    showClock: flag('showClock'),
    shortcuts: flag('shortcuts'),
    cubeInWords: flag('cubeInWords'),
  }
}
