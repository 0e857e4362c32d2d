/**
 * Whether a request comes from one of our own pages. `cors` does not guard WebSockets, so the handshake asks this itself.
 * Browsers name the origin on every WebSocket and every POST; what comes without one is not a page of another site.
 */

export function makeIsOwnOrigin(
  publicUrl: URL | null,
): (origin: string | undefined, host: string | undefined) => boolean {
  return (origin, host) => {
    if (origin === undefined) return true
    if (!URL.canParse(origin)) return false
    const from = new URL(origin)
    if (from.protocol !== 'http:' && from.protocol !== 'https:') return false
    return from.host === host || (publicUrl !== null && from.origin === publicUrl.origin)
  }
}

/** Polling by script tag (JSONP) works across origins and is refused, however its parameter is spelled. */
export function isScriptPolling(url: string | undefined): boolean {
  const query = (url ?? '').split('?').slice(1).join('?')
  return new URLSearchParams(query).has('j')
}
