/** Phase 1 and the search in two phases. Rules SE: tests/RULES.md; the whole row of phase 1: tests/published. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { type CubePosition, solvedCube } from '../../../../engine/cube/cube-position.ts'
import { asHeldHome } from '../../../../engine/cube/hold.ts'
import { conjugatePosition } from '../../../../engine/cube/symmetry.ts'
import { FACE_TURNS, turnLetters } from '../../../../engine/cube/turns.ts'
import { drawArrangement } from '../../../../engine/method/draw-start.ts'
import {
  isWithinPhase1,
  phase1CoordinatesOf,
  phase1Distance,
} from '../../../../engine/search/two-phase/phase-1-distances.ts'
import { PHASE_2_TURNS } from '../../../../engine/search/two-phase/phase-2-distances.ts'
import { searchTwoPhase } from '../../../../engine/search/two-phase/two-phase-search.ts'
import { aPosition, cubeAfter, SEED, turns } from '../../cube/arbitraries.ts'
import { sourceNumbered } from '../../method/starts.ts'
import { afterNodes, filledTables } from './two-phase-tables.ts'

const tables = filledTables()

/** Fewer than a slow machine looks at in 200 ms; one position in fifty needs more for its first word. */
const NODES = 500_000

const homePosition = aPosition.map(asHeldHome)
const inSubgroup = fc
  .array(fc.constantFrom(...PHASE_2_TURNS), { maxLength: 30 })
  .map((word) => afterTurns(solvedCube(), word))

function phase1Of(position: CubePosition): number {
  const { twist, flip, slice } = phase1CoordinatesOf(position)
  return phase1Distance(tables.phase1, tables.phase1Distances, twist, flip, slice)
}

function search(position: CubePosition, nNodes: number, wish = {}) {
  return searchTwoPhase({ tables, position, isOver: afterNodes(nNodes), ...wish })
}

test('[SE26] phase 1 is done in the subgroup of its turns, and a single turn of another kind leads one away', () => {
  fc.assert(
    fc.property(inSubgroup, fc.constantFrom(...turns("R L' F B'")), (position, turn) => {
      expect(phase1Of(position)).toBe(0)
      expect(phase1Of(afterTurns(position, [turn]))).toBe(1)
    }),
    { seed: SEED },
  )
})

test('[SE26] some turn brings phase 1 nearer to its end, and none changes its distance by more than one', () => {
  fc.assert(
    fc.property(homePosition, (position) => {
      const changes = FACE_TURNS.map((turn) => phase1Of(afterTurns(position, [turn])) - phase1Of(position))
      if (phase1Of(position) > 0) expect(Math.min(...changes)).toBe(-1)
      expect(Math.max(...changes)).toBeLessThanOrEqual(1)
    }),
    { seed: SEED, numRuns: 1_000 },
  )
})

test('[SE26] a short word never leads farther from the end of phase 1 than it is long', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...FACE_TURNS), { maxLength: 10 }), (word) => {
      expect(phase1Of(afterTurns(solvedCube(), word))).toBeLessThanOrEqual(word.length)
    }),
    { seed: SEED },
  )
})

test('[SE26] the sixteen symmetries of the vertical axis leave the distance of phase 1 as it is', () => {
  fc.assert(
    fc.property(homePosition, fc.nat(15), (position, symmetry) => {
      expect(phase1Of(conjugatePosition(position, symmetry))).toBe(phase1Of(position))
    }),
    { seed: SEED },
  )
})

test('[SE26] asking whether phase 1 is within so many turns agrees with its distance', () => {
  fc.assert(
    fc.property(homePosition, fc.nat(12), (position, turnsMax) => {
      const { twist, flip, slice } = phase1CoordinatesOf(position)
      const isWithin = isWithinPhase1(tables.phase1, tables.phase1Distances, twist, flip, slice, turnsMax)
      expect(isWithin).toBe(phase1Of(position) <= turnsMax)
    }),
    { seed: SEED, numRuns: 1_000 },
  )
})

