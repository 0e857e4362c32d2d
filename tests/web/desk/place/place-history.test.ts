/** The desk's place in the browser's history. Rules DE: tests/RULES.md. */

import fc from 'fast-check'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import type { RoomId } from '../../../../engine/contest/ids.ts'
import { type DeskPlace, ROOMS } from '../../../../web/desk/place/desk-place.ts'
import { placeHistory } from '../../../../web/desk/place/place-history.ts'
import { SEED } from '../../../engine/cube/arbitraries.ts'
import { aBrowser, settled } from './a-browser.ts'

const PLANS = { kind: 'plans' } as const satisfies DeskPlace
const CLASSES = { kind: 'classes' } as const satisfies DeskPlace
const NEW_CLASS = { kind: 'class', classId: null } as const satisfies DeskPlace
const ROOM = { kind: 'room', roomId: 'room-1' as RoomId } as const satisfies DeskPlace
const REVIEW = { kind: 'review', roomId: 'room-1' as RoomId } as const satisfies DeskPlace
const A_PLAN: DeskPlace = {
  kind: 'plan',
  planId: null,
  plan: { title: 'Crosses', parts: [] },
  isReadyMade: false,
  draft: null,
}

beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }))
afterEach(() => void vi.useRealTimers())

function aDesk(browser = aBrowser()) {
  const places = placeHistory(browser.window)
  return { browser, places, kind: () => places.entry().place.kind }
}

describe('back and forward', () => {
  test('[DE13] it begins at the first page; Back goes one page back and Forward on again', () => {
    const { browser, places, kind } = aDesk()
    expect(kind()).toBe('rooms')
    places.goTo(ROOM)
    places.goTo(REVIEW)
    browser.back()
    expect(places.entry().place).toEqual(ROOM)
    browser.back()
    expect(kind()).toBe('rooms')
    browser.forward()
    browser.forward()
    expect(places.entry().place).toEqual(REVIEW)
  })

  test('[DE13] a page loaded anew is where it was, and its way back with it', async () => {
    const { browser, places } = aDesk()
    places.goTo(PLANS)
    places.goTo(A_PLAN)
    const anew = aDesk(aBrowser(browser.entries()))
    expect(anew.places.entry().place).toEqual(A_PLAN)
    anew.places.leaveTo(PLANS)
    await settled()
    expect([anew.kind(), anew.browser.entries().at]).toEqual(['plans', 1])
  })

  test('[DE13] a page’s own Back goes to the nearest page of that kind and leaves Forward as it is', async () => {
    const { browser, places, kind } = aDesk()
    for (const place of [PLANS, A_PLAN, ROOM, REVIEW]) places.goTo(place)
    places.leaveTo(ROOM)
    await settled()
    expect(kind()).toBe('room')
    places.leaveTo(ROOMS)
    // Pressed twice, it goes there once.
    places.leaveTo(ROOMS)
    await settled()
    expect([kind(), browser.entries().at, browser.entries().states.length]).toEqual(['rooms', 0, 5])
  })

  test('[DE13] where there is no such page below, the entry becomes it', () => {
    const { browser, places, kind } = aDesk()
    places.goTo(ROOM)
    places.leaveTo(CLASSES)
    expect([kind(), browser.entries().at]).toEqual(['classes', 1])
  })

  test('[DE13] a browser that does not go back does not hold the page up', async () => {
    const { browser, places } = aDesk()
    places.goTo(ROOM)
    const { states, at } = browser.entries()
    // A tab that has lost what was before: the way back is known, and leads nowhere.
    const lost = aDesk(aBrowser({ states: states.slice(at), at: 0 }))
    lost.places.leaveTo(ROOMS)
    await settled()
    expect(lost.kind()).toBe('room')
    vi.runAllTimers()
    expect(lost.kind()).toBe('rooms')
  })

  test('[DE13] an address typed by hand leaves the desk where it is', () => {
    const { browser, places, kind } = aDesk()
    places.goTo(ROOM)
    browser.typeHash()
    expect(kind()).toBe('room')
    browser.back()
    browser.back()
    expect(kind()).toBe('rooms')
  })

  test('[DE13] whatever is pressed, the desk is where its entry says, and Back leads through all pages to the first', () => {
    const step = fc.constantFrom<DeskPlace | 'back' | 'forward'>(PLANS, CLASSES, ROOM, REVIEW, 'back', 'forward')
    fc.assert(
      fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
        const { browser, places } = aDesk()
        const model = { pages: [ROOMS] as DeskPlace[], at: 0 }
        for (const each of steps) {
          if (each === 'back') {
            browser.back()
            model.at = Math.max(0, model.at - 1)
          } else if (each === 'forward') {
            browser.forward()
            model.at = Math.min(model.pages.length - 1, model.at + 1)
          } else {
            places.goTo(each)
            model.pages = [...model.pages.slice(0, model.at + 1), each]
            model.at++
          }
          expect(places.entry().place).toEqual(model.pages[model.at])
        }
        for (; model.at > 0; model.at--) browser.back()
        expect(places.entry()).toEqual({ place: ROOMS, number: 0, below: [] })
      }),
      { seed: SEED },
    )
  })
})

