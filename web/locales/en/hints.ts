/** The hint ladder. The rungs themselves are the sentences of lesson.ts; here is what stands around them. */
export const hints = {
  label: 'Hint',
  /** The three rungs, as the button offers them. */
  ask: { 1: 'Hint', 2: 'How to hold?', 3: 'What to do?' },
  /** Said before it is pressed. */
  free: 'free',
  cost_one: 'costs {{count}} turn',
  cost_other: 'costs {{count}} turns',
  /** Where a hint stands in the place of the goal: back to it, and out with the hint again. */
  toGoal: 'To the goal',
  toHint: 'To the hint',
  /** In the middle of what the rungs tell; `turns` in letters. */
  begun: 'You are in the middle of it: go on as you began.',
  left_one: 'You are in the middle of it: {{turns}} is left.',
  left_other: 'You are in the middle of it: {{turns}} are left.',
  fromTeacher: 'From your teacher',
  putAway: 'All right',
  fromBehind: 'seen from the back',
  map: 'ask for a hint',
} as const
