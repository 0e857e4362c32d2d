/**
 * What each kept table must be: its length, and the SHA-256 of its bytes. A file that differs is not used; a table that was
 * just made and differs is our own bug. Whoever changes how a table is made puts the new hash here: the fault names it.
 */

import { type KeptName, largeLength } from './kept-names.ts'

const HASHES: Readonly<Record<KeptName, string>> = {
  'phase-1': '67229daffe5a585975820f97ac90835e58ffee81c9f9b151c1a8f180adf169b1',
  'two-phase-small': 'af09cd6562f73baa70ab798e0dea890f6c7282dc6011f6ea9d1d0270b1d1f7b0',
  'flips-middle': 'f2cb4861f02a5bdddd18ec1938db3e51e6ba8692bb8edbe77f3de65030cca52b',
  'flips-base': 'e351333570299a30a7177328fa7ede505dcbdac8a7fa51b22e7b9d7d97b48bff',
  'middle-edge': '9c20d2e7839f472e7e4060566e36f3b7bf2a1a6d7d74cc48b7babc05ef333692',
  'middle-corner': '20a10ad60066558a958068bcbf35459c99e2ca563f3516bc5b52e856e152b1a2',
  'base-corners-edge': '424064ce73001bbe2e0c12bd35b589f4b17cf7302cf2592c4e31593abbd9fb0c',
  'cross-corner': '5f98c77c4fcd89a266ebd7a25d817085bfde9ff4569a5363a1e8f316649fc228',
  corners: '0bdd58bba2843e1771fbc9c35efce84c9a04da38372e5ac0955428f119ab81be',
  'pair-moves': 'a9d2b81b98bef4e77870cb0688d1ce31587bd3352201540edffbae0b10f79141',
}

/** Lengths of the bundles, in bytes; a large table has its own. */
const BUNDLE_BYTES: Readonly<Partial<Record<KeptName, number>>> = {
  'two-phase-small': 12_519_480,
  'pair-moves': 24_490_384,
}

/** @returns SHA-256 of the table, 64 hexadecimal digits */
export function hashOfTable(name: KeptName): string {
  return HASHES[name]
}

/** @returns the length of the table in bytes */
export function bytesOfTable(name: KeptName): number {
  return largeLength(name) ?? BUNDLE_BYTES[name] ?? 0
}
