/** The form in which tables are shipped: bytes as text, with a check sum, in a generated module that is loaded on demand. */

import { err, ok, type Result } from '../../result.ts'
import { crc32 } from './crc-32.ts'
import { readBase64 } from './read-base64.ts'

/** What a generated module exports. */
export type PackedTable = {
  /** Check sum of the bytes, as `crc-32.ts` makes it. */
  readonly crc32: number
  /** The bytes as base64, in lines. */
  readonly base64: string
}

/** Why the tables are not there. Data: which of the two modules it is about. */
export type ParTableFault =
  /** The module could not be loaded, as when the net is gone. Do: try again. */
  | { readonly code: 'search/par-data-missing'; readonly what: ParDataKind }
  /** The module is not as it was made. Do: load the page anew, or install again. */
  | { readonly code: 'search/par-data-damaged'; readonly what: ParDataKind }

/** The two generated modules: the pars, and a shortest solution for each class of starts. */
export type ParDataKind = 'pars' | 'solutions'

/** @returns the bytes, checked */
export function unpackTable(packed: PackedTable, what: ParDataKind): Result<Uint8Array, ParTableFault> {
  const bytes = readBase64(packed.base64)
  if (bytes === undefined || crc32(bytes) !== packed.crc32) return err({ code: 'search/par-data-damaged', what })
  return ok(bytes)
}

/**
 * Loads a generated module once: later calls get the same table, but a failure is tried again.
 *
 * @param load imports the module
 * @param read makes of what it exports what is wanted; its cost is paid once
 */
export function openedOnce<T>(
  what: ParDataKind,
  load: () => Promise<PackedTable>,
  read: (packed: PackedTable) => Result<T, ParTableFault> | Promise<Result<T, ParTableFault>>,
): () => Promise<Result<T, ParTableFault>> {
  let opened: Promise<Result<T, ParTableFault>> | undefined
  const open = async (): Promise<Result<T, ParTableFault>> => {
    const packed = await load().catch(() => undefined)
    const result = packed === undefined ? err({ code: 'search/par-data-missing' as const, what }) : await read(packed)
    if (!result.ok) opened = undefined
    return result
  }
  return () => {
    opened ??= open()
    return opened
  }
}
