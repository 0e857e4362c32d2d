/** The desk's side of the connection: the list of rooms, the room that is watched, and everything a teacher does there. */

import { create } from 'zustand'
import type { RoomId, RoundId, SeatId } from '../../engine/contest/ids.ts'
import type { Nudge } from '../../engine/contest/nudges.ts'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import type { RoomEntry } from '../../engine/contest/room-entry.ts'
import type { ClassRoster } from '../../engine/contest/rosters/class-roster.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { Answer, Answers, MessageName, Sent } from '../../engine/wire/from-browser.ts'
import { DESK_ENTER_PATH } from '../../engine/wire/places.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { DeskHome, DeskView, ReviewView, Shelf, TryLook } from '../../engine/wire/views.ts'
import { applyDeskTick } from './apply-tick.ts'
import { type DeskShowing, deskShowing } from './desk-showing.ts'
import { keepTrying, pauseAfter } from './keep-trying.ts'
import { type OpenedTakeHome, openTakeHome, type TakeHomeWish } from './open-take-home.ts'
import { followServerClock } from './server-clock.ts'
import { ask, followConnection, socket } from './socket.ts'

export type DeskLive = {
  readonly status: 'connecting' | 'signed-out' | 'ready' | 'away'
  readonly home: DeskHome | null
  /** Lesson plans and rosters. */
  readonly shelf: Shelf
  /** The watched room. */
  readonly view: DeskView | null
  /** The room that was to be watched, when there is no such room on this desk. */
  readonly gone: RoomId | null
  readonly refusal: Refusal | null
  readonly outOfDate: boolean
}

export const useDesk = create<DeskLive>(() => ({
  status: 'connecting',
  home: null,
  shelf: { plans: [], rosters: [] },
  view: null,
  gone: null,
  refusal: null,
  outOfDate: false,
}))

let isBegun = false
let watched: RoomId | null = null
/** Settings that are shown ahead of the server's answer, and how many such wishes are on their way. */
let wished: { readonly settings: RoundSettings; readonly nOnTheirWay: number } | null = null

export function beginDesk(): void {
  if (isBegun) return
  isBegun = true
  followConnection({
    onConnected: () => {
      showing.onConnected()
      enter()
    },
    onLost: () => {
      if (useDesk.getState().status === 'ready') useDesk.setState({ status: 'away' })
    },
    onOutOfDate: () => useDesk.setState({ outOfDate: true }),
  })
  followServerClock()
  socket.on('desk:home', (home) => useDesk.setState({ home }))
  socket.on('desk', (view) => {
    // A view that was sent before the server heard of the last wish would flicker back.
    if (view.room.id === watched) setView(wished === null ? view : { ...view, settings: wished.settings })
  })
  socket.on('shelf', (shelf) => useDesk.setState({ shelf }))
  socket.on('desk:tick', (tick) => {
    const { view } = useDesk.getState()
    if (view === null) return
    const next = applyDeskTick(view, tick)
    if (next !== null) useDesk.setState({ view: next })
    else lookAgain()
  })
  socket.connect()
}

