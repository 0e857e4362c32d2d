/** A browser's history in the hands of the test. As in a browser it goes back and forward a moment after it is told to. */

import type { placeHistory } from '../../../../web/desk/place/place-history.ts'

type BrowserHistory = Parameters<typeof placeHistory>[0]

/** @param kept entries that are there already, as after a reload, and which of them is on */
export function aBrowser(
  kept: { readonly states: readonly unknown[]; readonly at: number } = { states: [null], at: 0 },
) {
  let states = [...kept.states]
  let at = kept.at
  const listeners: ((event: { readonly state: unknown }) => void)[] = []

  function step(by: number): void {
    if (by === 0 || states[at + by] === undefined) return
    at += by
    for (const listener of listeners) listener({ state: states[at] })
  }

  const window: BrowserHistory = {
    history: {
      get state() {
        return states[at]
      },
      pushState(state) {
        // As a browser copies it.
        states = [...states.slice(0, at + 1), structuredClone(state)]
        at++
      },
      replaceState(state) {
        states[at] = structuredClone(state)
      },
      go: (by = 0) => queueMicrotask(() => step(by)),
    },
    addEventListener: (_name, listener) => void listeners.push(listener),
  }
  return {
    window,
    /** The browser's own keys. */
    back: () => step(-1),
    forward: () => step(1),
    /** An address typed by hand, which differs only behind the `#`. */
    typeHash() {
      states = [...states.slice(0, at + 1), null]
      step(1)
    },
    entries: () => ({ states, at }),
  }
}

/** Until the history has gone where it was told to go. */
export async function settled(): Promise<void> {
  for (let turn = 0; turn < 5; turn++) await Promise.resolve()
}
