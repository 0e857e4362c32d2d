/** The files of the house, for tests about its order. */

import { readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const ROOT = fileURLToPath(new URL('../..', import.meta.url))

/** @param place a folder, from the root @returns every file below it, from the root */
export function filesBelow(place: string): string[] {
  return readdirSync(join(ROOT, place)).flatMap((name) => {
    const path = join(place, name)
    return statSync(join(ROOT, path)).isDirectory() ? filesBelow(path) : [path]
  })
}
