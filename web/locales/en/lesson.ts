/**
 * What a step of the lesson way says: what to look for, how to hold, what to do, and why. For readers from nine on, and
 * each sentence makes sense alone, because a hint may show only the first.
 *
 * `base` and `top` are the colours of the first layer and of the one opposite; web/parts/lesson/ fills everything in.
 */

import type { HoldKey } from '../../../engine/method/way/hold-mark.ts'
import type { DoKey, LookForKey, WhyKey } from '../../../engine/method/way/lesson-step.ts'
import type { PlaceKey } from '../../parts/lesson/place-words.ts'

export const lesson = {
  /** Stands before the first sentence of a step that works for an earlier stage. */
  repair: 'An earlier layer is broken. It is mended first.',

  look: {
    'look/base-not-down': 'Look for the {{base}} centre. It belongs at the bottom.',

    'look/edge-above-facing-up': 'Look for {{piece}}. It is at the {{at}} and shows {{base}} on top.',
    'look/edge-above-facing-side': 'Look for {{piece}}. It is at the {{at}} and shows {{base}} {{facing}}.',
    'look/edge-between': 'Look for {{piece}}. It is in the middle layer, at the {{at}}.',
    'look/edge-below-turned': 'Look for {{piece}}. It is home, at the {{at}}, but turned over.',
    'look/edge-below-elsewhere': 'Look for {{piece}}. It is at the {{at}}, but its home is somewhere else.',

    'look/corner-above-facing-right': 'Look for {{piece}}. It is at the {{at}} and shows {{base}} {{facing}}.',
    'look/corner-above-facing-front': 'Look for {{piece}}. It is at the {{at}} and shows {{base}} {{facing}}.',
    'look/corner-above-facing-up': 'Look for {{piece}}. It is at the {{at}} and shows {{base}} on top.',
    'look/corner-below-turned': 'Look for {{piece}}. It is home, at the {{at}}, but turned.',
    'look/corner-below-elsewhere': 'Look for {{piece}}. It is at the {{at}}, but its home is somewhere else.',

    'look/edge-to-right': 'Look for {{piece}}. It is at the {{at}} and has to go down to the right.',
    'look/edge-to-left': 'Look for {{piece}}. It is at the {{at}} and has to go down to the left.',
    'look/edge-beside-turned': 'Look for {{piece}}. It is home, at the {{at}}, but turned over.',
    'look/edge-beside-elsewhere': 'Look for {{piece}}. It is at the {{at}}, but its home is somewhere else.',

    'look/cross': 'Look at the top edges. All four show {{top}} on top.',
    'look/dot': 'Look at the top edges. None shows {{top}} on top: this is the dot.',
    'look/line': 'Look at the top edges. Two show {{top}} on top and make a line.',
    'look/corner-shape': 'Look at the top edges. Two show {{top}} on top, side by side: this is the corner shape.',

    'look/all-up': 'Look at the top corners. All four show {{top}} on top.',
    'look/one-up-clockwise':
      'Look at the top corners. One shows {{top}} on top. The other three have to turn clockwise.',
    'look/one-up-anticlockwise':
      'Look at the top corners. One shows {{top}} on top. The other three have to turn anticlockwise.',
    'look/two-up-across': 'Look at the top corners. Two show {{top}} on top, across from each other.',
    'look/two-up-one-side':
      'Look at the top corners. Two show {{top}} on top. The others show it on one side together.',
    'look/two-up-two-sides': 'Look at the top corners. Two show {{top}} on top. The others show it on two sides.',
    'look/none-up-two-sides': 'Look at the top corners. None shows {{top}} on top. They show it on two sides.',
    'look/none-up-three-sides': 'Look at the top corners. None shows {{top}} on top. They show it on three sides.',

    'look/aligned': 'Look at the top corners. On every side the two corners match each other.',
    'look/pair': 'Look at the top corners. On one side the two corners match each other.',
    'look/diagonal': 'Look at the top corners. On no side do the two corners match each other.',

    'look/solved': 'Look at the top edges. All four are home.',
    'look/three-clockwise': 'Look at the top edges. One is home. The other three have to go round clockwise.',
    'look/three-anticlockwise': 'Look at the top edges. One is home. The other three have to go round anticlockwise.',
    'look/across': 'Look at the top edges. None is home. Each belongs straight across.',
    'look/beside': 'Look at the top edges. None is home. Each has to change places with a neighbour.',
  } satisfies Record<LookForKey, string>,

  hold: {
    'hold/base-down': 'Hold the cube with the {{base}} centre at the bottom.',
    'hold/piece-above-home':
      'Hold the cube so that the home of {{piece}} is at the {{home}}. The piece comes right above it, to the {{at}}.',
    'hold/piece-above-centre':
      'Hold the cube so that the {{colour}} centre is {{side}}. The edge comes right above it, to the {{at}}.',
    'hold/piece-at': 'Hold the cube so that {{piece}} is at the {{at}}.',
    'hold/line': 'Hold the cube so that the line goes {{along}}.',
    'hold/arms': 'Hold the cube so that the two arms of the corner shape point to the {{first}} and to the {{second}}.',
    'hold/corners': 'Hold the cube so that {{corners}}.',
    'hold/pair': 'Hold the cube so that the two corners that match are {{side}}.',
    'hold/finished-side': 'Hold the cube so that the finished side is {{side}}.',
    'hold/exchange': 'Hold the cube so that the {{first}} edge and the {{second}} edge have to change places.',
    'hold/any': 'Hold the cube as you like, with {{base}} at the bottom.',
  } satisfies Record<HoldKey, string>,
  holdMore: {
    pieceComesTo: 'Hold the cube so that the home of {{piece}} is at the {{home}}. The piece comes to the {{at}}.',
    corner: 'the {{place}} corner shows {{top}} {{facing}}',
    bothCorners: '{{first}} and {{second}}',
    along: { 'left-to-right': 'from left to right', 'front-to-back': 'from front to back' },
  },

  do: {
    'do/nothing-more': 'Nothing more to do: the cube is held right now.',
    'do/top-turn': 'Turn the top layer {{topTurn}}.',
    'do/sequence': 'Do {{sequence}}.',
    'do/sequence-again': 'Do {{sequence}}.',
  } satisfies Record<DoKey, string>,
  topTurn: { U: 'a quarter to the left', "U'": 'a quarter to the right', U2: 'half way round' },
  sequence: {
    right_one: 'the right trigger',
    right_other: 'the right trigger {{count}} times',
    left_one: 'the left trigger',
    left_other: 'the left trigger {{count}} times',
    reHold: 're-hold {{turn}}',
    group: '{{count}} times ({{items}})',
  },

  why: {
    'why/base-belongs-down': 'The lesson always has {{base}} at the bottom.',
    'why/piece-home': 'Then {{piece}} is home.',
    'why/piece-out': 'Then {{piece}} is in the top layer. From there it can go home.',
    'why/piece-nearer': 'Then {{piece}} is nearer its home.',
    'why/stage-done': 'Then this stage is done: {{stage}}.',
    'why/case-becomes': 'Then the case is “{{case}}”, which is nearer the goal.',
    'why/fewer-sequences': 'Then this stage needs one sequence less.',
  } satisfies Record<WhyKey, string>,

  piece: {
    edge: 'the {{first}} and {{second}} edge',
    corner: 'the {{first}}, {{second}} and {{third}} corner',
  },
  /** Where a piece is, as the holder sees it. */
  place: {
    UFR: 'top front right',
    UFL: 'top front left',
    UBR: 'top back right',
    UBL: 'top back left',
    DFR: 'bottom front right',
    DFL: 'bottom front left',
    DBR: 'bottom back right',
    DBL: 'bottom back left',
    UF: 'top front',
    UB: 'top back',
    UR: 'top right',
    UL: 'top left',
    DF: 'bottom front',
    DB: 'bottom back',
    DR: 'bottom right',
    DL: 'bottom left',
    FR: 'front right',
    FL: 'front left',
    BR: 'back right',
    BL: 'back left',
  } satisfies Record<PlaceKey, string>,
  /** Which way a sticker looks. */
  facing: {
    U: 'on top',
    D: 'at the bottom',
    F: 'to the front',
    B: 'to the back',
    R: 'to the right',
    L: 'to the left',
  },
  /** Where a whole side of the cube is. */
  side: {
    U: 'on top',
    D: 'at the bottom',
    F: 'in front',
    B: 'at the back',
    R: 'on the right',
    L: 'on the left',
  },
} as const
