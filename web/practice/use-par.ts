/** Par of a start, looked up in this page, in tables that fetch-ahead.ts has brought. */

import { useEffect, useState } from 'react'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import type { Stage } from '../../engine/method/stages.ts'
import { openParTables, type ParTables } from '../../engine/search/par/open-par-tables.ts'

/** @returns par in turns; null until it is known, or for ever where the tables cannot be had */
export function usePar(start: CubePosition, stage: Stage): number | null {
  const [tables, setTables] = useState<ParTables | null>(null)
  useEffect(() => {
    let isWanted = true
    openParTables().then(
      (opened) => {
        if (isWanted && opened.ok) setTables(opened.value)
      },
      // Practice goes on without par.
      () => {},
    )
    return () => {
      isWanted = false
    }
  }, [])
  return tables === null ? null : tables.parOf(start, stage)
}