export const deskActs = {
  /** Trades the key of the one-time link for a session, which counts from the next page on. @returns null when signed in */
  async redeemLink(key: string): Promise<Refusal | null> {
    try {
      const response = await fetch(DESK_ENTER_PATH, {
        method: 'POST',
        headers: { 'Content-Type': 'application/json' },
        body: JSON.stringify({ key }),
      })
      const answer = (await response.json()) as Answer<unknown>
      if (!answer.ok) return answer.error
    } catch {
      return { code: 'server/going-away' }
    }
    return null
  },

  async openRoom(): Promise<RoomId | null> {
    const answer = await ask('room:open', {})
    if (!answer.ok) {
      useDesk.setState({ refusal: answer.error })
      return null
    }
    const { desk } = answer.value
    watched = desk.room.id
    wished = null
    useDesk.setState({ view: desk, refusal: null })
    return desk.room.id
  },

  /**
   * Opens a take-home room and leaves the watched one as it is; a refusal is for whoever asked. To go there, watch it.
   */
  async openTakeHome(wish: TakeHomeWish): Promise<OpenedTakeHome> {
    const opened = await openTakeHome(wish)
    // The server has begun to tell of the new room.
    if ('refusal' in opened) tellMeOfMine()
    return opened
  },

  /** Watches a room; nothing changes when it is watched already. */
  watchRoom(id: RoomId): void {
    if (watched === id) return
    watched = id
    wished = null
    useDesk.setState({ view: null, gone: null })
    lookAgain()
  },

  stopWatching(): void {
    if (watched === null) return
    watched = null
    useDesk.setState({ view: null })
    enter()
  },

  set(settings: RoundSettings): void {
    const { view } = useDesk.getState()
    if (view === null) return
    wished = { settings, nOnTheirWay: (wished?.nOnTheirWay ?? 0) + 1 }
    useDesk.setState({ view: { ...view, settings } })
    void say('room:set', { roomId: view.room.id, settings }).finally(() => {
      if (wished !== null) wished = wished.nOnTheirWay === 1 ? null : { ...wished, nOnTheirWay: wished.nOnTheirWay - 1 }
    })
  },

  lock: (locked: boolean) => inRoom((roomId) => say('room:lock', { roomId, locked })),

  /** Closes the watched room; its next view says so. */
  closeRoom: () => inRoom((roomId) => say('room:close', { roomId })),

  setEntry: (entry: RoomEntry) =>
    inRoom((roomId, view) => {
      // Shown ahead of the answer; a refusal asks for the whole view.
      useDesk.setState({ view: { ...view, room: { ...view.room, entry } } })
      return say('room:entry', { roomId, entry })
    }),
  answerKnock: (knockId: string, letIn: boolean) => inRoom((roomId) => say('knock:answer', { roomId, knockId, letIn })),

  followPlan: (plan: LessonPlan | null) => inRoom((roomId) => say('room:use-plan', { roomId, plan })),
  goToPart: (at: number) => inRoom((roomId) => say('room:plan-at', { roomId, at })),
  takeHome: (rounds: readonly RoundSettings[], deadlineMs: number) =>
    inRoom((roomId) => say('room:take-home', { roomId, rounds: [...rounds], deadlineMs })),
  lookAtRound: (roundId: RoundId) => inRoom((roomId) => say('room:look-at', { roomId, roundId })),

  /** @returns the identifier under which it is kept; null when it was refused */
  async keepPlan(plan: LessonPlan, planId: string | null): Promise<string | null> {
    const kept = await wish('plan:keep', { planId, plan })
    return kept?.planId ?? null
  },
  removePlan: (planId: string) => say('plan:remove', { planId }),
  async keepRoster(roster: ClassRoster, rosterId: string | null): Promise<string | null> {
    const kept = await wish('roster:keep', { rosterId, roster })
    return kept?.rosterId ?? null
  },
  removeRoster: (rosterId: string) => say('roster:remove', { rosterId }),

  /** What a student has turned so far; null when it was refused, which is shown. */
  async lookAt(seatId: SeatId): Promise<TryLook | null> {
    const at = roundAt()
    return at === null ? null : ((await wish('seat:look', { ...at, seatId }))?.look ?? null)
  },
  nudge: (to: 'all' | readonly SeatId[], nudge: Nudge) =>
    inRound((roomId, roundId) => say('nudge:send', { roomId, roundId, to: to === 'all' ? to : [...to], nudge })),

  show: (...what: Parameters<DeskShowing['show']>) => showing.show(...what),
  showAt: (...how: Parameters<DeskShowing['showAt']>) => showing.showAt(...how),
  /** All solutions of a round; null when it was refused, which is shown. */
  async review(roundId: RoundId): Promise<ReviewView | null> {
    const roomId = useDesk.getState().view?.room.id
    if (roomId === undefined) return null
    return (await wish('review:ask', { roomId, roundId }))?.review ?? null
  },

  /** Deals the next round for real cubes, without its signal. */
  deal: () => inRoom((roomId, view) => say('round:deal', { roomId, number: view.nRounds + 1 })),
  /** Gives the signal of a round that is dealt. */
  giveSignal: () => inRoom((roomId, view) => say('round:start', { roomId, number: view.nRounds })),
  start: () => inRoom((roomId, view) => say('round:start', { roomId, number: view.nRounds + 1 })),
  pause: () => inRound((roomId, roundId) => say('round:pause', { roomId, roundId })),
  resume: () => inRound((roomId, roundId) => say('round:resume', { roomId, roundId })),
  addTime: (addedMs: number) => inRound((roomId, roundId) => say('round:add-time', { roomId, roundId, addedMs })),
  showPar: (shown: boolean) => inRound((roomId, roundId) => say('round:show-par', { roomId, roundId, shown })),
  end: () => inRound((roomId, roundId) => say('round:end', { roomId, roundId })),
  voidRound: () => inRound((roomId, roundId) => say('round:void', { roomId, roundId })),

  removeSeat: (seatId: SeatId) => inRoom((roomId) => say('seat:remove', { roomId, seatId })),
  renameSeat: (seatId: SeatId, name: string) => inRoom((roomId) => say('seat:rename', { roomId, seatId, name })),
  pretendClass: (seated: boolean) => inRoom((roomId) => say('pretend:seat', { roomId, seated })),

  dismiss(): void {
    useDesk.setState({ refusal: null })
  },
}

