import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { afterTurns, applyTurn } from '../../../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube, solvedCube } from '../../../../engine/cube/cube-position.ts'
import { inverseTurns, type Turn, turnKind, turnLetters, turnQuarters } from '../../../../engine/cube/turns.ts'
import { goalMet, goalsBeforeMet } from '../../../../engine/method/goals.ts'
import { STAGES, type Stage } from '../../../../engine/method/stages.ts'
import { arrangementClasses } from '../../../../engine/search/par/arrangement-classes.ts'
import { rankArrangement, unrankArrangement } from '../../../../engine/search/par/arrangement-rank.ts'
import { nWords, wordOfNumber } from '../../../../engine/search/par/word-number.ts'
import { SEED, turns } from '../../cube/arbitraries.ts'
import { anArrangementOf } from '../../method/starts.ts'
import { PARS, SOLUTIONS } from './opened.ts'

const CLASSES = STAGES.map(arrangementClasses)
const STORED_STAGES = STAGES.slice(1)
const N_TURNS = 5

const aStart = fc.constantFrom(...STAGES).chain((stage) => anArrangementOf(stage).map((start) => ({ stage, start })))
const reHolds = fc.array(fc.constantFrom(...turns('x y z')), { maxLength: 4 })

/** Half turns first, then faces: what makes one shortest solution kinder to fingers than another. */
const costOf = (word: readonly Turn[]) =>
  word.filter((turn) => turnQuarters(turn) === 2).length * 8 + new Set(word.map(turnLetters)).size

function isShortest(start: CubePosition, stage: Stage): boolean {
  const solution = SOLUTIONS.shortestSolutionOf(start, stage)
  const position = copyCube(start)
  const reachedAfter: number[] = goalMet(position, stage) ? [0] : []
  solution.forEach((turn, index) => {
    applyTurn(position, turn)
    if (goalMet(position, stage)) reachedAfter.push(index + 1)
  })
  const par = PARS.parOf(start, stage)
  return solution.length === par && reachedAfter.length === 1 && reachedAfter[0] === par
}

describe('shortest solutions', () => {
  test.each(STAGES)(
    '[SE9] stage %i: every class has one of par turns that reaches the goal with its last turn',
    (stage) => {
      const wrong = [...CLASSES[stage - 1].firstOf].filter((rank) => !isShortest(unrankArrangement(rank, stage), stage))
      expect(wrong).toEqual([])
    },
  )

  test('[SE9] it is given for every start in every hold, as the turns of whoever holds it so', () => {
    fc.assert(
      fc.property(aStart, reHolds, ({ stage, start }, hold) => {
        const held = afterTurns(start, hold)
        expect(isShortest(held, stage)).toBe(true)
        expect(SOLUTIONS.shortestSolutionOf(held, stage).every((turn) => turnKind(turn) === 'face')).toBe(true)
      }),
      { seed: SEED, numRuns: 500 },
    )
  })

  test('[SE9] asking leaves the position as it is', () => {
    fc.assert(
      fc.property(aStart, ({ stage, start }) => {
        const before = copyCube(start)
        SOLUTIONS.shortestSolutionOf(start, stage)
        expect(start).toEqual(before)
      }),
      { seed: SEED, numRuns: 50 },
    )
  })

  test('[SE10] of all shortest solutions of an arrangement it has the fewest half turns, then the fewest faces, then comes first', () => {
    // Every word of five turns, in order, is the solution of what it makes of the solved cube when it is undone.
    const kindest = new Map<string, Turn[]>()
    for (let number = 0; number < nWords(N_TURNS); number++) {
      const word = wordOfNumber(number, N_TURNS)
      const start = afterTurns(solvedCube(), inverseTurns(word))
      for (const stage of STORED_STAGES) {
        if (!goalsBeforeMet(start, stage)) break
        const rank = rankArrangement(start, stage)
        const { classOf, firstOf } = CLASSES[stage - 1]
        expect(PARS.parOf(start, stage)).toBeLessThanOrEqual(N_TURNS)
        if (rank !== firstOf[classOf[rank]] || PARS.parOf(start, stage) < N_TURNS) continue
        const key = `${stage} ${rank}`
        const known = kindest.get(key)
        if (known === undefined || costOf(word) < costOf(known)) kindest.set(key, word)
      }
    }
    const given = STORED_STAGES.flatMap((stage) =>
      [...CLASSES[stage - 1].firstOf].flatMap((rank) => {
        const start = unrankArrangement(rank, stage)
        if (PARS.parOf(start, stage) !== N_TURNS) return []
        return [[`${stage} ${rank}`, SOLUTIONS.shortestSolutionOf(start, stage)] as const]
      }),
    )
    expect(given.length).toBeGreaterThan(30)
    expect(new Map(given)).toEqual(kindest)
  })
})
