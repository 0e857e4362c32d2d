/** Secrets that open something: 256 bits from the system's source, kept only as hashes, compared in constant time. */

import { createHash, randomBytes, timingSafeEqual } from 'node:crypto'

const SECRET_BYTES = 32

export function newSecret(): string {
  return randomBytes(SECRET_BYTES).toString('base64url')
}

export function hashSecret(secret: string): string {
  return createHash('sha256').update(secret).digest('base64url')
}

export function sameSecret(a: string, b: string): boolean {
  return timingSafeEqual(createHash('sha256').update(a).digest(), createHash('sha256').update(b).digest())
}
