/** Words of lesson plans, and the ready-made plans themselves: copied, they become the teacher's own text. */

import type { PlanFileFault } from '../../../engine/contest/plans/plan-file.ts'
import type { ReadyWords } from '../../../engine/contest/plans/ready-plans.ts'

export const plans = {
  title: 'Lesson plans',
  own: 'Your plans',
  noOwn: 'None yet. Open a ready-made plan, change what you like, and keep it.',
  ready: 'Ready-made',
  readyLoading: 'One moment',
  newPlan: 'New plan',
  untitled: 'Plan without a title',
  open: 'Open {{title}}',
  use: 'Use',
  useOpen: 'Use this plan',
  useThis: 'Use {{title}}',
  duplicate: 'Duplicate',
  duplicateThis: 'Duplicate {{title}}',
  copyOf: '{{title}} (copy)',
  save: 'Save to a file',
  saveShort: 'Save',
  saveThis: 'Save {{title}} to a file',
  remove: 'Delete',
  removeThis: 'Delete {{title}}',
  removeAsk: {
    title: 'Delete “{{title}}”?',
    sentence: 'It is gone from this server. A file that you saved stays yours.',
    yes: 'Delete the plan',
  },
  openFile: 'Open a file',

  edit: {
    back: 'All plans',
    title: 'Title',
    readyMade: 'Ready-made. What you keep becomes a plan of your own.',
    keep: 'Keep',
    noParts: 'No part yet. Add the first one.',
    full: 'A plan has {{max}} parts at most.',
    tooMuchText: 'The notes are longer than a plan can hold. Shorten some.',
    removed: '“{{part}}” is out of the plan.',
    bringBack: 'Bring it back',
    nowAt: '“{{part}}” is now part {{number}}.',
    leaveAsk: {
      title: 'Leave without keeping?',
      sentence: 'What you changed in this plan is lost.',
      yes: 'Leave',
    },
  },

  parts_one: '{{count}} part',
  parts_other: '{{count}} parts',
  minutes_one: '{{count}} minute',
  minutes_other: '{{count}} minutes',
  minutesShort: '{{minutes}} min',
  noClock: 'no clock',
  minutesOf: '{{minutes}} of {{lesson}} minutes',
  minutesOver: '{{minutes}} minutes, more than a lesson of {{lesson}}',
  withoutClock_one: 'one round without a clock',
  withoutClock_other: '{{count}} rounds without a clock',

  kind: {
    example: 'Worked example',
    round: 'Round',
    review: 'Review',
  },
  part: {
    up: 'Up',
    down: 'Down',
    remove: 'Remove',
    upThis: 'Earlier: {{part}}',
    downThis: 'Later: {{part}}',
    removeThis: 'Remove: {{part}}',
    stage: 'Stage',
    case: 'Case',
    wholeStage: 'the whole stage',
    minutes: 'Minutes',
    roundTitle: 'What the round is called',
    note: 'Note for yourself',
    hints: {
      1: 'hints: what to look for',
      2: 'hints: look for and hold',
      3: 'all hints',
    },
    cases_one: '{{count}} case',
    cases_other: '{{count}} cases',
  },

  line: {
    label: 'The lesson',
    at: 'Part {{number}} of {{all}}',
    go: 'Part {{number}}: {{part}}',
    next: 'Next part',
    last: 'Last part',
  },

  fault: {
    'plan/file-too-large': 'This file is larger than any plan. Choose a file that was saved as a plan.',
    'plan/file-not-json': 'This file cannot be read; perhaps it is cut off. Save it again where it came from.',
    'plan/file-not-a-plan': 'This is no lesson plan. Choose a file that was saved as a plan.',
    'plan/file-newer':
      'This plan was saved by a later version of Fairturn. Bring this server up to date, then open it.',
    'plan/file-field': 'Something in this plan is wrong: {{at}}. Save it again where it came from.',
  } satisfies Record<PlanFileFault['code'], string>,

  readyPlan: {
    stage: 'Stage {{stage}}: {{title}}',
    clubNight: 'Club night',
    takeHomeWeek: 'Take-home week',
  },
  readyPart: {
    example: {
      title: '',
      note: 'Do it once in silence, once in words. Then once more, and the class says what comes next.',
    },
    guided: {
      title: 'Together',
      note: 'All hints are open and cost nothing. Go round, and look who holds the cube another way.',
    },
    open: { title: 'On your own', note: 'One hint only: what to look for. As many tries as the clock allows.' },
    harderCase: { title: 'The long one', note: 'The case that takes the most sequences. Say beforehand that it does.' },
    harderStart: {
      title: 'The long ones',
      note: 'Only the starts that need the most turns. Say beforehand that they do.',
    },
    review: {
      title: '',
      note: 'Two solutions side by side, then the lesson way and the shortest one. Where did a turn go astray?',
    },
    clubCross: { title: 'Warm-up: the cross', note: 'One try. Plan it before the first turn.' },
    clubLastLayer: { title: 'Last layer', note: 'Two layers are done. One try, and every turn counts.' },
    clubCube: { title: 'The whole cube', note: 'From any position. One try.' },
    takeHome: { title: '{{stage}}', note: 'As many tries as you like, until the last day. Hints are free.' },
  } satisfies Record<ReadyWords, { readonly title: string; readonly note: string }>,
} as const
