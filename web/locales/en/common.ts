/**
 * Words that several screens share. Stage words take the colours of the first layer: `base` and `top` as they stand inside
 * a sentence, `Base` and `Top` at its beginning; web/parts/stage-words.ts fills them in.
 */
export const common = {
  product: 'Fairturn',

  stage: {
    1: {
      title: '{{Base}} cross',
      short: '{{Base}} cross',
      sentence: 'The four {{base}} edges are home and match the centres beside them.',
    },
    2: {
      title: 'First layer',
      short: 'First layer',
      sentence: 'The whole {{base}} layer is done, and its sides match the centres.',
    },
    3: {
      title: 'Second layer',
      short: 'Second layer',
      sentence: 'The four middle edges are home. Both layers are whole.',
    },
    4: {
      title: '{{Top}} cross',
      short: '{{Top}} cross',
      sentence: 'All four top edges show {{top}}. Both layers below stay whole.',
    },
    5: {
      title: '{{Top}} face',
      short: '{{Top}} face',
      sentence: 'The whole top shows {{top}}. Both layers below stay whole.',
    },
    6: {
      title: 'Corners home',
      short: 'Corners home',
      sentence: 'The four top corners are home and match the centres.',
    },
    7: {
      title: 'All home',
      short: 'All home',
      sentence: 'Every piece is home. The cube is done.',
    },
  },
  stageNumber: 'stage {{stage}}',
  stageSpan: 'stages {{from}} to {{to}}',
  goalPicture: 'Goal: {{title}}. {{sentence}}',

  colour: {
    white: 'white',
    yellow: 'yellow',
    orange: 'orange',
    green: 'green',
    red: 'red',
    blue: 'blue',
  },
  colourAtStart: {
    white: 'White',
    yellow: 'Yellow',
    orange: 'Orange',
    green: 'Green',
    red: 'Red',
    blue: 'Blue',
  },
  face: {
    U: 'top',
    R: 'right',
    F: 'front',
    D: 'bottom',
    L: 'left',
    B: 'back',
  },

  turns_one: '{{count}} turn',
  turns_other: '{{count}} turns',
  par: {
    proven: 'Par {{turns}}',
    /** Not proven to be the fewest: another way may be shorter. */
    bestKnown: 'Best known {{turns}}',
    atLeast: 'at least {{turns}}',
    withBound: '{{name}}, {{bound}}',
  },
  /** Of a clock that runs for days. */
  clock: { days_one: '{{count}} day', days_other: '{{count}} days', daysAndHours: '{{days}} {{hours}} h' },
  students_one: '{{count}} student',
  students_other: '{{count}} students',

  sign: {
    reached: 'reached',
    asksForHelp: 'asked for help',
    away: 'away',
    late: 'late',
    pretend: 'pretend',
    stuck: 'stuck',
    brokeALayer: 'broke an earlier layer',
  },

  /** Sentences that a teacher sends to a student. */
  nudge: {
    'look-at-the-goal': 'Look at the goal picture once more',
    'check-the-hold': 'Check how you hold it',
    'say-the-trigger': 'Say the trigger aloud while you turn',
    'finish-the-trigger': 'Finish the trigger you began',
    'take-back-and-look': 'Take back two turns and look again',
    'mind-the-lower-layers': 'Mind the layers below',
    'start-again-calmly': 'Start again, slowly this time',
    'well-on-your-way': 'You are well on your way',
  },

  pretendClass: 'Pretend class: these students are simulated',

  theme: {
    paper: 'Paper',
    slate: 'Slate',
  },

  close: 'Close',
  cancel: 'Cancel',
  reload: 'Load again',
  loading: 'One moment',
  fault: {
    title: 'This part stopped',
    sentence: 'That was our mistake, not yours. Load the page again and it goes on from here.',
  },
  outOfDate: 'This page is from an older version. Load it again to go on.',
  connecting: 'Looking for the server',
  away: 'No connection just now. This page comes back by itself.',
  noSuchPage: {
    title: 'Nothing here',
    sentence: 'Look at the address again, or come in with a room code.',
    comeIn: 'Come in',
  },
} as const