describe('while the browser is on its way', () => {
  test('[DE19] what is pressed meanwhile is done when it has come there', () => {
    const browser = aBrowser(undefined, true)
    const { places, kind } = aDesk(browser)
    for (const place of [ROOM, REVIEW]) places.goTo(place)
    places.leaveTo(ROOM)
    // The room is closed at that moment.
    places.leaveTo(ROOMS)
    while (browser.arrive());
    expect([kind(), browser.entries().at]).toEqual(['rooms', 0])
  })

  test('[DE19] whatever is pressed, and however long the browser takes, the desk is at last where its entry says', () => {
    const act = fc.constantFrom('back', 'forward', 'arrive', 'wait', 'room', 'class', 'kept', 'leave', 'change', 'goOn')
    fc.assert(
      fc.property(fc.array(act, { maxLength: 40 }), (acts) => {
        const browser = aBrowser(undefined, true)
        const { places, kind } = aDesk(browser)
        let goOn = () => {}
        const asks = (leaves: () => void) => {
          goOn = leaves
        }
        let letGo: (() => void) | null = null
        // As a page does: a class that is open has unsaved work here.
        places.subscribe(() => {
          letGo?.()
          letGo = kind() === 'class' ? places.hold(asks) : null
        })
        const press = {
          back: browser.back,
          forward: browser.forward,
          arrive: browser.arrive,
          wait: () => vi.advanceTimersByTime(1_100),
          room: () => places.goTo(ROOM),
          class: () => places.goTo(NEW_CLASS),
          kept: () => places.leaveKept(places.entry().place, { kind: 'class', classId: 'abc' }, CLASSES),
          leave: () => places.leaveTo(ROOMS),
          change: () => kind() === 'room' && places.put(ROOM),
          goOn: () => goOn(),
        }
        for (const each of acts) press[each]()
        for (let round = 0; round < 3; round++) {
          while (browser.arrive());
          vi.advanceTimersByTime(1_100)
        }
        const { states, at } = browser.entries()
        expect(states[at]).toEqual({ desk: places.entry() })
        expect(states.map((state) => (state as { desk: { number: number } }).desk.number)).toEqual([...states.keys()])
      }),
      { seed: SEED, numRuns: 2_000 },
    )
  })
})

describe('unsaved work', () => {
  function aHeldDesk() {
    const desk = aDesk()
    for (const place of [CLASSES, NEW_CLASS]) desk.places.goTo(place)
    const asked: (() => void)[] = []
    const letGo = desk.places.hold((goOn) => void asked.push(goOn))
    return { ...desk, asked, letGo }
  }

  test('[DE14] Back is asked about: staying leaves page and history as they are, going on goes back', async () => {
    const { browser, kind, asked } = aHeldDesk()
    browser.back()
    await settled()
    expect([kind(), browser.entries().at, asked.length]).toEqual(['class', 2, 1])
    // Once more, for the first question was answered with staying.
    browser.back()
    await settled()
    expect([kind(), browser.entries().at, asked.length]).toEqual(['class', 2, 2])
    asked[1]?.()
    await settled()
    expect([kind(), browser.entries().at]).toEqual(['classes', 1])
  })

  test('[DE14] Forward is asked about, too', async () => {
    const { browser, places, kind, asked, letGo } = aHeldDesk()
    letGo()
    places.goTo(ROOM)
    browser.back()
    places.hold((goOn) => void asked.push(goOn))
    browser.forward()
    await settled()
    expect([kind(), asked.length]).toEqual(['class', 1])
    asked[0]?.()
    await settled()
    expect(kind()).toBe('room')
  })

  test('[DE14] so are the page’s own Back and the other pages of the desk', async () => {
    const { places, kind, asked } = aHeldDesk()
    places.leaveTo(CLASSES)
    places.goTo(PLANS)
    await settled()
    expect([kind(), asked.length]).toEqual(['class', 2])
    asked[1]?.()
    expect(kind()).toBe('plans')
  })

  test('[DE14] what is kept is not asked about, nor what is let go', async () => {
    const { browser, places, kind, asked, letGo } = aHeldDesk()
    places.leaveTo(CLASSES, { asks: false })
    await settled()
    expect([kind(), asked.length]).toEqual(['classes', 0])
    letGo()
    browser.forward()
    browser.back()
    expect([kind(), asked.length]).toEqual(['classes', 0])
  })
})

