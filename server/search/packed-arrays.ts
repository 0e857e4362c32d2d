/**
 * Several arrays of numbers in one row of bytes, so that threads can share them and a file can keep them: a line of JSON
 * that says what is where, then the arrays. Reading copies nothing.
 */

import { assert } from '../../engine/result.ts'

const ARRAY_TYPES = { Uint8Array, Uint16Array, Uint32Array } as const

/** An array that can be packed. */
type PackedArray = Uint8Array | Uint16Array | Uint32Array
/** What can be packed: objects of arrays, numbers and objects. */
export type Packable = { readonly [key: string]: PackedArray | number | Packable }

type ArrayPlace = { readonly type: keyof typeof ARRAY_TYPES; readonly length: number; readonly at: number }
/** An array is written as its place in `arrays`, in a list of one. */
type Written = number | [arrayIndex: number] | { [key: string]: Written }
type Header = { readonly arrays: ArrayPlace[]; readonly tree: Written }

/** Every array begins at a multiple of this, as numbers of 32 bits need it. */
const ALIGNMENT_BYTES = 8
/** The length of the header, in front of it. */
const LENGTH_BYTES = 4

/** @returns how many bytes `packArrays` needs; an array that is there twice counts once */
export function packedLength(value: Packable): number {
  const { header, arrays } = laidOut(value)
  const last = arrays.length - 1
  return beginningOf(header) + (last < 0 ? 0 : header.arrays[last].at + arrays[last].byteLength)
}

/** @param bytes `packedLength` long; is filled. May lie on shared memory. */
export function packArrays(value: Packable, bytes: Uint8Array): void {
  const { header, arrays } = laidOut(value)
  const text = Buffer.from(JSON.stringify(header))
  bytes.fill(0)
  new DataView(bytes.buffer, bytes.byteOffset).setUint32(0, text.length, true)
  bytes.set(text, LENGTH_BYTES)
  const first = beginningOf(header)
  for (const [index, array] of arrays.entries()) {
    bytes.set(new Uint8Array(array.buffer, array.byteOffset, array.byteLength), first + header.arrays[index].at)
  }
}

/**
 * @param bytes as `packArrays` filled them, whole: whoever reads them from a file has compared their hash
 * @returns the value, whose arrays look at these bytes
 */
export function unpackArrays(bytes: Uint8Array): Packable {
  const length = new DataView(bytes.buffer, bytes.byteOffset).getUint32(0, true)
  // A decoder takes no shared memory: the header is copied.
  const header: Header = JSON.parse(Buffer.from(bytes.slice(LENGTH_BYTES, LENGTH_BYTES + length)).toString())
  const first = bytes.byteOffset + beginningOf(header)
  const arrays = header.arrays.map(({ type, length, at }) => arrayOn(type, bytes.buffer, first + at, length))
  const read = (written: Written): PackedArray | number | Packable => {
    if (typeof written === 'number') return written
    if (Array.isArray(written)) return arrays[written[0]]
    return Object.fromEntries(Object.entries(written).map(([key, each]) => [key, read(each)]))
  }
  const value = read(header.tree)
  assert(typeof value === 'object' && !ArrayBuffer.isView(value), 'what was packed is an object')
  return value
}

function arrayOn(type: ArrayPlace['type'], memory: ArrayBufferLike, at: number, length: number): PackedArray {
  const ArrayType: new (memory: ArrayBufferLike, at: number, length: number) => PackedArray = ARRAY_TYPES[type]
  return new ArrayType(memory, at, length)
}

function laidOut(value: Packable): { header: Header; arrays: PackedArray[] } {
  const arrays: PackedArray[] = []
  const write = (part: PackedArray | number | Packable): Written => {
    if (typeof part === 'number') return part
    if (!ArrayBuffer.isView(part)) {
      return Object.fromEntries(Object.entries(part as Packable).map(([key, each]) => [key, write(each)]))
    }
    const array = part as PackedArray
    const index = arrays.indexOf(array)
    return [index === -1 ? arrays.push(array) - 1 : index]
  }
  const tree = write(value)
  let at = 0
  const places = arrays.map((array): ArrayPlace => {
    const place = { type: array.constructor.name as ArrayPlace['type'], length: array.length, at }
    at = aligned(at + array.byteLength)
    return place
  })
  return { header: { arrays: places, tree }, arrays }
}

/** Where the first array begins. */
function beginningOf(header: Header): number {
  return aligned(LENGTH_BYTES + Buffer.byteLength(JSON.stringify(header)))
}

function aligned(at: number): number {
  return Math.ceil(at / ALIGNMENT_BYTES) * ALIGNMENT_BYTES
}
