/** Runs a thread that searches from its source, for development and tests; the built server uses the bundled thread. */

import { register } from 'tsx/esm/api'

register()
export default (await import('./search-thread.ts')).default
