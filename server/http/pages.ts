/** Serves the built pages: files with a hash in their name for ever, the page itself always fresh. */

import { existsSync } from 'node:fs'
import { join } from 'node:path'
import compression from 'compression'
import express, { type Express } from 'express'
import { sayNothingIsHere } from './last-word.ts'

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
      sayNothingIsHere(response)
      return
    }
    response.set('Cache-Control', 'no-cache').sendFile(page)
  })
}
