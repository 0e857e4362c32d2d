/** The pars of all starts of a single stage, looked up in this browser: 14 kB on the way, fetched when they are first needed. */

import { useCallback, useEffect, useState } from 'react'
import { openParTables, type ParTables } from '../../../engine/search/par/open-par-tables.ts'

export type ParTablesState = {
  /** Null until they are there. */
  readonly tables: ParTables | null
  /** They did not come, as when the net is gone. */
  readonly failed: boolean
  readonly tryAgain: () => void
}

export function useParTables(): ParTablesState {
  const [tables, setTables] = useState<ParTables | null>(null)
  const [failed, setFailed] = useState(false)
  const [attempt, setAttempt] = useState(0)
  // biome-ignore lint/correctness/useExhaustiveDependencies: each attempt asks anew.
  useEffect(() => {
    let isWanted = true
    const took = (opened: Awaited<ReturnType<typeof openParTables>> | null) => {
      if (!isWanted) return
      if (opened?.ok === true) setTables(opened.value)
      setFailed(opened?.ok !== true)
    }
    openParTables().then(took, () => took(null))
    return () => {
      isWanted = false
    }
  }, [attempt])
  return { tables, failed, tryAgain: useCallback(() => setAttempt((n) => n + 1), []) }
}
