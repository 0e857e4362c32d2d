/**
 * The one shape in which a function of the engine says "yes, here" or "no, because".
 * A refusal is data with a stable code; an exception is our own bug.
 */

/** Yes, here. */
export type Ok<T> = { readonly ok: true; readonly value: T }
/** No, because. */
export type Err<E> = { readonly ok: false; readonly error: E }
/** One of the two; `ok` tells which. */
export type Result<T, E> = Ok<T> | Err<E>

/** @returns the answer "yes" with its value */
export function ok<T>(value: T): Ok<T> {
  return { ok: true, value }
}

/** @returns the answer "no" with its reason */
export function err<const E>(error: E): Err<E> {
  return { ok: false, error }
}

/** Throws when our own reasoning was wrong. Never used for what a person sent. */
export function assert(condition: unknown, what: string): asserts condition {
  if (!condition) throw new Error(`Assertion failed: ${what}`)
}

/** Makes a switch exhaustive: the compiler refuses the call while a case is missing. */
export function neverHappens(value: never, where: string): never {
  throw new Error(`Unhandled case in ${where}: ${JSON.stringify(value)}`)
}