describe('work that is kept', () => {
  const KEPT = { kind: 'class', classId: 'abc' } as const satisfies DeskPlace

  test('[DE14] its page is left, and Forward finds it as it was kept', async () => {
    const { browser, places, kind } = aDesk()
    for (const place of [CLASSES, NEW_CLASS]) places.goTo(place)
    places.leaveKept(places.entry().place, KEPT, CLASSES)
    await settled()
    expect(kind()).toBe('classes')
    browser.forward()
    expect(places.entry().place).toEqual(KEPT)
  })

  test.each<[string, (desk: ReturnType<typeof aDesk>) => void]>([
    ['the first page', ({ browser }) => [1, 2].forEach(browser.back)],
    ['the page before it', ({ browser }) => browser.back()],
    ['a room', ({ places }) => places.goTo(ROOM)],
    [
      'another class, at the same place of the history',
      ({ browser, places }) => {
        browser.back()
        places.goTo({ kind: 'class', classId: 'other' })
      },
    ],
  ])('[DE14] whoever has gone to %s before the answer came stays there', async (_where, goOn) => {
    const desk = aDesk()
    for (const place of [CLASSES, NEW_CLASS]) desk.places.goTo(place)
    const { place } = desk.places.entry()
    goOn(desk)
    const before = structuredClone(desk.browser.entries())
    desk.places.leaveKept(place, KEPT, CLASSES)
    await settled()
    expect(desk.browser.entries()).toEqual(before)
  })
})

describe('what stands in the history', () => {
  test.each<[string, unknown]>([
    ['nothing', null],
    ['a text', 'rooms'],
    ['another screen’s', { key: 7 }],
    ['a page that there is not', { desk: { place: { kind: 'attic' }, number: 1, below: ['rooms'] } }],
    ['a plan that is none', { desk: { place: { ...A_PLAN, plan: { title: 7 } }, number: 1, below: ['rooms'] } }],
    ['a negative entry', { desk: { place: ROOM, number: -1, below: [] } }],
  ])('[DE15] %s leads to the first page', (_what, state) => {
    const { browser, kind } = aDesk(aBrowser({ states: [state], at: 0 }))
    expect(kind()).toBe('rooms')
    expect(browser.entries().states).toEqual([{ desk: { place: ROOMS, number: 0, below: [] } }])
  })

  test('[DE15] it is the page, its number and the pages below: no names of a class, and never longer than a tab’s history', () => {
    const { browser, places } = aDesk()
    for (let n = 0; n < 60; n++) places.goTo(NEW_CLASS)
    const { desk } = browser.entries().states.at(-1) as { desk: { below: string[] } }
    expect(desk).toEqual({ place: NEW_CLASS, number: 60, below: expect.any(Array) })
    expect(desk.below.length).toBeLessThanOrEqual(20)
  })

  test('[DE15] what changes in a page changes its entry', () => {
    const { browser, places } = aDesk()
    let nTold = 0
    const stop = places.subscribe(() => void nTold++)
    places.goTo(NEW_CLASS)
    places.put({ kind: 'class', classId: 'abc' })
    stop()
    places.goTo(PLANS)
    browser.back()
    expect([places.entry().place, nTold]).toEqual([{ kind: 'class', classId: 'abc' }, 2])
  })
})
