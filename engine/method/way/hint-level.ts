/** The rungs of the hint ladder, apart from the ladder: a page or a message need not load the lesson to name one. */

/** 1 what to look for, 2 also how to hold, 3 also what to do and why. */
export const HINT_LEVELS = [1, 2, 3] as const

/** 1, 2 or 3. */
export type HintLevel = (typeof HINT_LEVELS)[number]
