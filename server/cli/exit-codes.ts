/** How a command ends; scripts rely on it. */
export const EXIT = {
  /** It worked, and the answer is positive. */
  yes: 0,
  /** It worked, and the answer is negative: the goal is not reached, or a start does not fit its stage. */
  no: 1,
  /** The input is at fault; one line on standard error names the token and its place. */
  badInput: 2,
} as const
export type ExitCode = (typeof EXIT)[keyof typeof EXIT]
