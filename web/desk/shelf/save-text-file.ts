/** Hands a text to the browser as a file to keep. Works on plain HTTP too, and nothing leaves the page. */

/** Longer names are cut by some systems. */
const NAME_LENGTH_MAX = 60

export function saveTextFile(title: string, ending: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = `${fileName(title)}.${ending}`
  link.click()
  // The browser has taken the text by then; a minute is long for any of them.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}

/** @returns a name that every system takes: letters, figures and dashes of any script */
export function fileName(title: string): string {
  const name = title
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, NAME_LENGTH_MAX)
  return name === '' ? 'fairturn' : name
}
