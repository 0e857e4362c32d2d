/** Puts a tick's lanes into a view. Pure. */

import type { Lane } from '../../engine/contest/rank-board.ts'
import type { DeskTick, DeskView, Tick } from '../../engine/wire/views.ts'

/** @returns the new view, or null when a tick is missing in between: then the whole view has to be asked for */
export function applyTick<View extends { readonly version: number; readonly lanes: readonly Lane[] }>(
  view: View,
  tick: Tick,
): View | null {
  if (tick.version <= view.version) return view
  if (tick.version !== view.version + 1) return null
  if (tick.lanes.length === 0) return { ...view, version: tick.version, ...reachedOf(view, tick) }
  const changed = new Map(tick.lanes.map((lane) => [lane.seatId, lane]))
  const lanes = view.lanes.map((lane) => changed.get(lane.seatId) ?? lane)
  return { ...view, version: tick.version, lanes, ...reachedOf(view, tick) }
}

/** The same for the desk, which sees the cubes as well. */
export function applyDeskTick(view: DeskView, tick: DeskTick): DeskView | null {
  const next = applyTick(view, tick)
  if (next === null || tick.cells.length === 0 || tick.version <= view.version) return next
  const changed = new Map(tick.cells.map((cell) => [cell.seatId, cell]))
  return { ...next, cells: next.cells.map((cell) => changed.get(cell.seatId) ?? cell) }
}

function reachedOf(view: object, tick: Tick): object {
  return 'nReached' in view ? { nReached: tick.nReached } : {}
}
