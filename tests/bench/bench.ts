/** `npm run bench`: what the engine does in a second on this machine, each figure beside its baseline in the same run. */

import { loadavg } from 'node:os'
import { benchEngine } from './engine-bench.ts'

console.log(`Node ${process.version}, load average ${loadavg()[0].toFixed(2)}`)
for (const { name, value, unit, note } of await benchEngine()) {
  const figure = value >= 100 ? Math.round(value).toLocaleString('en') : value.toPrecision(3)
  console.log(`${name.padEnd(46)} ${figure.padStart(14)} ${unit}${note === undefined ? '' : `   ${note}`}`)
}
