/**
 * The server's clock. It is set once, when the process starts, and then runs evenly: a machine that puts its own clock right
 * in the middle of a round, or sleeps, neither takes time from a class nor gives it any. Pages follow this clock, not theirs.
 * It stands still while the machine sleeps; whoever notices that (`live/standstill.ts`) puts it ahead.
 */

/** The clock, and the one way in which it is ever put right. */
export type SteadyClock = {
  /** Whole milliseconds since 1970. */
  readonly nowMs: () => number
  /** Puts it ahead. */
  readonly catchUp: (byMs: number) => void
}

/** `wallMs`: what the machine says; `evenMs`: milliseconds since anything, evenly. */
export function makeSteadyClock(
  wallMs: () => number = Date.now,
  evenMs: () => number = () => performance.now(),
): SteadyClock {
  let set = wallMs() - evenMs()
  return {
    nowMs: () => Math.floor(set + evenMs()),
    catchUp: (byMs) => {
      set += byMs
    },
  }
}
