/**
 * A line of a video lesson: everything takes its time in both directions, and now and then a packet is lost. TCP sends a
 * lost packet again, so to a page a loss is a stall of everything behind it. In front of a server on this machine.
 */

import { connect, createServer, type Server, type Socket } from 'node:net'

type LineWishes = {
  /** Port of the server behind it, on loopback. */
  readonly to: number
  /** Milliseconds there and back. */
  readonly roundTripMs: number
  /** Share of packets that are lost, 0 to 1. */
  readonly loss: number
  /** The same seed loses the same packets. */
  readonly seed: number
}

/** Until a lost packet is sent again: the least that TCP waits (RFC 6298, section 2.4, asks for a second; common practice is 200 ms), and the way there. */
const RESENT_AFTER_MS = 200

/** Opens the line. @returns its port, how many packets it has lost, and what ends it */
export async function openSlowLine({ to, roundTripMs, loss, seed }: LineWishes) {
  const sockets = new Set<Socket>()
  const next = randomNumbers(seed)
  let nLost = 0
  const delayed = (from: Socket, into: Socket) => {
    let earliestMs = 0
    from.on('data', (packet) => {
      const isLost = next() < loss
      if (isLost) nLost++
      // In order: what comes behind a lost packet waits for it.
      const dueMs = performance.now() + roundTripMs / 2 + (isLost ? RESENT_AFTER_MS + roundTripMs : 0)
      earliestMs = Math.max(earliestMs, dueMs)
      setTimeout(() => into.writable && into.write(packet), earliestMs - performance.now())
    })
    from.on('close', () => setTimeout(() => into.destroy(), roundTripMs / 2))
    from.on('error', () => into.destroy())
  }
  const server: Server = createServer((page) => {
    const behind = connect(to, '127.0.0.1')
    for (const socket of [page, behind]) {
      socket.setNoDelay(true)
      sockets.add(socket)
      socket.on('close', () => sockets.delete(socket))
    }
    delayed(page, behind)
    delayed(behind, page)
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = server.address()
  if (address === null || typeof address === 'string') throw new Error('the line has a port')
  return {
    port: address.port,
    nLost: () => nLost,
    close: async () => {
      for (const socket of sockets) socket.destroy()
      await new Promise((resolve) => server.close(resolve))
    },
  }
}

/** Numbers in 0..1, the same ones for the same seed (Marsaglia, Xorshift RNGs, 2003). */
function randomNumbers(seed: number): () => number {
  let state = seed | 0 || 1
  return () => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    return (state >>> 0) / 2 ** 32
  }
}
