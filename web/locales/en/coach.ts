/**
 * What the coach says about a solution: one plain sentence for each thing that went otherwise than it could have. For
 * readers from eight on, about the cube and the turns, never about the child.
 *
 * `{{then}}` is one of the outcomes below; `base` and `top` are the colours of the first layer and of the one opposite. All is
 * filled in by web/parts/coach/note-words.ts.
 */

import type { NoteKey } from '../../../engine/coach/note.ts'
import type { Stage } from '../../../engine/method/stages.ts'
import type { HoldKey } from '../../../engine/method/way/hold-mark.ts'

export const coach = {
  note: {
    'coach/undone': '{{turn}} was turned and turned back at once, which took {{turns}}.',
    'coach/two-for-one': 'One turn, {{better}}, does the same as these {{turns}}.',
    'coach/unfinished': '{{Part}} lacked {{missing}}, {{then}}.',
    'coach/wrong-trigger': 'The {{done}} trigger came where the {{needed}} trigger was needed, {{then}}.',
    'coach/wrong-hold': 'The cube was held {{held}}, {{then}}.',
    'coach/wrong-top-turn': 'The top layer stood in another place when {{sequence}} began, {{then}}.',
    'coach/wrong-sequence': '{{Sequence}} belongs to another {{other}}, {{then}}.',
    'coach/too-often': '{{Sequence}} came {{done}} where {{needed}} would do, {{then}}.',
    'coach/too-seldom': '{{Sequence}} came {{done}} where it takes {{needed}}, {{then}}.',
    'coach/layer-broken': '{{turn}} took {{layer}} apart, and mending it took {{turns}}.',
    'coach/layer-left-broken': '{{turn}} took {{layer}} apart, and it is still open.',
    'coach/wrong-way': 'A layer went the other way round, {{turn}} in place of {{shouldBe}}, {{then}}.',
    'coach/turn-left-out': '{{shouldBe}} was left out of {{sequence}}, {{then}}.',
    'coach/wrong-layer': 'Another layer was turned, {{turn}} in place of {{shouldBe}}, {{then}}.',
    'coach/wrong-amount': 'The turn {{shouldBe}} went too far or not far enough, {{then}}.',
    'coach/re-hold-left-out': 'The re-hold {{shouldBe}} was missing inside {{sequence}}, {{then}}.',
    'coach/needless-top-turn': 'The case did not need the top turn {{turn}}.',
    'coach/needless-re-hold': 'These {{count}} re-holds led back to the same hold, and they cost nothing.',
    'coach/led-nowhere': 'These {{turns}} led back to where the cube was before.',
    'coach/long-way': 'This way took {{turns}}, and the lesson’s way takes {{fewer}} here.',
  } satisfies Record<NoteKey, string>,

  /** What came of it. */
  outcome: {
    broke: 'so {{layer}} came apart',
    stillBroken: 'so {{layer}} is still open',
    pieceLeft: 'so a piece left its home',
    sameCase: 'so the case stayed as it was',
    otherCase: 'so the case became “{{case}}”',
    tookMore: 'and that took {{turns}} more',
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
  /** A trigger or a sequence, inside a sentence and at its beginning. */
  trigger: { right: 'right', left: 'left' },
  part: { sequence: 'the sequence {{written}}', unnamed: 'this sequence' },
  Part: {
    trigger: 'The {{side}} trigger',
    nthTrigger: 'The {{nth}} {{side}} trigger',
    sequence: 'The sequence {{written}}',
    unnamed: 'This sequence',
  },
  nth: { 2: 'second', 3: 'third', 4: 'fourth', 5: 'fifth', 6: 'sixth' },
  missing_one: 'its last turn',
  missing_other: 'its last {{count}} turns',
  times_one: 'once',
  times_other: '{{count}} times',
  other: { case: 'case', stage: 'stage' },
  held: {
    'hold/base-down': 'with the {{base}} centre at the bottom',
    'hold/piece-above-home': 'with the home of {{piece}} at the {{home}}',
    'hold/piece-above-centre': 'with {{piece}} at the {{at}} and its home at the {{home}}',
    'hold/piece-at': 'with {{piece}} at the {{at}} and its home at the {{home}}',
    'hold/line': 'with the line going {{along}}',
    'hold/arms': 'with the arms of the corner shape to the {{first}} and to the {{second}}',
    'hold/corners': 'so that {{corners}}',
    'hold/pair': 'with the matching corners {{side}}',
    'hold/finished-side': 'with the finished side {{side}}',
    'hold/exchange': 'with the {{first}} edge and the {{second}} edge changing places',
    'hold/any': 'another way than this case needs',
  } satisfies Record<HoldKey, string>,
} as const
