/**
 * Ties the desk's place to the browser's history: each page that is entered is an entry, so that Back goes one page back
 * and Forward forward again, and a reload stays where it was. Everything stands in the state of the entry: the address
 * stays as it is, and no key or session is ever in it.
 *
 * A page with unsaved work holds the desk: whoever would leave, by Back or by a button, is asked first. A browser cannot
 * be told to stay, so the desk goes back to the entry that it was on, asks there, and then goes on where it was going.
 */

import { z } from 'zod'
import { type DeskPlace, deskPlaceSchema, ROOMS } from './desk-place.ts'

/** What of `window` is used. */
type BrowserHistory = {
  readonly history: Pick<History, 'state' | 'pushState' | 'replaceState' | 'go'>
  addEventListener(name: 'popstate', listener: (event: { readonly state: unknown }) => void): void
}

/** One entry of the history, as it is kept in its state. */
export type DeskEntry = {
  readonly place: DeskPlace
  /** Counts the entries of the desk, from 0. */
  readonly number: number
  /** Kinds of the pages below, the nearest last; only so many. */
  readonly below: readonly DeskPlace['kind'][]
}

/** Asks whether to leave. @param goOn leaves */
type AskToLeave = (goOn: () => void) => void

type PlaceHistory = {
  /** The same object as long as nothing changes. */
  entry(): DeskEntry
  subscribe(listener: () => void): () => void
  /** Enters a page. */
  goTo(place: DeskPlace, wish?: LeaveWish): void
  /** Puts another place into this entry: the same page, otherwise. */
  put(place: DeskPlace): void
  /** Goes back to the nearest page of this kind; where there is none below, this entry becomes it. */
  leaveTo(place: DeskPlace, wish?: LeaveWish): void
  /**
   * Leaves a page whose work has just been kept, unless it was left while that was on its way.
   *
   * @param page its place, as `entry` gave it: the same object @param kept what it becomes @param place where its own Back leads
   */
  leaveKept(page: DeskPlace, kept: DeskPlace, place: DeskPlace): void
  /** From now on whoever would leave is asked. @returns lets go again */
  hold(ask: AskToLeave): () => void
}

/** `asks`: whether a page that holds the desk is asked; it is, unless its work is kept. */
type LeaveWish = { readonly asks: boolean }

/** Browsers keep fifty entries of a tab; no way back is longer than what they surely have. */
const BELOW_MAX = 20
/** So long after it was told to go back, a browser that has not moved has nowhere to go. */
const GONE_MS_MAX = 1_000

const entrySchema = z.object({
  place: deskPlaceSchema,
  number: z.number().int().min(0),
  below: z.array(z.enum(deskPlaceSchema.options.map((each) => each.shape.kind.value))).max(BELOW_MAX),
})
const stateSchema = z.object({ desk: entrySchema })

/** @param browser whose history is the desk's; its entry that is on is read, or becomes the first page */
export function placeHistory(browser: BrowserHistory): PlaceHistory {
  const listeners = new Set<() => void>()
  const found = readState(browser.history.state)
  let entry: DeskEntry = found ?? { place: ROOMS, number: 0, below: [] }
  let ask: AskToLeave | null = null
  /** Why the browser is going somewhere: the desk told it to, or it comes back from where it should not go. */
  let going: 'leaves' | 'returns' | null = null
  let tooLate: ReturnType<typeof setTimeout> | undefined
  /** What the desk is to do when the browser has come to where it is going: before, it would be done to another entry. */
  let later: (() => void)[] = []
  if (found === null) write('replaceState', entry)

  function write(how: 'pushState' | 'replaceState', next: DeskEntry): void {
    browser.history[how]({ desk: next }, '')
  }

  function become(next: DeskEntry): void {
    entry = next
    for (const listener of listeners) listener()
  }

  function put(place: DeskPlace): void {
    const next = { ...entry, place }
    write('replaceState', next)
    become(next)
  }

  /** @param orElse when the browser has nowhere to go */
  function travel(why: 'leaves' | 'returns', by: number, orElse = () => {}): void {
    going = why
    browser.history.go(by)
    const lookAfter = () => {
      const on = readState(browser.history.state)
      // It is on its way back from another entry, and surely comes.
      if (on !== null && on.number !== entry.number) {
        tooLate = setTimeout(lookAfter, GONE_MS_MAX)
        return
      }
      going = null
      orElse()
      doLater()
    }
    clearTimeout(tooLate)
    tooLate = setTimeout(lookAfter, GONE_MS_MAX)
  }

  function whenThere(act: () => void): void {
    if (going === null) act()
    else later.push(act)
  }

  function doLater(): void {
    const acts = later
    later = []
    for (const act of acts) whenThere(act)
  }

  /** @param act leaves this page */
  function unlessHeld({ asks }: LeaveWish, act: () => void): void {
    if (ask !== null && asks) ask(() => whenThere(act))
    else whenThere(act)
  }

  browser.addEventListener('popstate', ({ state }) => {
    const why = going
    going = null
    clearTimeout(tooLate)
    arrive(readState(state), why)
    doLater()
  })

  function arrive(next: DeskEntry | null, why: typeof going): void {
    if (next === null) {
      // An address typed by hand: an entry that is nobody's yet. The desk stays where it is.
      const own = { place: entry.place, number: entry.number + 1, below: withBelow(entry) }
      write('replaceState', own)
      become(own)
      return
    }
    const by = next.number - entry.number
    if (why === 'returns' && by === 0) return
    if (why === 'leaves' || ask === null || by === 0) {
      become(next)
      return
    }
    travel('returns', -by)
    if (why !== 'returns') ask(() => whenThere(() => travel('leaves', by)))
  }

  function leaveTo(place: DeskPlace, wish: LeaveWish = { asks: true }): void {
    unlessHeld(wish, () => {
      // There already: pressed twice, it would leave another page.
      if (entry.place.kind === place.kind) return
      const at = entry.below.lastIndexOf(place.kind)
      if (at === -1) put(place)
      else travel('leaves', at - entry.below.length, () => put(place))
    })
  }

  return {
    entry: () => entry,

    subscribe(listener) {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },

    goTo(place, wish = { asks: true }) {
      unlessHeld(wish, () => {
        const next = { place, number: entry.number + 1, below: withBelow(entry) }
        write('pushState', next)
        become(next)
      })
    },

    put: (place) => whenThere(() => put(place)),

    leaveTo,

    leaveKept: (page, kept, place) =>
      whenThere(() => {
        if (entry.place !== page) return
        put(kept)
        leaveTo(place, { asks: false })
      }),

    hold(asking) {
      ask = asking
      return () => {
        if (ask === asking) ask = null
      }
    },
  }
}

function withBelow({ below, place }: DeskEntry): DeskEntry['below'] {
  return [...below, place.kind].slice(-BELOW_MAX)
}

function readState(state: unknown): DeskEntry | null {
  const read = stateSchema.safeParse(state)
  return read.success ? read.data.desk : null
}
