/** A room code as it is read aloud: its two syllables apart. */
export function codeInSyllables(code: string): string {
  return `${code.slice(0, 3)} ${code.slice(3)}`
}
