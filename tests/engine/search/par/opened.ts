/** The shipped tables, opened; a fault here is a failed test. */

import type { Result } from '../../../../engine/result.ts'
import { openParTables } from '../../../../engine/search/par/open-par-tables.ts'
import { openShortestSolutions } from '../../../../engine/search/par/open-shortest-solutions.ts'

export const PARS = opened(await openParTables())

export const SOLUTIONS = opened(await openShortestSolutions())

function opened<T>(result: Result<T, unknown>): T {
  if (!result.ok) throw new Error(`The tables cannot be opened: ${JSON.stringify(result.error)}`)
  return result.value
}
