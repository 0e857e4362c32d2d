/** The one place that reads the environment. All faults are listed together, each with what to do. */

import { resolve } from 'node:path'
import { z } from 'zod'

const schema = z.object({
  PORT: z.coerce.number().int().min(0).max(65_535).default(3_000),
  HOST: z.string().min(1).default('0.0.0.0'),
  PUBLIC_URL: z.url({ protocol: /^https?$/ }).optional(),
  DATA_DIR: z.string().min(1).default('./data'),
  TABLES_DIR: z.string().min(1).optional(),
  LOG_LEVEL: z.enum(['silent', 'fatal', 'error', 'warn', 'info', 'debug']).default('warn'),
})

export type Config = {
  readonly port: number
  readonly host: string
  /** Where browsers reach the server, when that is not this machine's own address: behind a proxy, with TLS. */
  readonly publicUrl: URL | null
  readonly dataDir: string
  /** Search tables are kept in its folder `search-tables`: 106 MB that several servers of one machine may share. */
  readonly tablesDir: string
  readonly logLevel: z.output<typeof schema>['LOG_LEVEL']
}

/** @returns the configuration, or a sentence for each fault */
export function readConfig(env: NodeJS.ProcessEnv): { ok: true; config: Config } | { ok: false; faults: string[] } {
  const parsed = schema.safeParse(Object.fromEntries(Object.entries(env).filter(([, value]) => value !== '')))
  if (!parsed.success) {
    return {
      ok: false,
      faults: parsed.error.issues.map((issue) => `${issue.path.join('.')} is not usable: ${issue.message}.`),
    }
  }
  const { PORT, HOST, PUBLIC_URL, DATA_DIR, TABLES_DIR, LOG_LEVEL } = parsed.data
  return {
    ok: true,
    config: {
      port: PORT,
      host: HOST,
      publicUrl: PUBLIC_URL === undefined ? null : new URL(PUBLIC_URL),
      dataDir: resolve(DATA_DIR),
      tablesDir: resolve(TABLES_DIR ?? DATA_DIR),
      logLevel: LOG_LEVEL,
    },
  }
}
