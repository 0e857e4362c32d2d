/**
 * The secret of a seat, made by the page before it asks to come in: should the answer be lost, the same wish finds the seat
 * that it has already taken, instead of a name that is taken by nobody.
 */

const SECRET_BYTES = 32

/** 256 bits from the browser's own source, which plain HTTP has too, in 43 characters of base64url. */
export function newOwnSecret(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(SECRET_BYTES))
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '')
}
