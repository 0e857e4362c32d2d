/** How far the server's clock is ahead of the page's, from questions about the time. Pure. */

/** One question: when the page asked and had the answer, by its own clock, and what the server's clock said in between. */
export type ClockSample = { readonly askedAtMs: number; readonly answeredAtMs: number; readonly serverMs: number }

/** @param samples at least one @returns how long the fastest question and its answer took, in milliseconds */
export function delayOf(samples: readonly ClockSample[]): number {
  return roundTripMs(fastestOf(samples))
}

/**
 * Takes the answer that came back fastest, and that the server read its clock half-way.
 *
 * @param samples at least one
 * @returns milliseconds to add to the page's clock; wrong by at most half of the fastest round trip
 */
export function clockOffsetMs(samples: readonly ClockSample[]): number {
  const fastest = fastestOf(samples)
  return Math.round(fastest.serverMs - fastest.askedAtMs - roundTripMs(fastest) / 2)
}

function roundTripMs({ askedAtMs, answeredAtMs }: ClockSample): number {
  return answeredAtMs - askedAtMs
}

function fastestOf(samples: readonly ClockSample[]): ClockSample {
  return samples.reduce((best, next) => (roundTripMs(next) < roundTripMs(best) ? next : best))
}
