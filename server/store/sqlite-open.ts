/**
 * Opens the data file and refuses to go on unless a commit really means "on the disk". Every fault is a sentence that says
 * what to do, because it is read by a teacher in front of a class.
 */

import { existsSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { MIGRATIONS } from './sqlite-schema.ts'

/** SQLite 3.7.0 to 3.51.2 could lose commits when the write-ahead log starts over; 3.51.3 is the first that cannot. */
export const SQLITE_VERSION_MIN = [3, 51, 3] as const

const DATA_FILE = 'fairturn.sqlite'
/** PRAGMA synchronous = FULL. */
const SYNCHRONOUS_FULL = 2

/** The server must not start on this data folder; `message` is for a person. */
export class UnusableData extends Error {}

export function openDataFile(dataDir: string): Database.Database {
  const file = join(dataDir, DATA_FILE)
  const database = withSentence(dataDir, () => {
    // Names of children: for nobody else on this machine.
    mkdirSync(dataDir, { recursive: true, mode: 0o700 })
    return new Database(file)
  })
  try {
    withSentence(dataDir, () => {
      // A second server on the same file would be told "locked" here instead of quietly sharing it.
      database.pragma('locking_mode = EXCLUSIVE')
      database.pragma('journal_mode = WAL')
      // better-sqlite3 is built with NORMAL for WAL, under which acknowledged turns can vanish when the power fails.
      database.pragma('synchronous = FULL')
      database.pragma('foreign_keys = ON')
      database.pragma('wal_autocheckpoint = 2000')
      // Deleted names leave no trace in free pages.
      database.pragma('secure_delete = ON')
    })
    assertSafe(database, file)
    migrate(database, file)
    return database
  } catch (fault) {
    database.close()
    throw fault
  }
}

function assertSafe(database: Database.Database, file: string): void {
  const version = database.prepare('SELECT sqlite_version() AS version').get() as { version: string }
  if (!isAtLeast(version.version, SQLITE_VERSION_MIN)) {
    throw new UnusableData(`SQLite ${version.version} is too old to keep turns safe. Install the project again: npm ci`)
  }
  const mode = database.pragma('journal_mode', { simple: true })
  if (mode !== 'wal')
    throw new UnusableData(
      `The data file ${file} cannot be written safely here (journal mode ${mode}). Set DATA_DIR to a folder on a local disk.`,
    )
  const synchronous = database.pragma('synchronous', { simple: true }) as number
  if (synchronous < SYNCHRONOUS_FULL)
    throw new UnusableData('SQLite does not sync every commit. Install the project again: npm ci')
  if (database.pragma('foreign_keys', { simple: true }) !== 1)
    throw new UnusableData('SQLite does not check references. Install the project again: npm ci')
  const check = withSentence(file, () => database.pragma('quick_check', { simple: true }) as string)
  if (check !== 'ok') throw new UnusableData(damaged(file))
}

function migrate(database: Database.Database, file: string): void {
  const version = database.pragma('user_version', { simple: true }) as number
  if (version > MIGRATIONS.length) {
    throw new UnusableData(
      `The data file ${file} was written by a newer version of Fairturn. Start that version, or set DATA_DIR to another folder.`,
    )
  }
  for (let next = version; next < MIGRATIONS.length; next++) {
    database.transaction(() => {
      database.exec(MIGRATIONS[next])
      database.pragma(`user_version = ${next + 1}`)
    })()
  }
}

function isAtLeast(version: string, least: readonly number[]): boolean {
  const parts = version.split('.').map(Number)
  for (const [index, part] of least.entries()) {
    if ((parts[index] ?? 0) !== part) return (parts[index] ?? 0) > part
  }
  return true
}

/** Runs a step of opening and turns what the system says into what a person can do. */
function withSentence<T>(place: string, step: () => T): T {
  try {
    return step()
  } catch (fault) {
    const code = (fault as { code?: string }).code ?? ''
    if (code === 'SQLITE_BUSY' || code === 'SQLITE_LOCKED') {
      throw new UnusableData(
        `Another Fairturn is using the data folder ${place}. Stop it, or set DATA_DIR to another folder.`,
      )
    }
    if (code === 'SQLITE_NOTADB' || code.startsWith('SQLITE_CORRUPT')) throw new UnusableData(damaged(place))
    if (existsSync(place)) {
      throw new UnusableData(
        `The data folder ${place} cannot be written (${code || (fault as Error).message}). Make it writable, or set DATA_DIR to another folder.`,
      )
    }
    throw new UnusableData(
      `The data folder ${place} cannot be made (${code || (fault as Error).message}). Make it by hand, or set DATA_DIR to another folder.`,
    )
  }
}

function damaged(file: string): string {
  return `The data file in ${file} is damaged. Nothing was changed. Put a backup in its place, or move it away to start with an empty record.`
}