const enter = keepTrying(async () => {
  const answer = await ask('desk:enter', {})
  if (answer.ok) {
    useDesk.setState({ status: 'ready', home: answer.value.home, shelf: answer.value.shelf })
    lookAgain()
    return null
  }
  if (answer.error.code === 'desk/not-signed-in') {
    useDesk.setState({ status: 'signed-out', home: null, shelf: { plans: [], rosters: [] }, view: null })
    socket.disconnect()
    return null
  }
  return socket.connected ? pauseAfter(answer.error) : null
})

/** Asks for the whole view of the watched room: at the beginning, after a gap, and when the page is in doubt. */
const lookAgain = keepTrying(async () => {
  const roomId = watched
  if (roomId === null) return null
  const answer = await ask('room:watch', { roomId })
  if (watched !== roomId) return null
  if (answer.ok) {
    setView(answer.value.desk)
    return null
  }
  if (answer.error.code === 'room/not-yours') {
    watched = null
    useDesk.setState({ view: null, gone: roomId, refusal: answer.error })
    enter()
  }
  // Nothing of this concerns the teacher: the desk is being entered again, or asks too often.
  else if (socket.connected) return pauseAfter(answer.error)
  return null
})

/** Has the server tell of what this desk looks at: a room, or at its first pages all of them. */
function tellMeOfMine(): void {
  if (watched === null) enter()
  else lookAgain()
}

const showing = deskShowing({
  view: () => useDesk.getState().view,
  setView: (view) => useDesk.setState({ view }),
  say,
})

/** A whole view from the server. */
function setView(view: DeskView): void {
  useDesk.setState({ view: showing.onView(view) })
}

function roundAt(): { readonly roomId: RoomId; readonly roundId: RoundId } | null {
  const { view } = useDesk.getState()
  return view === null || view.round === null ? null : { roomId: view.room.id, roundId: view.round.id }
}

/** Sends a wish of the teacher and shows why, should it be refused. @returns the answer; null when it was refused */
async function wish<Name extends MessageName>(name: Name, message: Sent<Name>): Promise<Answers[Name] | null> {
  const answer = await ask(name, message)
  useDesk.setState({ refusal: answer.ok ? null : answer.error })
  return answer.ok ? answer.value : null
}

/** Sends a wish of the teacher and shows why, should it be refused. @returns whether it was granted */
async function say<Name extends MessageName>(name: Name, message: Sent<Name>): Promise<boolean> {
  const answer = await ask(name, message)
  useDesk.setState({ refusal: answer.ok ? null : answer.error })
  // A wish that was shown ahead of the answer is put right.
  if (!answer.ok) lookAgain()
  return answer.ok
}

function inRoom(act: (roomId: RoomId, view: DeskView) => unknown): void {
  const { view } = useDesk.getState()
  if (view !== null) void act(view.room.id, view)
}

function inRound(act: (roomId: RoomId, roundId: RoundId) => unknown): void {
  inRoom((roomId, view) => {
    if (view.round !== null) void act(roomId, view.round.id)
  })
}
