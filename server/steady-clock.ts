/**
 * The server's clock. It is set once, when the process starts, and then runs evenly: a machine that puts its own clock right
 * in the middle of a round, or sleeps, neither takes time from a class nor gives it any. Pages follow this clock, not theirs.
 */

/** @returns whole milliseconds since 1970. `wallMs`: what the machine says; `evenMs`: milliseconds since anything, evenly. */
export function makeSteadyClock(
  wallMs: () => number = Date.now,
  evenMs: () => number = () => performance.now(),
): () => number {
  const set = wallMs() - evenMs()
  return () => Math.floor(set + evenMs())
}
