/** A solved cube to turn while waiting. It lives in this page only: nothing is counted, kept or sent. */

import { useMemo, useReducer } from 'react'
import { TAKE_BACK } from '../../engine/contest/steps.ts'
import { applyTurn } from '../../engine/cube/apply-turn.ts'
import { copyCube, solvedCube } from '../../engine/cube/cube-position.ts'
import { inverseTurn, type Turn } from '../../engine/cube/turns.ts'
import type { CubeInHand } from '../cube/turns-between.ts'
import type { HandActs } from '../parts/hands/hand-acts.ts'

export type PracticeStep = Turn | typeof TAKE_BACK | 'start-again'

export function usePracticeCube(): { readonly cube: CubeInHand; readonly acts: HandActs } {
  const [cube, take] = useReducer(practise, null, newPractice)
  const acts = useMemo(
    (): HandActs => ({
      turn: (steps) => {
        for (const step of steps) take(step)
      },
      takeBack: () => take(TAKE_BACK),
      startAgain: () => take('start-again'),
    }),
    [],
  )
  return { cube, acts }
}

export function newPractice(): CubeInHand {
  return { tryNumber: 1, standing: [], position: solvedCube() }
}

export function practise(cube: CubeInHand, step: PracticeStep): CubeInHand {
  if (step === 'start-again') return { ...newPractice(), tryNumber: cube.tryNumber + 1 }
  const position = copyCube(cube.position)
  if (step === TAKE_BACK) {
    const last = cube.standing.at(-1)
    if (last === undefined) return cube
    applyTurn(position, inverseTurn(last))
    return { ...cube, position, standing: cube.standing.slice(0, -1) }
  }
  applyTurn(position, step)
  const standing: Turn[] = [...cube.standing, step]
  return { ...cube, position, standing }
}
