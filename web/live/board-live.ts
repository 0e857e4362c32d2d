/** The projector's side of the connection: a read-only view, kept right by ticks. */

import { create } from 'zustand'
import type { BoardView } from '../../engine/wire/views.ts'
import { applyTick } from './apply-tick.ts'
import { keepTrying, pauseAfter } from './keep-trying.ts'
import { followServerClock } from './server-clock.ts'
import { ask, followConnection, socket } from './socket.ts'

export type BoardLive = {
  readonly status: 'connecting' | 'ready' | 'away' | 'no-such-room'
  readonly view: BoardView | null
  readonly outOfDate: boolean
}

export const useBoard = create<BoardLive>(() => ({ status: 'connecting', view: null, outOfDate: false }))

let key: string | null = null

/** Connects with the key of the viewer link. */
export function enterAsViewer(viewerKey: string): void {
  if (key !== null) return
  key = viewerKey
  followConnection({
    onConnected: enter,
    onLost: () => {
      if (useBoard.getState().status === 'ready') useBoard.setState({ status: 'away' })
    },
    onOutOfDate: () => useBoard.setState({ outOfDate: true }),
  })
  followServerClock()
  socket.on('board', (view) => useBoard.setState({ view }))
  socket.on('shown:at', ({ version, at }) => {
    const { view } = useBoard.getState()
    if (view?.showing?.version === version) useBoard.setState({ view: { ...view, showing: { ...view.showing, at } } })
  })
  socket.on('tick', (tick) => {
    const { view } = useBoard.getState()
    if (view === null) return
    const next = applyTick(view, tick)
    if (next !== null) useBoard.setState({ view: next })
    else lookAgain()
  })
  socket.connect()
}

const enter = keepTrying(async () => {
  if (key === null) return null
  const answer = await ask('viewer:enter', { key })
  if (answer.ok) useBoard.setState({ status: 'ready', view: answer.value.board })
  else if (answer.error.code === 'viewer/no-such-room') useBoard.setState({ status: 'no-such-room' })
  else if (socket.connected) return pauseAfter(answer.error)
  return null
})

/** A tick is missing: asks for the whole view. */
const lookAgain = keepTrying(async () => {
  const answer = await ask('viewer:again', {})
  if (answer.ok) useBoard.setState({ view: answer.value.board })
  // Without a connection, or before the page has entered, entering brings the view.
  else if (socket.connected && useBoard.getState().status === 'ready') return pauseAfter(answer.error)
  return null
})
