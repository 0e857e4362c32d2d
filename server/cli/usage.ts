/** What `cube --help` prints. */

/** The commands that there are. */
export const COMMANDS = ['par', 'check', 'way', 'start', 'book', 'sheet', 'read'] as const

/** One of them. */
export type CommandName = (typeof COMMANDS)[number]

/** The whole of it, for a terminal of 100 characters. */
export const USAGE = `usage: cube COMMAND [options]

Answers are JSON on standard output, one value a line; messages are on standard error.
Turns are applied to a solved cube held yellow up, green in front; white is the first layer.

  par    --stage K [--to M] --scramble "TURNS" [--budget SECONDS]
         The fewest turns from the scramble to the goal of stage K, or M. Over several stages the answer is
         proven, or best known after the budget (10 seconds).
  check  --stage K [--to M] --scramble "TURNS" --solution "TURNS"
         Does the solution reach the goal, and with how many turns?
  way    --stage K [--to M] --scramble "TURNS" [--book FILE]
         What the lesson would do, step by step.
  read   --stage K [--to M] --scramble "TURNS" --solution "TURNS"
         What a solution did, step by step, where it took turns that it did not need, and why.
  par, check, way and read take --stickers LETTERS in place of --scramble: the 54 stickers of a cube by their
         faces, U R F D L B, each face read row by row.
  par, check, way and read answer lines of standard input with --batch: stage<TAB>scramble[<TAB>solution],
         where stage is K or K-M.
  start  --stage K [--to M] --count N --seed TEXT [--least-par P]
         Starts for rounds, as setups. The same options give the same starts.
  book   FILE
         Can this sequence book be taught, and how long are its ways?
  book   --own lesson|classic
         Prints one of our own books.
  sheet  Not there yet.

Ends with 0; with 1 when an answer was negative; with 2 when the input was at fault.
`
