/** A browser's history in the hands of the test. As in a browser it goes back and forward a moment after it is told to. */

import type { placeHistory } from '../../../../web/desk/place/place-history.ts'

type BrowserHistory = Parameters<typeof placeHistory>[0]

/**
 * @param kept entries that are there already, as after a reload, and which of them is on
 * @param isSlow where it goes, it comes to when the test says `arrive`, by its own keys too
 */
export function aBrowser(
  kept: { readonly states: readonly unknown[]; readonly at: number } = { states: [null], at: 0 },
  isSlow = false,
) {
  let states = [...kept.states]
  let at = kept.at
  let onTheWay: readonly number[] = []
  const listeners: ((event: { readonly state: unknown }) => void)[] = []

  function go(by: number): void {
    onTheWay = [...onTheWay, by]
    if (!isSlow) queueMicrotask(arrive)
  }

  /** @returns whether it was on its way */
  function arrive(): boolean {
    const [by, ...others] = onTheWay
    if (by === undefined) return false
    onTheWay = others
    step(by)
    return true
  }

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
      go: (by = 0) => go(by),
    },
    addEventListener: (_name, listener) => void listeners.push(listener),
  }
  return {
    window,
    /** The browser's own keys. */
    back: () => (isSlow ? go(-1) : step(-1)),
    forward: () => (isSlow ? go(1) : step(1)),
    arrive,
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
