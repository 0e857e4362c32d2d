/**
 * A process that makes and keeps a table, while something happens to it at a chosen moment:
 *   node --import tsx keep-with-trouble.mjs FOLDER none|killed-while-writing|killed-before-renaming|disk-full
 * Prints the outcome as JSON, when it lives to do so. The table is 12 MB of the byte 7, so that it takes several writes.
 */

import { createHash } from 'node:crypto'
import fs from 'node:fs'
import { syncBuiltinESMExports } from 'node:module'

const [folder, trouble] = process.argv.slice(2)
const write = fs.writeSync
let nWrites = 0
const die = () => process.kill(process.pid, 'SIGKILL')

fs.writeSync = (...args) => {
  nWrites++
  if (nWrites === 2 && trouble === 'killed-while-writing') die()
  if (nWrites === 2 && trouble === 'disk-full') throw Object.assign(new Error('no space'), { code: 'ENOSPC' })
  return write(...args)
}
if (trouble === 'killed-before-renaming') fs.fsyncSync = die
syncBuiltinESMExports()

const { readOrMakeTable } = await import('../../../../server/search/kept-table.ts')
const bytes = new Uint8Array(new SharedArrayBuffer(12_000_000))
const hash = createHash('sha256').update(new Uint8Array(bytes.length).fill(7)).digest('hex')
const outcome = readOrMakeTable({ folder, name: 'sevens', bytes, hash, make: (table) => table.fill(7) })
process.stdout.write(JSON.stringify(outcome))
