/** Where students on the same network find this server: the machine's own IPv4 addresses, likeliest first. */

import { networkInterfaces } from 'node:os'

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
