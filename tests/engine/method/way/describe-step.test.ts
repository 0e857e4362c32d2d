import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../../engine/cube/cube-position.ts'
import { EDGES_AT } from '../../../../engine/cube/cube-position.ts'
import { centreAt } from '../../../../engine/cube/hold.ts'
import { EDGE_PLACES } from '../../../../engine/cube/piece-places.ts'
import { CLASSIC_BOOK } from '../../../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { caseOf, LAST_LAYER_STAGES } from '../../../../engine/method/cases.ts'
import { BASE_EDGES } from '../../../../engine/method/goal-part.ts'
import { goalMet } from '../../../../engine/method/goals.ts'
import { arrangementsOf } from '../../../../engine/method/last-layer-arrangements.ts'
import { PIECE_CASES_OF_STAGE, PIECE_STAGES } from '../../../../engine/method/piece-cases.ts'
import type { LookedForPiece } from '../../../../engine/method/way/lesson-step.ts'
import { lessonSteps } from '../../../../engine/method/way/lesson-steps.ts'
import { aPosition, SEED, turns } from '../../cube/arbitraries.ts'
import { ROUNDABOUT } from '../book/books.ts'
import { isHome, leastToBringHome } from './bring-home.ts'
import { colourAt, nSequencesLeft, placeOfColours, SIDE_HOLDS, walk } from './walk-steps.ts'

const aBook = fc.constantFrom(LESSON_BOOK, CLASSIC_BOOK)
const someRuns = { seed: SEED, numRuns: 150 }

test('[LW11] what a step says to look for is there: the case, and the piece with its colours', () => {
  fc.assert(
    fc.property(aPosition, aBook, (position, book) => {
      walk(position, lessonSteps(position, { from: 1, to: 7 }, book), ({ stage, lookFor }, before) => {
        if (lookFor.key === 'look/base-not-down') {
          expect(centreAt(before, 'D')).not.toBe('D')
          return
        }
        expect(centreAt(before, 'D')).toBe('D')
        expect(lookFor.key).toBe(`look/${lookFor.caseId}`)
        if (lookFor.piece === null) {
          expect(lookFor.caseId).toBe(caseOf(before, stage as 4))
          return
        }
        const { home, at, colours } = lookFor.piece
        expect(PIECE_CASES_OF_STAGE[stage as 1]).toContain(lookFor.caseId)
        expect([...colours.map(({ colour }) => colour)].sort()).toEqual([...home].sort())
        expect([...colours.map(({ facing }) => facing)].sort()).toEqual([...at].sort())
        for (const { colour, facing } of colours) expect(colourAt(before, at, facing)).toBe(colour)
      })
    }),
    someRuns,
  )
})

/** The case by its meaning, read off the stickers; the piece is not home. */
function caseByEye(before: CubePosition, { at, colours }: LookedForPiece): string {
  const base = colours.find(({ colour }) => colour === 'D')
  const isAbove = at.includes('U')
  const isAtHome = [...at].every((face) => colours.some(({ colour }) => colour === centreAt(before, face as 'U')))
  if (colours.length === 3) {
    if (!isAbove) return isAtHome ? 'corner-below-turned' : 'corner-below-elsewhere'
    if (base?.facing === 'U') return 'corner-above-facing-up'
    // Held so that the corner is at the front right.
    const held = holdWhere(
      before,
      (each) =>
        sorted(
          placeOfColours(
            each,
            colours.map(({ colour }) => colour),
          ),
        ) === 'FRU',
    )
    return colourAt(held, 'URF', 'R') === 'D' ? 'corner-above-facing-right' : 'corner-above-facing-front'
  }
  if (base !== undefined) {
    if (isAbove) return base.facing === 'U' ? 'edge-above-facing-up' : 'edge-above-facing-side'
    if (!at.includes('D')) return 'edge-between'
    return isAtHome ? 'edge-below-turned' : 'edge-below-elsewhere'
  }
  if (!isAbove) return isAtHome ? 'edge-beside-turned' : 'edge-beside-elsewhere'
  // Held so that the centre with the colour of its side is in front, the centre with its colour on top is right or left.
  const onTop = colours.find(({ facing }) => facing === 'U')?.colour
  const onSide = colours.find(({ facing }) => facing !== 'U')?.colour
  const held = holdWhere(before, (each) => centreAt(each, 'F') === onSide)
  return centreAt(held, 'R') === onTop ? 'edge-to-right' : 'edge-to-left'
}

