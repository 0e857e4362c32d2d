/** For whoever watches the process: alive at all, and ready to seat students. Neither touches the disk. */

import type { Express } from 'express'

export function serveHealth(app: Express, isReady: () => boolean): void {
  app.get('/healthz', (_request, response) => {
    response.type('text/plain; charset=utf-8').send('alive')
  })
  app.get('/readyz', (_request, response) => {
    const ready = isReady()
    response
      .status(ready ? 200 : 503)
      .type('text/plain; charset=utf-8')
      .send(ready ? 'ready' : 'not ready')
  })
}
