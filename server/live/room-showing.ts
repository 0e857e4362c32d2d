/** What a teacher shows to the class. Not on record: after a restart the desk that showed it says it again. */

import { goesOnWith } from '../../engine/wire/goes-on-with.ts'
import type { Showing, ShowingAt, Shown } from '../../engine/wire/shown.ts'

export class RoomShowing {
  #showing: Showing | null = null
  #version = 0

  get now(): Showing | null {
    return this.#showing
  }

  /** Showings so far, and their ends, since the server was started. */
  get count(): number {
    return this.#version
  }

  show(shown: Shown | null, at: ShowingAt): void {
    const isAnother = shown === null || this.#showing === null || !goesOnWith(this.#showing.shown, shown)
    if (isAnother) this.#version++
    this.#showing = shown === null ? null : { version: this.#version, shown, at: within(shown, at) }
  }

  /** @returns whether anything is shown that can have gone further */
  goTo(at: ShowingAt): boolean {
    if (this.#showing === null) return false
    this.#showing = { ...this.#showing, at: within(this.#showing.shown, at) }
    return true
  }
}

/** Never behind the last turn, nor at a way that is not there. */
function within(shown: Shown, { at, chosen, pointer }: ShowingAt): ShowingAt {
  if (shown.kind === 'cube') return { at: Math.min(at, shown.turns.length), chosen: 0, pointer }
  const way = Math.min(chosen, shown.ways.length - 1)
  return { at: Math.min(at, shown.ways[way].turns.length), chosen: way, pointer }
}