test('[SE27] a word found is of face turns, turns no face twice running, and leads from the solved cube to the position', () => {
  fc.assert(
    fc.property(homePosition, (position) => {
      const word = search(position, 4 * NODES, { turnsEnough: 21 }).turns ?? []
      expect(afterTurns(solvedCube(), word)).toEqual(position)
      expect(word.every((turn) => FACE_TURNS.includes(turn))).toBe(true)
      expect(word.every((turn, index) => index === 0 || turnLetters(turn) !== turnLetters(word[index - 1]))).toBe(true)
    }),
    { seed: SEED, numRuns: 40 },
  )
})

test('[SE27] the solved cube needs no turn, and a cube some turns away no more than these', () => {
  expect(search(solvedCube(), NODES)).toMatchObject({ turns: [] })
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...FACE_TURNS), { maxLength: 8 }), (word) => {
      const found = search(afterTurns(solvedCube(), word), 20 * NODES, { turnsEnough: word.length }).turns
      expect(found?.length).toBeLessThanOrEqual(word.length)
    }),
    { seed: SEED, numRuns: 30 },
  )
})

test('[SE27] the position with every edge flipped, the same from every side and twenty turns away, is reached by longer second phases', () => {
  // Source of the distance: M. Reid, Cube-Lovers mailing list, 18 January 1995.
  const superflip = cubeAfter("R L U2 F U' D F2 R2 B2 L U2 F' B' U R2 D F2 U R2 U")
  const { turns: word } = search(superflip, NODES, { phase2TurnsMax: 12 })
  expect(afterTurns(solvedCube(), word ?? [])).toEqual(superflip)
  expect(word?.length).toBeGreaterThanOrEqual(20)
})

test('[SE28] the same nodes give the same word; more nodes never give a longer one', () => {
  for (let number = 0; number < 10; number++) {
    const position = drawArrangement(1, sourceNumbered(number))
    const [few, again, more] = [NODES, NODES, 3 * NODES].map((nNodes) => search(position, nNodes).turns)
    expect(again).toEqual(few)
    expect(more?.length).toBeLessThanOrEqual(few?.length ?? 30)
  }
})

test('[SE29] bounds on the length are kept, and a word that is short enough ends the search', () => {
  const position = drawArrangement(1, sourceNumbered(1))
  expect(search(position, 10 * NODES, { turnsMin: 23, turnsEnough: 23 }).turns).toHaveLength(23)
  expect(search(position, NODES, { turnsMax: 12 }).turns).toBeNull()
  const { turns: word, nNodes } = search(position, 20 * NODES, { turnsEnough: 21 })
  expect(word?.length).toBeLessThanOrEqual(21)
  expect(nNodes).toBeLessThan(4 * NODES)
})

test('[SE29] words that are refused are passed over', () => {
  const position = cubeAfter("R U R' U'")
  const refused: string[] = []
  const accepts = (word: readonly number[]) => {
    if (refused.length < 100) refused.push(word.join())
    return !refused.includes(word.join())
  }
  const { turns: word } = search(position, 10 * NODES, { accepts })
  expect(refused[0]).toBe(turns("R U R' U'").join())
  expect(word).not.toBeNull()
  expect(refused).not.toContain(word?.join())
  expect(afterTurns(solvedCube(), word ?? [])).toEqual(position)
})

test('[SE29] when the time is up the search ends within one portion of nodes', () => {
  expect(search(drawArrangement(1, sourceNumbered(2)), 0).nNodes).toBeLessThan(3_000)
})

test('[SE31] over a hundred random positions words have at most 21 turns on average, with the nodes of 200 ms', () => {
  const lengths = Array.from({ length: 100 }, (_, number) => {
    const position = drawArrangement(1, sourceNumbered(1_000 + number))
    return search(position, NODES).turns?.length ?? 30
  })
  expect(lengths.reduce((sum, length) => sum + length, 0) / lengths.length).toBeLessThanOrEqual(21)
})
