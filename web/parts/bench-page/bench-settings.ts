/** How a child likes the bench. Kept in this browser only; a browser that keeps nothing forgets it with the page. */

import { useState } from 'react'
import { MARK_STYLES, type MarkStyle } from '../../cube/sticker-colours.ts'

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
  const [settings, setSettings] = useState(() => readBenchSettings(readKept()))
  const change = (some: Partial<BenchSettings>) => {
    const next = { ...settings, ...some }
    setSettings(next)
    keep(JSON.stringify(next))
  }
  return [settings, change]
}

/** Reads what was kept, perhaps by an older version: each setting that makes no sense falls back to its default. */
export function readBenchSettings(kept: string | null): BenchSettings {
  const read = parseRecord(kept)
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

function parseRecord(kept: string | null): Readonly<Record<string, unknown>> {
  try {
    const read: unknown = JSON.parse(kept ?? '{}')
    return typeof read === 'object' && read !== null ? (read as Record<string, unknown>) : {}
  } catch {
    return {}
  }
}

function readKept(): string | null {
  try {
    return window.localStorage.getItem(KEPT_AS)
  } catch {
    // Private windows may refuse storage.
    return null
  }
}

function keep(text: string): void {
  try {
    window.localStorage.setItem(KEPT_AS, text)
  } catch {
    // The choice then lasts as long as the page.
  }
}
