/**
 * Keeps the parts of the par tables that are made already, so that an interrupted making goes on with the next one. A file
 * that is damaged, or was made by other code, is not used; the answer says so.
 */

import { createHash } from 'node:crypto'
import { mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Stage } from '../../engine/method/stages.ts'
import { crc32 } from '../../engine/search/par/crc-32.ts'
import type { SolvedClasses } from '../../engine/search/par/making/kindest-words.ts'

/** What became of a kept part. */
export type KeptPart =
  | { readonly found: 'whole'; readonly solved: SolvedClasses[] }
  /** `absent`: none was kept. `damaged`: not as it was written. `older`: written by other code than today's. */
  | { readonly found: 'absent' | 'damaged' | 'older' }

type Header = { readonly madeBy: string; readonly crc32: number }

/**
 * @param folder where parts are kept; made if needed
 * @param madeBy a text that changes whenever the making may give something else
 */
export function keptParParts(folder: string, madeBy: string) {
  const fileOf = (stages: readonly Stage[]) => join(folder, `stages-${stages.join('-')}.json`)
  return {
    find: (stages: readonly Stage[]): KeptPart => {
      const text = textOf(fileOf(stages))
      if (text === undefined) return { found: 'absent' }
      const [headerLine, body = ''] = text.split('\n')
      const header = readHeader(headerLine)
      if (header === undefined || header.crc32 !== crc32(Buffer.from(body))) return { found: 'damaged' }
      if (header.madeBy !== madeBy) return { found: 'older' }
      const parts: Array<{ pars: number[]; words: number[] }> = JSON.parse(body)
      return {
        found: 'whole',
        solved: parts.map(({ pars, words }) => ({ pars: Uint8Array.from(pars), words: Float64Array.from(words) })),
      }
    },
    /** Written under another name first, so that a file with the right name is always whole. */
    keep: (stages: readonly Stage[], solved: readonly SolvedClasses[]): void => {
      mkdirSync(folder, { recursive: true })
      const body = JSON.stringify(solved.map(({ pars, words }) => ({ pars: [...pars], words: [...words] })))
      const header: Header = { madeBy, crc32: crc32(Buffer.from(body)) }
      const unfinished = `${fileOf(stages)}.unfinished`
      writeFileSync(unfinished, `${JSON.stringify(header)}\n${body}\n`)
      renameSync(unfinished, fileOf(stages))
    },
  }
}

/** @param folders whose files make the parts, generated ones left out @returns a text that changes with any of them */
export function fingerprintOf(folders: readonly string[]): string {
  const hash = createHash('sha256')
  for (const folder of folders) {
    for (const name of readdirSync(folder).sort()) {
      if (name.endsWith('.ts') && !name.endsWith('-data.ts')) hash.update(readFileSync(join(folder, name)))
    }
  }
  return hash.digest('hex')
}

function textOf(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    return undefined
  }
}

function readHeader(line: string): Header | undefined {
  try {
    const { madeBy, crc32: sum } = JSON.parse(line)
    return typeof madeBy === 'string' && typeof sum === 'number' ? { madeBy, crc32: sum } : undefined
  } catch {
    return undefined
  }
}
