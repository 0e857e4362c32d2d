/** Search tables, filled once for the tests of a file. */

import {
  fillTable,
  type TableBytes,
  type TableName,
  tableLength,
} from '../../../../engine/search/tables/search-tables.ts'

export function filledSearchTables(names: readonly TableName[]): TableBytes {
  return Object.fromEntries(
    names.map((name) => {
      const bytes = new Uint8Array(tableLength(name))
      fillTable(name, bytes)
      return [name, bytes]
    }),
  )
}
