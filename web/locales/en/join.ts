/** Words of the come-in pages: the student's own and the one that the class looks up to. */
export const join = {
  title: 'Come in',
  roomCode: 'Room code',
  roomCodeHelp: 'Six letters. They stand on the big screen, or your teacher has sent them.',
  codeIncomplete: 'The code has six letters. Look at it once more.',
  codeImpossible: 'No room has this code. Look at it once more.',
  whoAreYou: 'Who are you?',
  nameHelp: 'A nickname is enough. Everybody in the room sees it.',
  anotherName: 'Another name',
  pickYourName: 'Pick your name',
  pickHelp: 'If your name is missing, ask your teacher to add it.',
  pickedIsHere: '{{name}} is here already. Is that you?',
  pickFirst: 'Pick your name first.',
  hereAlready: 'here',
  nameIsGiven: 'In this room everybody gets a friendly name.',
  thatIsMe: 'I am {{name}}, on another device',
  turnedAway: 'Your teacher did not let you in this time. Ask, then try again.',
  door: {
    title: 'At the door',
    sentence: 'Your teacher will let you in. This page goes on by itself.',
    giveUp: 'Go back',
  },
  goInAs: 'Go in as {{name}}',
  goIn: 'Go in',
  goingIn: 'Going in',

  /** Friendly nicknames, two short words each: every first fits every second in 16 letters. */
  nickname: {
    both: '{{first}} {{second}}',
    first:
      'Brave,Bright,Calm,Clever,Eager,Gentle,Glad,Happy,Keen,Kind,Lively,Lucky,Merry,Nimble,Quick,Quiet,Ready,Steady,Sunny,Swift,Warm,Witty',
    second:
      'Badger,Beaver,Birch,Breeze,Cedar,Cloud,Comet,Dolphin,Falcon,Fern,Finch,Fox,Hare,Heron,Ibex,Kite,Lark,Lynx,Maple,Meadow,Moon,Otter,Owl,Panda,Pebble,Pine,Puffin,Raven,River,Robin,Seal,Sparrow,Star,Swan,Tiger,Willow',
  },

  gather: {
    title: 'Come in',
    firstRound: 'Round 1 starts when all are here',
    nextRound: 'Round {{number}} starts when all are here',
    openAddress: 'Open this address',
    typeCode: 'Type the room code',
    orCamera: 'or point a camera here',
    qrLabel: 'QR code for {{address}}',
    here: 'here',
    nobodyYet: 'Nobody is here yet',
    andMore: 'and {{count}} more',
    locked: 'The room is locked just now. Ask the teacher.',
    noAddress: 'Ask the teacher for the address',
  },
} as const
