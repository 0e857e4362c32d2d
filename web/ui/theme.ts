/**
 * Paper or slate. Follows the system until somebody chooses; a choice is remembered in this browser.
 * A projector and a child's phone each keep their own.
 */

import { useSyncExternalStore } from 'react'

export const THEMES = ['paper', 'slate'] as const
export type Theme = (typeof THEMES)[number]

const KEPT_AS = 'fairturn.theme'
const listeners = new Set<() => void>()
let theme: Theme = 'paper'

/** Sets the theme before anything is drawn, and follows the system while nothing was chosen. Returns its stop. */
export function startTheme(): () => void {
  const system = window.matchMedia('(prefers-color-scheme: dark)')
  const follow = () => wear(readChosen() ?? (system.matches ? 'slate' : 'paper'))
  follow()
  system.addEventListener('change', follow)
  return () => system.removeEventListener('change', follow)
}

export function useTheme(): readonly [Theme, (chosen: Theme) => void] {
  const worn = useSyncExternalStore(subscribe, () => theme)
  return [worn, choose]
}

function choose(chosen: Theme): void {
  try {
    window.localStorage.setItem(KEPT_AS, chosen)
  } catch {
    // Storage is refused in some private windows: the choice then lasts as long as the page.
  }
  wear(chosen)
}

function readChosen(): Theme | null {
  try {
    const kept = window.localStorage.getItem(KEPT_AS)
    return THEMES.find((name) => name === kept) ?? null
  } catch {
    return null
  }
}

function wear(next: Theme): void {
  theme = next
  document.documentElement.dataset.theme = next
  for (const listener of listeners) listener()
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}
