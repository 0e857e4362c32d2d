/** The bytes of the par tables: one value of four bits for each class of each stage, stage after stage. */

import { bytesFor, readBits, writeBits } from './bit-stream.ts'

/** No par of a stage is above 15. */
const BITS_PER_PAR = 4

/** @param parsOfStages by stage and class @returns the bytes; inverse: `readParBytes` */
export function writeParBytes(parsOfStages: readonly Uint8Array[]): Uint8Array {
  const nClasses = parsOfStages.reduce((sum, pars) => sum + pars.length, 0)
  const bytes = new Uint8Array(bytesFor(nClasses * BITS_PER_PAR))
  let at = 0
  for (const pars of parsOfStages) {
    for (const par of pars) {
      writeBits(bytes, at, BITS_PER_PAR, par)
      at += BITS_PER_PAR
    }
  }
  return bytes
}

/** @param nClassesOfStages by stage @returns pars by stage and class */
export function readParBytes(bytes: Uint8Array, nClassesOfStages: readonly number[]): Uint8Array[] {
  let at = 0
  return nClassesOfStages.map((nClasses) =>
    Uint8Array.from({ length: nClasses }, () => {
      at += BITS_PER_PAR
      return readBits(bytes, at - BITS_PER_PAR, BITS_PER_PAR)
    }),
  )
}
