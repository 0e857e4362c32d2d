/** Serves the built pages: files with a hash in their name for ever, the page itself always fresh. */

import { existsSync } from 'node:fs'
import { join } from 'node:path'
import compression from 'compression'
import express, { type Express } from 'express'

export function servePages(app: Express, webDir: string): void {
  app.use(compression())
  app.use(
    '/assets',
    express.static(join(webDir, 'assets'), { immutable: true, maxAge: '365d', fallthrough: false, index: false }),
  )
  app.use(express.static(webDir, { index: false, maxAge: 0 }))
  app.get('/{*path}', (request, response) => {
    const page = join(webDir, 'index.html')
    if (!request.accepts('html') || !existsSync(page)) {
      response
        .status(404)
        .type('text/plain; charset=utf-8')
        .send('Nothing is here. Open the address without anything behind it.')
      return
    }
    response.set('Cache-Control', 'no-cache').sendFile(page)
  })
}
