/**
 * The key of the viewer link. It comes behind the # of the address, is taken out of it at once, and lives in this tab only:
 * a photo of the projector's address bar gives nobody a right.
 */

const KEPT_AS = 'fairturn.viewer'

export function keepViewerKey(): string | null {
  const fresh = window.location.hash.slice(1)
  try {
    if (fresh === '') return window.sessionStorage.getItem(KEPT_AS)
    window.sessionStorage.setItem(KEPT_AS, fresh)
  } catch {
    // Without storage the board lasts until the page is loaded again.
  }
  if (fresh === '') return null
  window.history.replaceState(window.history.state, '', window.location.pathname)
  return fresh
}
