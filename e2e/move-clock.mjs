/** Loaded before a server that a story lets live on another day: the machine's clock is `MOVED_HOURS` hours ahead there. */

const HOUR_MS = 3_600_000
const movedMs = Number(process.env.MOVED_HOURS ?? 0) * HOUR_MS
const machineNowMs = Date.now

Date.now = () => machineNowMs() + movedMs
