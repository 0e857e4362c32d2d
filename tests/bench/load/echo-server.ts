/** The baselines: a bare Socket.IO echo and a bare WebSocket echo. They check nothing, store nothing and tell nobody. */

import { createServer } from 'node:http'
import { Server } from 'socket.io'
import { WebSocketServer } from 'ws'

const kind = process.argv[2]
const http = createServer()
const ANSWER = { ok: true, value: { tryNumber: 1, held: 0, reached: null } }

if (kind === 'socket.io') {
  const live = new Server(http, { path: '/live', serveClient: false })
  live.on('connection', (connection) => {
    connection.on('turns:send', (message: { from: number; steps: unknown[] }, answer: (value: unknown) => void) =>
      answer({ ...ANSWER, value: { ...ANSWER.value, held: message.from + message.steps.length } }),
    )
  })
} else {
  // Speaks just enough of the framing for the same generator.
  const sockets = new WebSocketServer({ server: http, path: '/live/' })
  sockets.on('connection', (socket) => {
    socket.send('0{"sid":"x","upgrades":[],"pingInterval":25000,"pingTimeout":20000,"maxPayload":1000000}')
    socket.on('message', (data) => {
      const text = String(data)
      if (text.startsWith('40')) socket.send('40{"sid":"y"}')
      else if (text.startsWith('42')) {
        const at = text.indexOf('[')
        const [, message] = JSON.parse(text.slice(at)) as [string, { from: number; steps: unknown[] }]
        socket.send(
          `43${text.slice(2, at)}${JSON.stringify([{ ...ANSWER, value: { ...ANSWER.value, held: message.from + message.steps.length } }])}`,
        )
      }
    })
  })
}
http.listen(0, '127.0.0.1', () => {
  const address = http.address()
  if (address !== null && typeof address === 'object') console.log(`listening ${address.port}`)
})
