/** The wall: who is on which page, and the signs that each student gets from their cube. Rules WL: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { RoundId, SeatId } from '../../../../engine/contest/ids.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../../../engine/contest/round-settings.ts'
import { BROKE_IDLE_MS, STUCK_IDLE_MS } from '../../../../engine/contest/student-signs.ts'
import type { RoundView, SeatView, WallCell } from '../../../../engine/wire/views.ts'
import { countSign, PAGE_STUDENTS, studentStates, wallPages } from '../../../../web/desk/wall/wall-students.ts'
import { SEED } from '../../../engine/cube/arbitraries.ts'
import { aLane, aReachedLane } from '../../board/a-lane.ts'

describe('pages', () => {
  test.each([
    [0, [0]],
    [1, [1]],
    [30, [30]],
    // A few more than a class still go on one page.
    [40, [40]],
    [41, [30, 11]],
    [60, [30, 30]],
    [300, new Array(10).fill(30)],
  ])('[WL1] %i students are on pages of %j', (n, sizes) => {
    expect(wallPages(Array.from({ length: n }, (_, index) => index)).map((page) => page.length)).toEqual(sizes)
  })

  test('[WL1] nobody is left out or seen twice, and the order stays', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(), { maxLength: 320 }), (students) => {
        const pages = wallPages(students)
        expect(pages.flat()).toEqual(students)
        expect(pages.length === 1 || pages.every((page) => page.length <= PAGE_STUDENTS)).toBe(true)
      }),
      { seed: SEED },
    )
  })
})

describe('signs from the cubes', () => {
  const NOW = 1_000_000
  const seat: SeatView = {
    seatId: 'Ada' as SeatId,
    name: 'Ada',
    here: true,
    late: false,
    pretend: false,
    asksForHelp: false,
    ready: false,
    pupilId: null,
  }
  const cell = (wishes: Partial<WallCell>): WallCell => ({
    seatId: 'Ada' as SeatId,
    delayMs: null,
    stickers: null,
    lastStepMs: 0,
    lastGainMs: 0,
    brokeMs: null,
    nStepsBroken: 0,
    nSteps: 0,
    reached: false,
    ...wishes,
  })
  const round = (clock: RoundView['clock']): RoundView => ({
    id: 'round' as RoundId,
    number: 1,
    settings: DEFAULT_ROUND_SETTINGS,
    start: '',
    clock,
  })
  const running = (playedMs: number) => round({ phase: 'running', startsAtMs: NOW - playedMs, endsAtMs: null })
  const state = (view: RoundView | null, wishes: Partial<WallCell> = {}, lanes = [aLane('Ada')], of = seat) =>
    studentStates({ seats: [of], lanes, cells: [cell(wishes)], round: view }, NOW)[0]

  test('[WL2] stuck and broken come from the cube and the played time, the more urgent first', () => {
    expect(state(running(STUCK_IDLE_MS - 1)).signs).toEqual([])
    expect(state(running(STUCK_IDLE_MS)).signs).toEqual(['stuck'])
    const broke = { brokeMs: 1_000, nStepsBroken: 3, nSteps: 9, lastStepMs: 2_000 }
    expect(state(running(2_000 + BROKE_IDLE_MS), broke).signs).toEqual(['brokeALayer'])
    const both = state(running(900_000), broke, [aLane('Ada')], { ...seat, asksForHelp: true, here: false })
    expect(both.signs).toEqual(['asksForHelp', 'brokeALayer', 'stuck', 'away'])
    expect([countSign([both], 'stuck'), countSign([both], 'reached')]).toEqual([1, 0])
  })

  test('[WL2] a long pause makes nobody stuck', () => {
    const paused = round({ phase: 'paused', startsAtMs: NOW - 3_600_000, endsAtMs: null, pausedAtMs: NOW - 3_590_000 })
    expect(state(paused)).toMatchObject({ signs: [], idleSeconds: 10 })
  })

  test.each<[string, RoundView | null]>([
    ['there is no round', null],
    ['the signal has not been given', round({ phase: 'ready' })],
    ['the round has ended', round({ phase: 'ended', startsAtMs: 0, endedAtMs: NOW, reason: 'time' })],
    ['it was struck out', round({ phase: 'void', atMs: NOW })],
  ])('[WL2] while %s nobody is stuck, and no idle time is told', (_what, view) => {
    expect(state(view, { brokeMs: 1, nStepsBroken: 99, nSteps: 99 })).toMatchObject({ signs: [], idleSeconds: null })
  })

  test('[WL2] who has reached the goal is neither stuck nor idle, whatever the next try looks like', () => {
    const lanes = [aReachedLane('Ada', 9, 1_000)]
    expect(state(running(900_000), { brokeMs: 1, nStepsBroken: 99, nSteps: 99 }, lanes)).toMatchObject({
      signs: ['reached'],
      idleSeconds: null,
    })
  })

  test('[WL2] seconds since the last turn are whole, and never below 0', () => {
    expect(state(running(12_900), { lastStepMs: 10_000 }).idleSeconds).toBe(2)
    expect(state(running(9_000), { lastStepMs: 10_000 }).idleSeconds).toBe(0)
  })
})
