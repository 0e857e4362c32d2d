/** Builds the server into dist/server and the pages into dist/web. */

import { rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build as bundle } from 'esbuild'
import { build as buildPages } from 'vite'

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..')

rmSync(join(ROOT, 'dist'), { recursive: true, force: true })
await bundle({
  absWorkingDir: ROOT,
  entryPoints: {
    main: 'server/main.ts',
    'sqlite-thread': 'server/store/sqlite-thread.ts',
    'search-thread': 'server/search/search-thread.ts',
    cube: 'server/cli/main.ts',
  },
  outdir: 'dist/server',
  bundle: true,
  packages: 'external',
  platform: 'node',
  target: 'node20',
  format: 'esm',
  sourcemap: 'linked',
  logLevel: 'error',
})
await buildPages({ configFile: join(ROOT, 'web', 'vite.config.ts'), logLevel: 'error' })
