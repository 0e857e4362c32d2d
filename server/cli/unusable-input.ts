/** What cannot be used and is found out in the middle of the work, such as standard input or the environment. */

/** Ends the command as bad input does; `message` is one line for a person. */
export class UnusableInput extends Error {}
