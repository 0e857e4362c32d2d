/** Reads lines as they come, with a bound on their length: a file without line ends must not fill the memory. */

/** A line, or its beginning when it is too long. */
export type ReadLine = { readonly text: string; readonly isTooLong: boolean }

/**
 * @param input text in pieces of any size
 * @param charactersMax longer lines are cut to this
 * @returns the lines without their ends (line feed, with or without a carriage return before it)
 */
export async function* readLines(input: AsyncIterable<string>, charactersMax: number): AsyncGenerator<ReadLine> {
  let begun = ''
  for await (const piece of input) {
    const parts = piece.split('\n')
    for (const [index, part] of parts.entries()) {
      if (begun.length <= charactersMax) begun += part
      if (index === parts.length - 1) break
      yield finished(begun, charactersMax)
      begun = ''
    }
  }
  if (begun !== '') yield finished(begun, charactersMax)
}

function finished(line: string, charactersMax: number): ReadLine {
  const text = line.endsWith('\r') ? line.slice(0, -1) : line
  return { text: text.slice(0, charactersMax), isTooLong: text.length > charactersMax }
}
