/** What a message has to be, for those parts that are more than a type. Rules WI: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { MESSAGE_STEPS_MAX, TAKE_HOME_ROUNDS_MAX, TRIES_MAX, TRY_STEPS_MAX } from '../../../engine/contest/limits.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../../engine/contest/round-settings.ts'
import { STEP_NAMES } from '../../../engine/contest/steps.ts'
import { CASES_OF_STAGE, LAST_LAYER_STAGES } from '../../../engine/method/cases.ts'
import { FROM_BROWSER, type MessageName } from '../../../engine/wire/from-browser.ts'
import { MESSAGE_BYTES_MAX } from '../../../engine/wire/limits.ts'

/** The fields that are found wrong, as the server names them. */
function faultsOf(name: MessageName, message: unknown): string[] {
  const parsed = FROM_BROWSER[name].safeParse(message)
  return parsed.success ? [] : parsed.error.issues.map((issue) => issue.path.join('.'))
}

describe('the settings of a round', () => {
  const faultsOfSettings = (wishes: object) =>
    faultsOf('room:set', { roomId: 'room', settings: { ...DEFAULT_ROUND_SETTINGS, ...wishes } })

  test.each<[string, object]>([
    ['the usual ones', {}],
    ['one case', { cases: ['dot'] }],
    ['several cases', { from: 5, to: 5, cases: ['all-up', 'one-up-clockwise', 'none-up-two-sides'] }],
    ['all seven stages', { from: 1, to: 7 }],
    ['no clock', { timeLimitMs: null }],
    ['the shortest clock', { timeLimitMs: 30_000 }],
    ['a range of pars', { parFrom: 7, parTo: 8 }],
    ['one par', { parFrom: 7, parTo: 7 }],
    ['hints that cost', { hints: 3, hintCost: 20 }],
    ['a real cube, each alone', { cube: 'real', pace: 'alone' }],
  ])('[WI9] %s are taken', (_what, wishes) => {
    expect(faultsOfSettings(wishes)).toEqual([])
  })

  test.each<[string, object, string]>([
    ['a goal before the start', { from: 5, to: 4 }, 'settings.to'],
    ['a stage that is none', { from: 8, to: 8 }, 'settings.from'],
    ['a case of another stage', { cases: ['pair'] }, 'settings.cases'],
    ['a case where there are none', { from: 3, to: 3, cases: ['dot'] }, 'settings.cases'],
    ['no case at all', { cases: [] }, 'settings.cases'],
    ['a case twice', { cases: ['dot', 'dot'] }, 'settings.cases'],
    ['a case that nobody knows', { cases: ['zigzag'] }, 'settings.cases.0'],
    ['a clock that is too short', { timeLimitMs: 29_999 }, 'settings.timeLimitMs'],
    ['half a millisecond', { timeLimitMs: 60_000.5 }, 'settings.timeLimitMs'],
    ['a colour that no cube has', { baseColour: 'pink' }, 'settings.baseColour'],
    ['a field that nobody knows', { prizes: 3 }, 'settings'],
    ['pars over several stages', { to: 5, parFrom: 3 }, 'settings.parFrom'],
    ['pars the wrong way round', { parFrom: 8, parTo: 7 }, 'settings.parTo'],
    ['a par of nothing', { parFrom: 0 }, 'settings.parFrom'],
    ['a hint above the ladder', { hints: 4 }, 'settings.hints'],
    ['a hint that only punishes', { hintCost: 21 }, 'settings.hintCost'],
    ['a cube of another kind', { cube: 'glass' }, 'settings.cube'],
  ])('[WI9] %s is refused, and the field is named', (_what, wishes, field) => {
    expect(faultsOfSettings(wishes)).toContain(field)
  })

  test('[WI9] each stage of the last layer may name all of its cases', () => {
    for (const stage of LAST_LAYER_STAGES)
      expect(faultsOfSettings({ from: stage, to: stage, cases: CASES_OF_STAGE[stage] })).toEqual([])
  })
})

