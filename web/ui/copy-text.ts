/**
 * Copies text. On plain HTTP the browser has no clipboard for pages, so a field that nobody sees is selected and copied.
 *
 * @returns whether it worked; where not, the text has to be selected by hand
 */
export async function copyText(text: string): Promise<boolean> {
  if (window.isSecureContext && navigator.clipboard !== undefined) {
    try {
      await navigator.clipboard.writeText(text)
      return true
    } catch {
      // Refused by the browser: the old way may still work.
    }
  }
  return copyBySelection(text)
}

function copyBySelection(text: string): boolean {
  const field = document.createElement('textarea')
  field.value = text
  field.readOnly = true
  field.className = 'visually-hidden'
  // In an open modal dialog nothing outside can be selected.
  const home = document.querySelector('dialog[open]') ?? document.body
  home.append(field)
  const before = document.activeElement
  field.select()
  const copied = document.execCommand('copy')
  field.remove()
  if (before instanceof HTMLElement) before.focus()
  return copied
}
