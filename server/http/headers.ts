/**
 * Headers of every answer: pages, files, errors, and those of the live connection, which bypass express. Nothing foreign
 * may be loaded, framed or run. What only makes sense behind TLS is sent only there: on plain HTTP in a school network it
 * would lock the class out.
 */

import type { Server } from 'node:http'
import type { Express } from 'express'
import helmet from 'helmet'

export function setHeaders(app: Express, isSecure: boolean): void {
  app.disable('x-powered-by')
  app.use(
    helmet({
      contentSecurityPolicy: {
        useDefaults: false,
        directives: {
          'default-src': ["'none'"],
          'script-src': ["'self'"],
          'style-src': ["'self'"],
          'font-src': ["'self'"],
          'img-src': ["'self'", 'data:'],
          'connect-src': ["'self'"],
          'base-uri': ["'none'"],
          'form-action': ["'self'"],
          'frame-ancestors': ["'none'"],
          ...(isSecure ? { 'upgrade-insecure-requests': [] } : {}),
        },
      },
      crossOriginEmbedderPolicy: false,
      // Browsers honour these two only on secure pages and warn in the console elsewhere.
      crossOriginOpenerPolicy: isSecure ? { policy: 'same-origin' } : false,
      originAgentCluster: isSecure,
      strictTransportSecurity: isSecure ? { maxAge: 31_536_000, includeSubDomains: false } : false,
      referrerPolicy: { policy: 'no-referrer' },
      xFrameOptions: { action: 'deny' },
    }),
  )
  app.use((_request, response, next) => {
    response.set('Permissions-Policy', 'camera=(), microphone=(), geolocation=(), browsing-topics=()')
    next()
  })
}

/** The same protection for answers of the live connection, its refusals too, and for what is refused before express sees it. */
export const LIVE_HEADERS: Readonly<Record<string, string>> = {
  'X-Content-Type-Options': 'nosniff',
  'Content-Security-Policy': "default-src 'none'; frame-ancestors 'none'",
  'Referrer-Policy': 'no-referrer',
  'Cache-Control': 'no-store',
  'Cross-Origin-Resource-Policy': 'same-origin',
}

/** To be called after Socket.IO has taken its path: from then on requests on it never reach express. */
export function setLiveHeaders(http: Server, path: string): void {
  http.prependListener('request', (request, response) => {
    if (!request.url?.startsWith(path)) return
    for (const [name, value] of Object.entries(LIVE_HEADERS)) response.setHeader(name, value)
  })
}
