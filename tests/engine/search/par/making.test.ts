import { createHash } from 'node:crypto'
import { describe, expect, test } from 'vitest'
import { unrankArrangement } from '../../../../engine/search/par/arrangement-rank.ts'
import { meetInTheMiddle } from '../../../../engine/search/par/making/meet-in-the-middle.ts'
import { makePlaceTables } from '../../../../engine/search/par/making/place-tables.ts'
import { spreadFromCross } from '../../../../engine/search/par/making/spread-from-cross.ts'
import { PAR_TABLE_DATA } from '../../../../engine/search/par/par-table-data.ts'
import { readBase64 } from '../../../../engine/search/par/read-base64.ts'
import { SHORTEST_SOLUTION_DATA } from '../../../../engine/search/par/shortest-solution-data.ts'
import { readStagePars, type StagePars } from '../../../../engine/search/par/stage-pars.ts'
import { numberOfWord } from '../../../../engine/search/par/word-number.ts'
import { SOLUTIONS } from './opened.ts'

const sha256 = (bytes: Uint8Array | undefined) =>
  createHash('sha256')
    .update(bytes ?? '')
    .digest('hex')

function shipped(): StagePars[] {
  const read = readStagePars(PAR_TABLE_DATA)
  if (!read.ok) throw new Error(`The tables cannot be read: ${read.error.code}`)
  return read.value
}

/** Runs a computation to its end; tells how far it said it was. */
function finished<T>(making: Generator<number, T>): { value: T; shares: number[] } {
  const shares: number[] = []
  for (let step = making.next(); ; step = making.next()) {
    if (step.done) return { value: step.value, shares }
    shares.push(step.value)
  }
}

describe('the making of the tables', () => {
  // Origin: printed by the maker; both modules were made twice, from nothing, with the same bytes.
  test('[SE11] the shipped bytes are those that the maker gives', () => {
    expect(sha256(readBase64(PAR_TABLE_DATA.base64))).toBe(
      '741554e6c54534c1a32b623094c205bcf9fadbf12d7d7077052950b1ce58ed1e',
    )
    expect(sha256(readBase64(SHORTEST_SOLUTION_DATA.base64))).toBe(
      '2282f693811bb6848a6302f46a2ab3dd9ae701590d55b9d9e18f24f9c018e263',
    )
  })

  test('[SE11] stages 1, 4 and 5 made anew are the stages that are shipped', () => {
    const tables = makePlaceTables()
    const stages = [4, 5] as const
    const known = shipped()
    expect(spreadFromCross(tables)).toEqual(known[0].ofClasses)

    const { value, shares } = finished(meetInTheMiddle({ tables, stages, turnsMax: 11 }))
    stages.forEach((stage, index) => {
      const { ofClasses, classes } = known[stage - 1]
      expect(value[index].pars).toEqual(ofClasses)
      const words = Float64Array.from(classes.firstOf, (first) =>
        numberOfWord(SOLUTIONS.shortestSolutionOf(unrankArrangement(first, stage), stage)),
      )
      expect(value[index].words).toEqual(words)
    })
    expect(shares).toEqual([...shares].sort((a, b) => a - b))
    expect(shares[shares.length - 1]).toBe(1)
  })
})