function holdWhere(position: CubePosition, isWanted: (held: CubePosition) => boolean): CubePosition {
  const found = SIDE_HOLDS.map((reHold) => afterTurns(position, turns(reHold))).find(isWanted)
  if (found === undefined) throw new Error('one of the four sides is the wanted one')
  return found
}

function sorted(name: string): string {
  return [...name].sort().join('')
}

test('[LW11] the case of a piece is what the eye sees', () => {
  const seen = new Set<string>()
  fc.assert(
    fc.property(aPosition, (position) => {
      walk(position, lessonSteps(position, { from: 1, to: 3 }), ({ lookFor }, before) => {
        if (lookFor.key === 'look/base-not-down' || lookFor.piece === null) return
        expect(lookFor.caseId).toBe(caseByEye(before, lookFor.piece))
        seen.add(lookFor.caseId)
      })
    }),
    someRuns,
  )
  expect(seen).toEqual(new Set(PIECE_STAGES.flatMap((stage) => PIECE_CASES_OF_STAGE[stage])))
})

test('[LW11] a step of stages 1 to 3 says why: what comes true after it', () => {
  fc.assert(
    fc.property(aPosition, aBook, (position, book) => {
      walk(position, lessonSteps(position, { from: 1, to: 3 }, book), ({ why, lookFor }, before, after) => {
        if (why.key === 'why/base-belongs-down') expect(centreAt(after, 'D')).toBe('D')
        if (lookFor.key === 'look/base-not-down' || lookFor.piece === null) return
        const at = placeOfColours(after, [...lookFor.piece.home])
        const isThere = [...at].every((face) => colourAt(after, at, face) === centreAt(after, face as 'U'))
        expect(why.key === 'why/piece-home').toBe(isThere)
        if (why.key === 'why/piece-out') {
          expect(at).toContain('U')
          expect(placeOfColours(before, [...lookFor.piece.home])).not.toContain('U')
        }
      })
    }),
    someRuns,
  )
})

test('[LW11] a piece that is said to be nearer its home needs fewer sequences then', () => {
  let nNearer = 0
  fc.assert(
    fc.property(aPosition, (position) => {
      walk(position, lessonSteps(position, { from: 1, to: 1 }, ROUNDABOUT), ({ why, lookFor }, before, after) => {
        if (why.key !== 'why/piece-nearer' || !('piece' in lookFor)) return
        nNearer++
        const home = EDGES_AT + EDGE_PLACES.findIndex(({ name }) => name === lookFor.piece?.home)
        const done = BASE_EDGES.filter((place) => isHome(before, place))
        const [now, then] = [before, after].map((each) => leastToBringHome(each, 1, home, done, ROUNDABOUT))
        expect(then?.nSequences).toBe((now?.nSequences ?? 0) - 1)
      })
    }),
    { seed: SEED, numRuns: 40 },
  )
  expect(nNearer).toBeGreaterThan(20)
})

test.each(LAST_LAYER_STAGES)(
  '[LW11] a step of stage %i says why: what comes true after it, from all four sides where the hold is free',
  (stage) => {
    for (const book of [LESSON_BOOK, CLASSIC_BOOK]) {
      for (const start of arrangementsOf(stage)) {
        walk(start, lessonSteps(start, { from: stage, to: stage }, book), (step, before) => {
          const { hold, why } = step
          const sides = hold.mark.key === 'hold/any' ? SIDE_HOLDS.map(turns) : [hold.turns]
          const afterwards = sides.map((reHold) => afterTurns(before, [...reHold, ...step.do.turns]))
          const cases = afterwards.map((after) => caseOf(after, stage))
          expect(afterwards.every((after) => goalMet(after, stage))).toBe(why.key === 'why/stage-done')
          if (why.key === 'why/case-becomes') expect(new Set(cases)).toEqual(new Set([why.caseId]))
          if (why.key === 'why/fewer-sequences') expect(new Set(cases).size).toBeGreaterThan(1)
          const nSequences = nSequencesLeft(before, stage, book) - step.do.nTimes
          for (const after of afterwards) expect(nSequencesLeft(after, stage, book)).toBe(nSequences)
        })
      }
    }
  },
)
