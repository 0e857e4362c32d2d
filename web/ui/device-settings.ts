/**
 * How somebody likes a screen, kept in this browser only and never sent. A browser that keeps nothing (private windows may
 * refuse) forgets it with the page.
 */

import { useState } from 'react'

/**
 * @param keptAs the name under which the browser keeps them
 * @param read makes settings of what was kept, with `parseKept`; null when nothing was
 * @returns the settings, and what changes and keeps them
 */
export function useDeviceSettings<T extends object>(
  keptAs: string,
  read: (kept: string | null) => T,
): readonly [T, (change: Partial<T>) => void] {
  const [settings, setSettings] = useState(() => read(readKept(keptAs)))
  const change = (some: Partial<T>) => {
    const next = { ...settings, ...some }
    setSettings(next)
    keep(keptAs, next)
  }
  return [settings, change]
}

/** @returns what the text says of each setting; nothing in it is certain, for an older version of the page may have written it */
export function parseKept(kept: string | null): Readonly<Record<string, unknown>> {
  try {
    const read: unknown = JSON.parse(kept ?? '{}')
    return typeof read === 'object' && read !== null ? (read as Record<string, unknown>) : {}
  } catch {
    return {}
  }
}

function readKept(keptAs: string): string | null {
  try {
    return window.localStorage.getItem(keptAs)
  } catch {
    return null
  }
}

function keep(keptAs: string, settings: object): void {
  try {
    window.localStorage.setItem(keptAs, JSON.stringify(settings))
  } catch {
    // They then last as long as the page.
  }
}
