/** Words of the first pages of the desk: getting in, the list of rooms, taking home. */
export const deskHome = {
  title: 'Desk',
  signedOut: {
    title: 'The desk is closed',
    sentence: 'Use the desk link that the server printed.',
    more: 'It stands in the window in which the server was started, and works once. Start the server again and it prints a new one.',
  },

  entering: 'Opening the desk',
  linkRefused: 'This link did not open the desk',
  home: {
    openRoom: 'Open a room',
    opening: 'Opening',
    sentence: 'A room is where a class comes in. It takes a code and a nickname, nothing else.',
    rooms: 'Open rooms',
    noRooms: 'No room is open.',
    goTo: 'Go to room {{code}}',
    playing: 'a round is on',
    roundsPlayed_one: '{{count}} round',
    roundsPlayed_other: '{{count}} rounds',
    openedAt: 'open since {{time}}',
    privacy:
      "Only nicknames are kept, on this computer. Your school's own rules and the local law on children's data come first.",
  },

  takeHome: {
    sentence: 'All rounds of the plan are open at once. Each plays alone, in their own time, until the deadline.',
    deadline: 'Open until',
    open: 'Open the room for taking home',
    begin: 'Take-home room',
    thisRound: 'Take this round home',
    sentenceOne: 'The round with these settings is open to each alone, in their own time, until the deadline.',
    another: 'A new room is opened for it, with the same names at the door. This room stays as it is.',
    openNew: 'Open a new room for taking home',
    opening: 'Opening the room',
    failed: 'No room was opened. {{why}}',
    failedHalfWay: 'A room was opened, but without its rounds: close it in the list of rooms. {{why}}',
    noRounds: 'This plan has no round to take home.',
    until: 'open until {{when}}',
    roundChoice: 'Which round to look at',
  },
} as const