describe('what belongs to a lesson', () => {
  const nudge = { kind: 'hint', level: 1 }
  const entry = { names: 'typed', rosterId: null, approve: false }
  const settings = DEFAULT_ROUND_SETTINGS
  test.each<[string, MessageName, object, string[]]>([
    ['a name typed', 'seat:join', { code: 'tamkel', name: 'Ada' }, []],
    ['a name picked, on another device', 'seat:join', { code: 'tamkel', pupilId: 'p1', moves: true }, []],
    ['a secret that is too short', 'seat:join', { code: 'tamkel', token: 'abc' }, ['token']],
    ['names typed', 'room:entry', { roomId: 'r', entry }, []],
    ['names from no roster', 'room:entry', { roomId: 'r', entry: { ...entry, names: 'roster' } }, ['entry.rosterId']],
    [
      'a roster that is not used',
      'room:entry',
      { roomId: 'r', entry: { ...entry, rosterId: 'x' } },
      ['entry.rosterId'],
    ],
    ['a nudge for all', 'nudge:send', { roomId: 'r', roundId: 'x', to: 'all', nudge }, []],
    ['a nudge for nobody', 'nudge:send', { roomId: 'r', roundId: 'x', to: [], nudge }, ['to']],
    [
      'a hint of no level',
      'nudge:send',
      { roomId: 'r', roundId: 'x', to: 'all', nudge: { ...nudge, level: 4 } },
      ['nudge.level'],
    ],
    [
      "words of one's own",
      'nudge:send',
      { roomId: 'r', roundId: 'x', to: 'all', nudge: { kind: 'words', words: 'hi' } },
      ['nudge.words'],
    ],
    [
      'a pointer on a centre',
      'nudge:send',
      { roomId: 'r', roundId: 'x', to: 'all', nudge: { kind: 'point', piece: 'U' } },
      ['nudge.piece'],
    ],
    ['a room to take home', 'room:take-home', { roomId: 'r', rounds: [settings], deadlineMs: 1 }, []],
    ['a room without a round', 'room:take-home', { roomId: 'r', rounds: [], deadlineMs: 1 }, ['rounds']],
    [
      'too many rounds',
      'room:take-home',
      { roomId: 'r', rounds: new Array(TAKE_HOME_ROUNDS_MAX + 1).fill(settings), deadlineMs: 1 },
      ['rounds'],
    ],
    ['a part before the first', 'room:plan-at', { roomId: 'r', at: -1 }, ['at']],
    ['a try of no step, handed in', 'turns:hand-in', { roundId: 'x', tryNumber: 1, steps: [] }, ['steps']],
    [
      'a roster with a name twice',
      'roster:keep',
      {
        rosterId: null,
        roster: {
          title: '',
          pupils: [
            { pupilId: 'a', name: 'Ada' },
            { pupilId: 'b', name: 'ADA' },
          ],
        },
      },
      ['roster.pupils'],
    ],
    [
      'a roster with a rude name',
      'roster:keep',
      { rosterId: null, roster: { title: '', pupils: [{ pupilId: 'a', name: '<b>' }] } },
      ['roster.pupils.0.name'],
    ],
  ])('[WI2] %s: %3$j is named', (_what, name, message, fields) => {
    expect(faultsOf(name, message)).toEqual(fields)
  })
})

describe('turns', () => {
  const aMessage = { roundId: 'round', tryNumber: 1, from: 0, steps: ['R', "Uw'", 'take-back'] }

  test.each<[string, object, string[]]>([
    ['steps of every kind', {}, []],
    ['no step, which opens a try', { steps: [] }, []],
    ['as many as fit', { steps: new Array(MESSAGE_STEPS_MAX).fill('R') }, []],
    ['one more', { steps: new Array(MESSAGE_STEPS_MAX + 1).fill('R') }, ['steps']],
    ['a step that is none', { steps: ['R', 'Q'] }, ['steps.1']],
    ['a step by its number', { steps: [0] }, ['steps.0']],
    ['a try before the first', { tryNumber: 0 }, ['tryNumber']],
    // One more than there may be passes, so that the rules of the round can say that there are no more.
    ['a try behind the last', { tryNumber: TRIES_MAX + 1 }, []],
    ['a try far behind the last', { tryNumber: TRIES_MAX + 2 }, ['tryNumber']],
    ['a beginning behind the longest try', { from: TRY_STEPS_MAX + 1 }, ['from']],
    ['a name of the round that is too long', { roundId: 'x'.repeat(33) }, ['roundId']],
  ])('[WI2] %s: %3$j is named', (_what, wishes, fields) => {
    expect(faultsOf('turns:send', { ...aMessage, ...wishes })).toEqual(fields)
  })

  test('[WI4] the largest honest message is far smaller than the largest that is read', () => {
    const longest = STEP_NAMES.reduce((long, name) => (name.length > long.length ? name : long))
    const message = {
      ...aMessage,
      roundId: 'x'.repeat(32),
      from: TRY_STEPS_MAX,
      steps: new Array(MESSAGE_STEPS_MAX).fill(longest),
    }
    expect(JSON.stringify(['turns:send', message]).length).toBeLessThan(MESSAGE_BYTES_MAX / 4)
  })
})
