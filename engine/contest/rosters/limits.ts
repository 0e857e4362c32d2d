/** Limits of a class's roster. Each has its unit in its name and its reason beside it. */

/** Pupils of a class: two classes that are taught together. */
export const ROSTER_PUPILS_MAX = 60

/** Characters of a class's title. */
export const ROSTER_TITLE_LENGTH_MAX = 40

/** Characters of text that is read at once: sixty lines of a school's own table, with every column there may be. */
export const ROSTER_TEXT_LENGTH_MAX = 20_000
