/** Which cube, and whether it is ready: what was chosen, what the server knows, what was done. Rules BE: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { stepOf } from '../../../engine/contest/steps.ts'
import { cubeInHand, isCubeReady, type OwnChoices, readHand } from '../../../web/bench/own-choices.ts'

const NO_CHOICES: OwnChoices = { pickedRound: null, cube: null, ready: null }
const NOT_READY = { me: { ready: false } } as Parameters<typeof cubeInHand>[2]
const READY = { me: { ready: true } } as Parameters<typeof cubeInHand>[2]
const UNTURNED = { steps: [] }
const TURNED = { steps: [stepOf('R')] }

describe('which cube', () => {
  test('[BE12] a round for the screen or for real cubes asks nobody', () => {
    for (const view of [NOT_READY, READY]) {
      expect(cubeInHand({ cube: 'screen' }, { ...NO_CHOICES, cube: 'own' }, view, TURNED)).toBe('screen')
      expect(cubeInHand({ cube: 'real' }, { ...NO_CHOICES, cube: 'screen' }, view, UNTURNED)).toBe('own')
    }
  })

  // Rows: chosen on this page, ready as the server has it, turned: which cube.
  test.each([
    [null, false, false, null],
    ['own', false, false, 'own'],
    ['screen', true, false, 'screen'],
    [null, true, false, 'own'],
    [null, false, true, 'screen'],
    [null, true, true, 'own'],
  ] as const)('[BE12] left open, chosen %s, ready %s, turned %s: %s', (cube, ready, hasTurned, inHand) => {
    const own = { ...NO_CHOICES, cube }
    expect(cubeInHand({ cube: 'either' }, own, ready ? READY : NOT_READY, hasTurned ? TURNED : UNTURNED)).toBe(inHand)
  })
})

describe('whether it is ready', () => {
  // Rows: said on this page, as the server has it, turned: ready.
  test.each([
    [null, false, false, false],
    [null, true, false, true],
    [null, false, true, true],
    [false, true, true, false],
    [true, false, false, true],
  ] as const)('[BE12] said %s, known as %s, turned %s: %s', (said, known, hasTurned, ready) => {
    const own = { ...NO_CHOICES, ready: said }
    expect(isCubeReady(own, known ? READY : NOT_READY, hasTurned ? TURNED : UNTURNED)).toBe(ready)
  })
})

test.each([
  ['nothing', null, null, null],
  ['no record', 'own', null, null],
  ['another word', { cube: 'wood', ready: 1 }, null, null],
  ['a choice', { cube: 'own', ready: true }, 'own', true],
])('[BE12] kept: %s', (_, kept, cube, ready) => {
  expect(readHand(kept)).toEqual({ cube, ready })
})
