/**
 * What the bench keeps for itself until the tab is closed, so that loading the page again changes nothing: which cube a child
 * plays with, what was written so far. Never sent. A browser that forbids keeping forgets it with the page.
 */

import { useCallback, useMemo, useState } from 'react'

const PREFIX = 'fairturn.bench.'

/**
 * @param what the kind of thing @param of whose it is: a seat's round, a room
 * @param read makes sense of what was kept, perhaps by an older version; null when nothing was. Has to be the same function each time
 * @returns the value, and what changes and keeps it
 */
export function useKept<T>(what: string, of: string, read: (kept: unknown) => T): readonly [T, (next: T) => void] {
  const name = `${PREFIX}${what}.${of}`
  const [own, setOwn] = useState<{ readonly name: string; readonly value: T } | null>(null)
  const kept = useMemo(() => read(readKept(name)), [name, read])
  const keep = useCallback(
    (value: T) => {
      setOwn({ name, value })
      write(name, value)
    },
    [name],
  )
  return [own?.name === name ? own.value : kept, keep]
}

/** Forgets all of it: the seat is given up, and another child may come to this device. */
export function forgetKept(): void {
  try {
    const names = Array.from({ length: sessionStorage.length }, (_, index) => sessionStorage.key(index))
    for (const name of names) if (name?.startsWith(PREFIX)) sessionStorage.removeItem(name)
  } catch {
    // Nothing could be kept, so nothing has to go.
  }
}

function readKept(name: string): unknown {
  try {
    return JSON.parse(sessionStorage.getItem(name) ?? 'null')
  } catch {
    return null
  }
}

function write(name: string, value: unknown): void {
  try {
    sessionStorage.setItem(name, JSON.stringify(value))
  } catch {
    // Full or forbidden: see above.
  }
}
