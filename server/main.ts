/** Puts the real parts together, listens, says where to go, and stops in order. */

import type { AddressInfo } from 'node:net'
import { uptime } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import pino from 'pino'
import { createApp } from './app.ts'
import { readConfig } from './config.ts'
import { localAddresses, ownAddress, rememberAddresses } from './http/local-addresses.ts'
import { StandstillWatch } from './live/standstill.ts'
import { openSearchPool } from './search/search-pool.ts'
import { whereToGo } from './start/where-to-go.ts'
import { makeSteadyClock } from './steady-clock.ts'
import { UnusableData } from './store/sqlite-open.ts'
import { openSqliteRecord } from './store/sqlite-record.ts'

const here = dirname(fileURLToPath(import.meta.url))
const isBuilt = import.meta.url.endsWith('.js')
/** Built, this file lies in dist/server beside dist/web; from sources under tsx, pages come from the last build. */
const webDir = isBuilt ? join(here, '..', 'web') : join(here, '..', 'dist', 'web')
const threadFile = new URL(isBuilt ? './sqlite-thread.js' : './store/sqlite-thread-from-source.mjs', import.meta.url)

/** A stop that hangs is ended by force; whatever was acknowledged is on the disk already. */
const STOP_MS_MAX = 8_000

function refuseToStart(sentence: string): never {
  console.error(`\n  Fairturn did not start.\n  ${sentence}\n`)
  process.exit(1)
}

const read = readConfig(process.env)
if (!read.ok) refuseToStart(read.faults.join('\n  '))
const { config } = read
const log = pino({ level: config.logLevel, base: null }, pino.destination({ dest: 2, sync: false }))

const record = await openSqliteRecord({ dataDir: config.dataDir, threadFile }).catch((fault: unknown) => {
  if (fault instanceof UnusableData) refuseToStart(fault.message)
  throw fault
})

const search = openSearchPool({ dataDir: config.tablesDir, log })
search.ready.then(
  (stories) => {
    // Reading them takes less than a second, and nobody needs to know.
    if (stories.some(({ how }) => how !== 'read'))
      console.log('  Search tables are made and kept; the next start finds them.\n')
  },
  () =>
    console.error('  Search tables could not be made: there will be no par over several stages. The log says why.\n'),
)

let port = config.port
const { publicUrl } = config
const addresses = publicUrl === null ? rememberAddresses(() => localAddresses(port)) : () => [publicUrl.host]
const { nowMs, catchUp } = makeSteadyClock()
// The uptime of the system goes on while it sleeps.
const standstill = new StandstillWatch({ nowMs, goingOnMs: () => uptime() * 1_000, catchUp })
const app = createApp({ record, search, log, nowMs, standstill, webDir, publicUrl, addresses })

app.http.on('error', (fault: NodeJS.ErrnoException) => {
  // Later faults, such as too many open connections at once, cost those who come just then, and nobody who is here.
  if (app.http.listening) {
    log.error({ fault: String(fault) }, 'a connection could not be taken')
    return
  }
  const sentences: Record<string, string> = {
    EADDRINUSE: `Port ${config.port} is in use, perhaps by another Fairturn. Stop it, or start with another port: PORT=${config.port + 1} npm start`,
    EACCES: `Port ${config.port} may not be used by this user. Start with another port: PORT=3000 npm start`,
    EADDRNOTAVAIL: `This machine has no address ${config.host}. Leave HOST out, or set it to an address of this machine.`,
  }
  refuseToStart(sentences[fault.code ?? ''] ?? fault.message)
})

let isStopping = false
function stop(signal: string, exitCode = 0): void {
  // Asked twice, it goes at once.
  if (isStopping) process.exit(1)
  isStopping = true
  log.info({ signal }, 'stopping')
  setTimeout(() => process.exit(1), STOP_MS_MAX).unref()
  Promise.all([app.stop(), search.close()]).then(
    () => process.exit(exitCode),
    (fault: unknown) => {
      log.fatal({ fault: String(fault) }, 'did not stop in order')
      process.exit(1)
    },
  )
}
process.on('SIGTERM', () => stop('SIGTERM'))
process.on('SIGINT', () => stop('SIGINT'))

// A fault that nobody caught leaves a state that nobody knows: say so, stop in order, be started again. A restart costs a class one reconnect.
process.on('uncaughtException', (fault) => {
  log.fatal({ fault: fault.stack }, 'uncaught')
  stop('uncaughtException', 1)
})

await app.restore()
app.http.listen(config.port, config.host, () => {
  const address = app.http.address() as AddressInfo
  port = address.port
  app.begin(`http://${ownAddress(address)}`)
  console.log(whereToGo({ port, addresses: addresses(), publicUrl, linkKey: app.link.key }))
})
