/** Writes lines to standard output, no faster than they are taken; when nobody takes them any more, the program ends. */

import { once } from 'node:events'

/** Called once, before anything is printed: `head` and its like close the pipe when they have enough, which is no fault. */
export function endWhenNobodyReads(): void {
  process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
    if (fault.code !== 'EPIPE') process.stderr.write(`standard output cannot be written (${fault.code})\n`)
    process.exit(fault.code === 'EPIPE' ? process.exitCode : 1)
  })
}

/** Prints a value as one line of JSON. Settles when more can be taken. */
export function printValue(value: object): Promise<void> {
  return printText(`${JSON.stringify(value)}\n`)
}

/** Prints text as it is. */
export async function printText(text: string): Promise<void> {
  if (!process.stdout.write(text)) await once(process.stdout, 'drain')
}
