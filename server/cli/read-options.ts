/** Reads the options of a command. Every fault is one line that names the argument and its place. */

import { parseArgs } from 'node:util'
import { err, ok, type Result } from '../../engine/result.ts'
import type { InputFault } from './read-input.ts'

/** The options that a command knows: a `text` has a value behind it, a `flag` has none. */
export type OptionKinds = Readonly<Record<string, 'text' | 'flag'>>

/** What was given: the text of each option, '' for a flag, and what stands there without an option's name. */
export type GivenOptions = {
  readonly texts: Readonly<Partial<Record<string, string>>>
  readonly bare: readonly string[]
}

/** Longest piece of an argument that a fault repeats, in characters. */
const SHOWN_MAX = 40

/**
 * @param args behind the command, which is argument 1
 * @param nBareMax how many arguments may stand without an option's name
 */
export function readOptions(
  command: string,
  args: readonly string[],
  kinds: OptionKinds,
  nBareMax = 0,
): Result<GivenOptions, InputFault> {
  const { tokens } = parseArgs({
    args: [...args],
    options: Object.fromEntries(
      Object.entries(kinds).map(([name, kind]) => [name, { type: kind === 'text' ? 'string' : 'boolean' } as const]),
    ),
    strict: false,
    tokens: true,
  })
  const texts: Partial<Record<string, string>> = {}
  const bare: string[] = []
  for (const token of tokens) {
    const place = `argument ${token.index + 2}`
    if (token.kind === 'option-terminator') continue
    if (token.kind === 'positional') {
      bare.push(token.value)
      if (bare.length > nBareMax) return err(`${shown(token.value)} (${place}) belongs to no option of ${command}`)
      continue
    }
    const { name, rawName, value } = token
    const kind = Object.hasOwn(kinds, name) && rawName.startsWith('--') ? kinds[name] : undefined
    if (kind === undefined) return err(`${shown(rawName)} (${place}) is no option of ${command}`)
    if (texts[name] !== undefined) return err(`${rawName} (${place}) is given twice`)
    if (kind === 'flag' && value !== undefined) return err(`${rawName} (${place}) takes no value`)
    // A value that looks like an option is one: the value is missing.
    const isMissing = kind === 'text' && (value === undefined || (!token.inlineValue && value.startsWith('--')))
    if (isMissing) return err(`${rawName} (${place}) has no value behind it`)
    texts[name] = value ?? ''
  }
  return ok({ texts, bare })
}

/** @returns the text in quotation marks, cut to a length that fits on a line, control characters made visible */
export function shown(text: string): string {
  const characters = [...text.slice(0, 2 * SHOWN_MAX)]
  const cut = characters.length > SHOWN_MAX || text.length > 2 * SHOWN_MAX
  const head = characters.slice(0, SHOWN_MAX).join('')
  return `${JSON.stringify(head).replaceAll('\\"', '"')}${cut ? '…' : ''}`
}
