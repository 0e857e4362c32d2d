/** Where the server is found. Rules: tests/RULES.md. */

import { expect, test } from 'vitest'
import { ownAddress, rememberAddresses } from '../../server/http/local-addresses.ts'

test.each([
  [{ address: '0.0.0.0', family: 'IPv4', port: 3000 }, '127.0.0.1:3000'],
  [{ address: '::', family: 'IPv6', port: 3000 }, '127.0.0.1:3000'],
  [{ address: '192.0.2.7', family: 'IPv4', port: 80 }, '192.0.2.7:80'],
  [{ address: '::1', family: 'IPv6', port: 3000 }, '[::1]:3000'],
])('[PC4] a server that listens on %j reaches itself on %s', (address, own) => {
  expect(ownAddress(address)).toBe(own)
})

test('[WI12] the address on the screens is asked for now and then, and kept while the system cannot answer', () => {
  let evenMs = 0
  let nAsked = 0
  let isOutOfSockets = false
  const addresses = rememberAddresses(
    () => {
      nAsked++
      if (isOutOfSockets) throw new Error('EMFILE')
      return [`192.0.2.${nAsked}:3000`]
    },
    () => evenMs,
  )
  for (let screen = 0; screen < 100; screen++) expect(addresses()).toEqual(['192.0.2.1:3000'])
  expect(nAsked).toBe(1)
  evenMs += 11_000
  isOutOfSockets = true
  expect(addresses()).toEqual(['192.0.2.1:3000'])
  evenMs += 11_000
  isOutOfSockets = false
  expect(addresses()).toEqual(['192.0.2.3:3000'])
})
