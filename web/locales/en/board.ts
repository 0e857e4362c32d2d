/** Words of the board that the class watches. */
export const board = {
  lanes: 'Lanes',
  ruler: 'turns',
  lane: {
    reached: 'Place {{place}}: {{name}}, {{turns}}, at {{moment}}',
    running: '{{name}}: {{turns}} so far',
  },
  crowd: {
    more_one: '{{count}} more student',
    more_other: '{{count}} more students',
    dot: 'a dot is a student',
  },

  round: 'Round {{number}}',
  left: 'left',
  played: 'played',
  paused: 'paused',
  beforeTheSignal: 'get ready',
  over: 'The round is over',
  overPlayed: 'played. The round is over.',
  void: 'struck out',
  reached_one: 'of {{count}} reached',
  reached_other: 'of {{count}} reached',
  par: {
    name: 'Par',
    bestKnown: 'Best known',
    covered: 'Par, covered',
    tab: 'par {{turns}}',
    tabBestKnown: 'best known {{turns}}',
  },
  roomCode: 'Room code',
  lateRoomCode: 'Late? Room code',
  locked: 'Room code (locked)',
  closed: 'The room is closed.',

  countdown: 'Starts in {{count}}',
  covered: {
    title: 'Covered',
    sentence: 'The lanes are shown when the round is over.',
    own: 'All see their own result. The teacher has the list.',
  },
  nobody: {
    title: 'Nobody is here yet',
    sentence: 'Come in with the room code.',
  },
  voided: {
    title: 'Struck out',
    sentence: 'This round counts for nobody.',
  },

  standStill: 'Stand still',
  goOn: 'Go on',
  standsStill: 'The board stands still. It goes on at what is then now.',
  fillScreen: 'Fill the screen',
  pretend: 'pretend class',

  summary: {
    running: '{{reached}} of {{students}} reached.',
    leader: '{{name}} leads with {{turns}}.',
    ended: 'The round is over.',
    par: '{{words}}.',
  },

  noSuchRoom: {
    title: 'No board here',
    sentence: 'Open the board again from the desk.',
  },
  settingUp: {
    title: 'Bring your cube to the start',
    sentence: '{{count}} of {{of}} cubes are ready.',
  },
  notes: {
    title: 'Footnotes of the ranking',
    hints_one: '{{count}} hint up to level {{level}}',
    hints_other: '{{count}} hints up to level {{level}}',
    hintsInATry_one: '{{count}} hint in an earlier try',
    hintsInATry_other: '{{count}} hints in an earlier try',
    hintsInTries_one: '{{count}} hint in earlier tries',
    hintsInTries_other: '{{count}} hints in earlier tries',
    nudges_one: '{{count}} nudge',
    nudges_other: '{{count}} nudges',
    written: 'on a real cube',
    kept: 'some turns came in later',
    afterEnd_one: 'after the end: {{count}} turn',
    afterEnd_other: 'after the end: {{count}} turns',
  },
} as const
