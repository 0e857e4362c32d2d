/** Runs the writer's thread from its source, for development and tests; the built server uses the bundled thread. */

import { register } from 'tsx/esm/api'

register()
await import('./sqlite-thread.ts')
