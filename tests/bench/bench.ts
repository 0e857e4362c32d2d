/**
 * `npm run bench`: what this machine does in a second, each claim beside a baseline of the same run. Some minutes in all;
 * `npm run bench -- engine pars` runs some parts only.
 */

import { loadavg } from 'node:os'
import { benchBooks } from './book-bench.ts'
import { benchEngine, type Figure } from './engine-bench.ts'
import { benchPars } from './par-bench.ts'
import { benchSearch } from './search-bench.ts'
import { benchSetups } from './setup-bench.ts'
import { benchWall } from './wall-bench.ts'

const PARTS: Readonly<Record<string, () => Promise<Figure[]>>> = {
  engine: benchEngine,
  books: benchBooks,
  pars: benchPars,
  setups: benchSetups,
  search: benchSearch,
  wall: benchWall,
}

const wanted = process.argv.slice(2)
const unknown = wanted.filter((part) => PARTS[part] === undefined)
if (unknown.length > 0) {
  console.error(`bench has no part ${unknown.join(', ')}; its parts are ${Object.keys(PARTS).join(', ')}`)
  process.exit(2)
}

console.log(`Node ${process.version}, load average ${loadavg()[0].toFixed(2)}`)
for (const [part, bench] of Object.entries(PARTS)) {
  if (wanted.length > 0 && !wanted.includes(part)) continue
  console.log(`\n${part}`)
  for (const { name, value, unit, note } of await bench()) {
    const figure = value >= 100 ? Math.round(value).toLocaleString('en') : value.toPrecision(3)
    console.log(`${name.padEnd(46)} ${figure.padStart(14)} ${unit}${note === undefined ? '' : `   ${note}`}`)
  }
}
