/** Par of a sample start, looked up in this browser: the table, 14 kB on the way, is fetched when the first start is shown. */

import { useEffect, useState } from 'react'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import type { StageSpan } from '../../../engine/method/stages.ts'
import { openParTables, type ParTables } from '../../../engine/search/par/open-par-tables.ts'

/** @returns par in turns; null until it is known, and for several stages at once, which only the server can search */
export function useSamplePar(start: CubePosition | null, { from, to }: StageSpan): number | null {
  const [tables, setTables] = useState<ParTables | null>(null)
  useEffect(() => {
    let isWanted = true
    openParTables().then(
      // Without the table the sample is shown as it is; the server knows par when the round begins.
      (opened) => {
        if (isWanted && opened.ok) setTables(opened.value)
      },
      () => {},
    )
    return () => {
      isWanted = false
    }
  }, [])
  return tables === null || start === null || from !== to ? null : tables.parOf(start, to)
}
