/**
 * `npm run make-pars`: makes the tables of par anew and writes the two generated modules of `engine/search/par`. About half
 * a minute on one core. Always gives the same bytes. Interrupted, it goes on where it was: finished parts are kept in
 * `.cache/par`; with `-- --anew` they are not used.
 */

import { createHash } from 'node:crypto'
import { readFileSync, renameSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { fileURLToPath } from 'node:url'
import type { Stage } from '../../engine/method/stages.ts'
import { crc32 } from '../../engine/search/par/crc-32.ts'
import type { SolvedClasses } from '../../engine/search/par/making/kindest-words.ts'
import { PAR_PARTS, type ParPart, packParts } from '../../engine/search/par/making/make-par-parts.ts'
import { makePlaceTables, type PlaceTables } from '../../engine/search/par/making/place-tables.ts'
import { fingerprintOf, keptParParts } from './kept-par-parts.ts'
import { startProgressBar } from './progress-bar.ts'

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..')
const PAR_FOLDER = join(ROOT, 'engine', 'search', 'par')
const CODE_FOLDERS = ['engine/cube', 'engine/method', 'engine/search', 'engine/search/par', 'engine/search/par/making']
const BASE64_PER_LINE = 120

const isAnew = process.argv.includes('--anew')
const kept = keptParParts(join(ROOT, '.cache', 'par'), fingerprintOf(CODE_FOLDERS.map((folder) => join(ROOT, folder))))
const bar = startProgressBar(process.stderr, () => performance.now())
const beganAtMs = performance.now()

const solvedOfStages = new Map<Stage, SolvedClasses>()
let tables: PlaceTables | undefined
let shareBefore = 0
for (const part of PAR_PARTS) {
  const solved = findKept(part) ?? make(part)
  part.stages.forEach((stage, index) => {
    solvedOfStages.set(stage, solved[index])
  })
  shareBefore += part.shareOfWork
}
bar.show(1, 'done')
bar.end()

const { pars, solutions } = packParts(solvedOfStages)
writeModule('par-table-data.ts', 'PAR_TABLE_DATA', 'Pars of all single-stage starts, by class.', pars)
writeModule(
  'shortest-solution-data.ts',
  'SHORTEST_SOLUTION_DATA',
  'A shortest solution of each class of starts of stages 2 to 7.',
  solutions,
)
console.log(`${((performance.now() - beganAtMs) / 1_000).toFixed(1)} s`)

function findKept({ stages }: ParPart): SolvedClasses[] | undefined {
  if (isAnew) return undefined
  const part = kept.find(stages)
  if (part.found === 'whole') return part.solved
  if (part.found !== 'absent') bar.say(`What was kept of ${told(stages)} is ${part.found} and is made anew.`)
  return undefined
}

function make(part: ParPart): SolvedClasses[] {
  bar.show(shareBefore, told(part.stages))
  tables ??= makePlaceTables()
  const making = part.make(tables)
  let step = making.next()
  for (; !step.done; step = making.next()) {
    bar.show(shareBefore + step.value * part.shareOfWork, told(part.stages))
  }
  kept.keep(part.stages, step.value)
  return step.value
}

function told(stages: readonly Stage[]): string {
  return stages.length === 1 ? `stage ${stages[0]}` : `stages ${stages[0]} to ${stages[stages.length - 1]}`
}

/** Written under another name first: a making that is interrupted leaves the module as it was. */
function writeModule(file: string, name: string, what: string, bytes: Uint8Array): void {
  const base64 = Buffer.from(bytes).toString('base64')
  const lines = base64.match(new RegExp(`.{1,${BASE64_PER_LINE}}`, 'g')) ?? []
  const text = `/** ${what} Made by \`npm run make-pars\`; not to be changed by hand. */

import type { PackedTable } from './packed-table.ts'

/** ${bytes.length.toLocaleString('en')} bytes; \`${file === 'par-table-data.ts' ? 'par-bytes.ts' : 'word-bytes.ts'}\` says what they mean. */
export const ${name}: PackedTable = {
  crc32: ${crc32(bytes)},
  base64: \`
${lines.join('\n')}
\`,
}
`
  const path = join(PAR_FOLDER, file)
  const isNew = textOf(path) !== text
  if (isNew) {
    writeFileSync(`${path}.unfinished`, text)
    renameSync(`${path}.unfinished`, path)
  }
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  console.log(`${file}: ${bytes.length} bytes, sha256 ${sha256}, ${isNew ? 'written' : 'unchanged'}`)
}

function textOf(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8')
  } catch {
    return undefined
  }
}
