/**
 * What the coach says about a solution: one plain sentence for each thing that went otherwise than it could have, with what
 * came of it and what to try next time. For readers from eight on, about the cube and the turns, never about the child:
 * the same sentence stands on a child's own screen, on the teacher's and before the class.
 *
 * `{{then}}` is one of the outcomes below; `base` and `top` are the colours of the first layer and of the one opposite. All is
 * filled in by web/parts/coach/note-words.ts, which also chooses among `noteMore`.
 */

import type { NoteKey } from '../../../engine/coach/note.ts'
import type { Stage } from '../../../engine/method/stages.ts'
import type { HoldKey } from '../../../engine/method/way/hold-mark.ts'

export const coach = {
  note: {
    'coach/undone':
      '{{turn}} went there and straight back, and these {{turns}} changed nothing: next time, look first.',
    'coach/two-for-one': 'These {{turns}} do what {{better}} does alone: next time, {{better}} is enough.',
    'coach/unfinished': '{{Part}} stopped before {{missing}}, {{then}}: next time, finish it with {{turns}}.',
    'coach/wrong-trigger':
      'The {{done}} trigger came where the {{needed}} one belongs, {{then}}: next time, try the {{needed}} trigger there.',
    'coach/wrong-hold': 'The hold did not fit, {{then}}: next time, hold the cube {{hold}}.',
    'coach/wrong-top-turn': 'The top layer was not in its place yet, {{then}}: next time, first turn it {{topTurn}}.',
    'coach/wrong-sequence': '{{Sequence}} does not fit here, {{then}}: next time, try {{advised}}.',
    'coach/too-often': '{{Sequence}} came {{done}} where {{needed}} was enough, {{then}}: next time, count along.',
    'coach/too-seldom': '{{Sequence}} came {{done}} where it is needed {{needed}}, {{then}}: next time, count along.',
    'coach/layer-broken':
      '{{turn}} took {{layer}} apart, and mending it took {{turns}}: next time, see first what a turn takes along.',
    'coach/layer-left-broken': '{{turn}} took {{layer}} apart, and it is not mended yet: that comes first now.',
    'coach/wrong-way': '{{turn}} went the other way round, {{then}}: next time, try {{shouldBe}} there.',
    'coach/turn-left-out':
      '{{shouldBe}} was left out of {{sequence}}, {{then}}: next time, say each turn as it is done.',
    'coach/wrong-layer': '{{turn}} turned a different layer, {{then}}: next time, try {{shouldBe}} there.',
    'coach/wrong-amount': '{{turn}} went too far, {{then}}: next time, {{shouldBe}} is enough there.',
    'coach/two-slips':
      'In {{sequence}} two turns were different, {{first}} and {{second}}, {{then}}: next time, go slowly there.',
    'coach/re-hold-left-out':
      'The re-hold {{shouldBe}} inside the sequence did not come, {{then}}: next time, stop there and re-hold.',
    'coach/needless-top-turn': 'The top turn {{turn}} was not needed here: next time, begin without it.',
    'coach/needless-re-hold':
      'These {{count}} re-holds ended where they began: they cost nothing, and next time they can be left out.',
    'coach/led-nowhere':
      'After these {{turns}} the cube stood as it stood before: next time, look at it after each sequence.',
    'coach/long-way': 'This way worked and took {{turns}}: next time, try the lesson’s way, which takes {{fewer}}.',
  } satisfies Record<NoteKey, string>,

  /** Where the sentence of a key would not be true, or something shorter can be said. */
  noteMore: {
    undoneAllRound:
      'One layer went round until it stood as before, and these {{turns}} changed nothing: next time, look first.',
    unfinishedNow_one: '{{Part}} is not finished yet: {{turns}} still belongs to it.',
    unfinishedNow_other: '{{Part}} is not finished yet: {{turns}} still belong to it.',
    /** What was meant is not what the lesson would do next. */
    heldSomehow: 'The cube was held {{held}}, {{then}}: next time, look at the case before the first turn.',
    noTopTurn: 'The top layer had been in its place already, {{then}}: next time, leave it as it is.',
    doesNotFit: '{{Sequence}} does not fit here, {{then}}: next time, look at the case before the first turn.',
    /** A turn too many inside a sequence. */
    slippedIn: '{{turn}} slipped into {{sequence}}, {{then}}: next time, say each turn as it is done.',
    /** No layer is broken, but one piece of the layer under way. */
    pieceTaken:
      '{{turn}} took a piece out of its home, and that took {{turns}}: next time, see first what a turn takes along.',
    /** Shorter ways later on won back what it lost. */
    layerMadeGood:
      '{{turn}} took {{layer}} apart, and other turns made up for it: next time, see first what a turn takes along.',
    pieceMadeGood:
      '{{turn}} took a piece out of its home, and other turns made up for it: next time, see first what a turn takes along.',
    pieceStillOut: '{{turn}} took a piece out of its home, and it is not back yet: that comes first now.',
    /** The letter of the book in another hold, after a re-hold or a wide turn that does not belong there. */
    holdChanged:
      'The hold had changed and {{turn}} turned a different layer, {{then}}: next time, keep the hold there.',
    notFarEnough: '{{turn}} did not go far enough, {{then}}: next time, try {{shouldBe}} there.',
    cameTwice: '{{turn}} came twice, {{then}}: next time, {{shouldBe}} is enough there.',
    /** The way ends nearer the goal, but by more turns than it took; or it saved the try turns later on. */
    longWaySaves: 'This way worked and took {{turns}}: next time, try the lesson’s way, which saves {{fewer}}.',
  },

  /** One of two turns that were different. */
  slip: {
    instead: '{{turn}} for {{shouldBe}}',
    inAnotherHold: '{{turn}} in another hold',
    leftOut: '{{shouldBe}} left out',
    twice: '{{turn}} twice',
  },

  /** What came of it. */
  outcome: {
    broke: 'so {{layer}} came apart',
    stillBroken: 'so {{layer}} has to be mended now',
    pieceLeft: 'so a piece left its home',
    sameCase: 'so the case stayed the same',
    otherCase: 'so the case became “{{case}}”',
    tookMore: 'so it took {{turns}} more',
    /** Shorter ways later on won back what it lost. */
    madeGood: 'and other turns made up for it',
    notYet: 'so it is not done yet',
  },
  layer: {
    1: 'the {{base}} cross',
    2: 'the first layer',
    3: 'the second layer',
    4: 'the {{top}} cross',
    5: 'the {{top}} face',
    6: 'the top layer',
    7: 'the top layer',
  } satisfies Record<Stage, string>,
  trigger: { right: 'right', left: 'left' },
  /** A sequence inside a sentence, and at its beginning. */
  part: {
    right_one: 'the right trigger',
    right_other: 'the right trigger {{count}} times',
    left_one: 'the left trigger',
    left_other: 'the left trigger {{count}} times',
    sequence: 'the sequence {{words}}',
    ofStage: 'the sequence for “{{stage}}”',
    unnamed: 'this sequence',
  },
  Part: {
    right_one: 'The right trigger',
    right_other: 'The right trigger {{count}} times',
    left_one: 'The left trigger',
    left_other: 'The left trigger {{count}} times',
    sequence: 'The sequence {{words}}',
    ofStage: 'The sequence for “{{stage}}”',
    unnamed: 'This sequence',
    nthTrigger: 'The {{nth}} {{side}} trigger',
  },
  /** What a sequence is made of. */
  item: {
    right_one: 'right trigger',
    right_other: '{{count}} right triggers',
    left_one: 'left trigger',
    left_other: '{{count}} left triggers',
    reHold: 're-hold {{turn}}',
    group: '{{count}} times ({{items}})',
  },
  nth: { 2: 'second', 3: 'third', 4: 'fourth', 5: 'fifth', 6: 'sixth' },
  missing_one: 'its last turn',
  missing_other: 'its last {{count}} turns',
  times_one: 'once',
  times_other: '{{count}} times',
  held: {
    'hold/base-down': 'with the {{base}} centre at the bottom',
    'hold/piece-above-home': 'with the home of {{piece}} at the {{home}}',
    'hold/piece-above-centre': 'with the home of {{piece}} at the {{home}}',
    'hold/piece-at': 'with {{piece}} at the {{at}}',
    'hold/line': 'with the line going {{along}}',
    'hold/arms': 'with the arms of the corner shape to the {{first}} and to the {{second}}',
    'hold/corners': 'so that {{corners}}',
    'hold/pair': 'with the matching corners {{side}}',
    'hold/finished-side': 'with the finished side {{side}}',
    'hold/exchange': 'with the {{first}} edge and the {{second}} edge changing places',
    'hold/any': 'another way than this case needs',
  } satisfies Record<HoldKey, string>,
  /** Two corners in one breath. */
  heldCorners: {
    alike: 'with {{top}} {{facing}} at the {{first}} and the {{second}} corner',
    unlike: 'so that the {{first}} corner shows {{top}} {{facing}} and the {{second}} corner {{facingToo}}',
  },
} as const
