/** Listens for the keys of the bench: anywhere on the page, but never while somebody types, and only when they are on. */

import { useEffect, useRef, useState } from 'react'
import { readShortcut, type Shortcut } from './read-shortcut.ts'

export type ShortcutActs = {
  readonly onShortcut: (shortcut: Exclude<Shortcut, { kind: 'half-next' } | { kind: 'drop' }>) => void
  /** Escape, when no half turn waits for its letter. */
  readonly onDrop: () => void
}

/** @returns whether the next letter makes a half turn */
export function useShortcuts(on: boolean, acts: ShortcutActs): boolean {
  const [halfNext, setHalfNext] = useState(false)
  const latest = useRef({ acts, halfNext })
  latest.current = { acts, halfNext }

  useEffect(() => {
    if (!on) {
      setHalfNext(false)
      return
    }
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.defaultPrevented || isTyping(event.target) || document.querySelector('dialog[open]') !== null) return
      const now = latest.current
      const shortcut = readShortcut(event, now.halfNext)
      if (shortcut === null || (shortcut.kind === 'look' && hasOwnArrows(event.target))) return
      if (shortcut.kind === 'drop') {
        if (!now.halfNext) now.acts.onDrop()
        setHalfNext(false)
        return
      }
      // Backspace must not leave the page, arrows must not scroll it.
      event.preventDefault()
      if (shortcut.kind === 'half-next') {
        setHalfNext(true)
        return
      }
      if (shortcut.kind !== 'look') setHalfNext(false)
      now.acts.onShortcut(shortcut)
    }
    window.addEventListener('keydown', onKeyDown)
    return () => window.removeEventListener('keydown', onKeyDown)
  }, [on])

  return halfNext
}

/** The arrows scroll a long ribbon while it has the focus. */
function hasOwnArrows(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('[data-own-arrows]') !== null
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('input, textarea, select, [contenteditable]') !== null
}
