/** Where this server is found: by students on the same network, and by itself. */

import type { AddressInfo } from 'node:net'
import { networkInterfaces } from 'node:os'

/** The machine's own IPv4 addresses, likeliest first. */
export function localAddresses(port: number): string[] {
  const found: string[] = []
  for (const [name, addresses] of Object.entries(networkInterfaces())) {
    for (const address of addresses ?? []) {
      if (address.family !== 'IPv4' || address.internal || address.address.startsWith('169.254.')) continue
      // Bridges of containers and virtual machines lead nowhere for a phone.
      if (/^(docker|br-|veth|virbr|vmnet|vboxnet)/.test(name)) continue
      found.push(address.address)
    }
  }
  const suffix = port === 80 ? '' : `:${port}`
  return (found.length === 0 ? ['localhost'] : found).map((address) => `${address}${suffix}`)
}

/** Asking the system takes a socket each time, of which none may be left; what it said last serves until it answers again. */
const ASK_AGAIN_MS = 10_000

/** Tells where this server is found, as often as one likes. `ask`: asks the system, and may fail. */
export function rememberAddresses(
  ask: () => readonly string[],
  evenMs: () => number = () => performance.now(),
): () => readonly string[] {
  let known: readonly string[] = []
  let askedAtMs = Number.NEGATIVE_INFINITY
  return () => {
    if (evenMs() < askedAtMs + ASK_AGAIN_MS) return known
    askedAtMs = evenMs()
    try {
      known = ask()
    } catch {
      // Whoever reads the address on a screen is better served by the one that was right ten seconds ago.
    }
    return known
  }
}

/** Where the server reaches itself, whatever it listens on. */
export function ownAddress({ address, family, port }: AddressInfo): string {
  if (address === '0.0.0.0' || address === '::') return `127.0.0.1:${port}`
  return family === 'IPv6' ? `[${address}]:${port}` : `${address}:${port}`
}
