/**
 * The answer to every request that nobody else answers: nothing is there, it could not be read, or a fault of ours. Express
 * would send a page with the stack in it.
 */

import type { Server } from 'node:http'
import type { Express, NextFunction, Request, Response } from 'express'
import type { Logger } from 'pino'
import { DESK_ENTER_PATH } from '../../engine/wire/places.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { SavingPaused } from '../store/record.ts'
import { LIVE_HEADERS } from './headers.ts'

const NOTHING_HERE = 'Nothing is here. Open the address without anything behind it.'

export function serveLastWord(app: Express, log: Logger): void {
  app.use((_request, response) => sayNothingIsHere(response))
  app.use((fault: unknown, request: Request, response: Response, next: NextFunction) => {
    if (response.headersSent) return next(fault)
    const status = statusOf(fault)
    if (status === 500) log.error({ fault: (fault as Error).stack ?? String(fault) }, 'a request failed')
    if (request.path === DESK_ENTER_PATH) response.status(status).json({ ok: false, error: refusalOf(status) })
    else if (status === 404) sayNothingIsHere(response)
    else
      response
        .status(status)
        .type('text/plain; charset=utf-8')
        .send(status < 500 ? 'This request makes no sense.' : 'A fault of ours.')
  })
}

export function sayNothingIsHere(response: Response): void {
  response.status(404).type('text/plain; charset=utf-8').send(NOTHING_HERE)
}

function statusOf(fault: unknown): number {
  if (fault instanceof SavingPaused) return 503
  const { status } = fault as { status?: unknown }
  return typeof status === 'number' && 400 <= status && status < 500 ? status : 500
}

function refusalOf(status: number): Refusal {
  if (status === 503) return { code: 'store/saving-paused' }
  return status < 500 ? { code: 'wire/malformed', at: 'message' } : { code: 'server/fault' }
}

/** What is no HTTP at all, or has headers without end, is refused before express sees it. */
export function refuseBrokenRequests(http: Server): void {
  http.on('clientError', (fault: NodeJS.ErrnoException, socket) => {
    if (fault.code === 'ECONNRESET' || !socket.writable) return socket.destroy()
    const status = fault.code === 'HPE_HEADER_OVERFLOW' ? '431 Request Header Fields Too Large' : '400 Bad Request'
    const headers = Object.entries(LIVE_HEADERS).map(([name, value]) => `${name}: ${value}\r\n`)
    socket.end(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n${headers.join('')}\r\n`)
  })
}
