/**
 * Corners first met after n turns from home, whole rows.
 *
 * Sources: corners in quarter turns, OEIS A080630; corners of three faces alone, which are the puzzle of two layers, OEIS
 * A079761 (face turns) and A079762 (quarter turns). Corners in face turns: computed by an exhaustive count in another
 * language; their mean as in R. E. Korf, Finding Optimal Solutions to Rubik's Cube Using Pattern Databases, AAAI 1997.
 */

import { expect, test } from 'vitest'
import { FACE_TURNS, type Turn, turnAxis, turnQuarters } from '../../engine/cube/turns.ts'
import { readDistance } from '../../engine/search/two-phase/class-twist-distances.ts'
import { N_FACE_TURNS } from '../../engine/search/two-phase/coordinate.ts'
import { buildCornerTables, CORNER_BYTES, fillCornerDistances } from '../../engine/search/two-phase/corner-distances.ts'
import { N_TWISTS } from '../../engine/search/two-phase/orientation.ts'
import { classesWithTwists, classSizes } from './class-weights.ts'
import { countLayers } from './count-layers.ts'

const N_CORNER_ARRANGEMENTS = 88_179_840

const tables = buildCornerTables()
const { twistTurns, cornerOrders, cornerOrderTurns } = tables
const orderAfter = (order: number, turn: number) => cornerOrderTurns[order * N_FACE_TURNS + turn]
const isQuarter = (turn: Turn) => turnQuarters(turn) !== 2

test('[SE24] the table of the corners holds as many entries at each distance as counted, and the published mean', () => {
  const distances = new Uint8Array(CORNER_BYTES)
  fillCornerDistances(tables, distances)
  const counts: number[] = new Array(12).fill(0)
  for (const [classNumber, size] of classSizes(cornerOrders).entries()) {
    for (let twist = 0; twist < N_TWISTS; twist++) counts[readDistance(distances, classNumber, twist)] += size
  }
  expect(counts).toEqual([
    1, 18, 243, 2_874, 28_000, 205_416, 1_168_516, 5_402_628, 20_776_176, 45_391_616, 15_139_616, 64_736,
  ])
  const sum = counts.reduce((total, count, distance) => total + count * distance, 0)
  expect(sum / N_CORNER_ARRANGEMENTS).toBeCloseTo(8.76413, 5)
})

test('[SE24] corners in quarter turns are first met as published', () => {
  const turns = FACE_TURNS.filter(isQuarter)
  expect(countLayers(classesWithTwists(cornerOrders, tables, 0, turns, orderAfter))).toEqual([
    1, 12, 114, 924, 6_539, 39_528, 199_926, 806_136, 2_761_740, 8_656_152, 22_334_112, 32_420_448, 18_780_864,
    2_166_720, 6_624,
  ])
})

/** Turns of three faces leave the corner between the other three where it is: the rest is the puzzle of two layers. */
const threeFaces = FACE_TURNS.filter((turn) => 'URF'.includes(turnAxis(turn)))
const cornersOfThreeFaces = (turns: readonly Turn[]) => ({
  nRanks: N_CORNER_ARRANGEMENTS,
  home: 0,
  nTurns: turns.length,
  rankAfter: (rank: number, index: number) => {
    const twist = rank % N_TWISTS
    return (
      orderAfter((rank - twist) / N_TWISTS, turns[index]) * N_TWISTS + twistTurns[twist * N_FACE_TURNS + turns[index]]
    )
  },
})

test('[SE24] corners of the puzzle of two layers in face turns are first met as published', () => {
  expect(countLayers(cornersOfThreeFaces(threeFaces))).toEqual([
    1, 9, 54, 321, 1_847, 9_992, 50_136, 227_536, 870_072, 1_887_748, 623_800, 2_644,
  ])
})

test('[SE24] corners of the puzzle of two layers in quarter turns are first met as published', () => {
  expect(countLayers(cornersOfThreeFaces(threeFaces.filter(isQuarter)))).toEqual([
    1, 6, 27, 120, 534, 2_256, 8_969, 33_058, 114_149, 360_508, 930_588, 1_350_852, 782_536, 90_280, 276,
  ])
})
