/** Words of solo practice. What it shares with the bench is in bench.ts, the rungs of a hint in lesson.ts. */
export const practice = {
  link: 'Practise alone',
  title: 'Practise alone',
  sentence: 'Choose a goal, turn, try again. Nobody watches, and nothing leaves this page.',
  goal: 'Goal',
  case: 'Case',
  anyCase: 'any case',
  hints: 'Hints',
  hintsUpTo: { 0: 'none', 1: 'look for', 2: '+ hold', 3: '+ do' },
  baseColour: 'Colour of the first layer',
  begin: 'Begin',
  toRoom: 'Or come in to a room.',

  /** Stands above the goal while practising: the stage, or the case. */
  over: 'Practice · {{what}}',
  choose: 'Other goal',
  another: 'Another start',
  sameAgain: 'The same again',
  par_one: 'Par is {{count}} turn.',
  par_other: 'Par is {{count}} turns.',
  isPar: 'That is par: it cannot be done in fewer than {{par}}.',
  lessonWay_one: 'Lesson way: {{count}} turn',
  lessonWay_other: 'Lesson way: {{count}} turns',
  yours: 'Your turns',
  result: 'How it went',
  rest: 'Rest your hands and eyes a moment.',
} as const
