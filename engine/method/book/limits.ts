/** How large a sequence book may be: far above what anybody teaches, and low enough to bound a stranger's work for us. */

/** Longest text of a book, in UTF-16 units. */
export const BOOK_TEXT_MAX = 20_000

/** Most lines of a text, empty ones and comments included. */
export const BOOK_LINES_MAX = 600

/** Longest title, in UTF-16 units. It has to fit on a screen of 360 pixels in two lines. */
export const BOOK_TITLE_MAX = 60

/** Longest name of a part, in UTF-16 units. */
export const PART_NAME_MAX = 24

/** Most named parts. */
export const BOOK_PARTS_MAX = 40

/** Most sequences of one stage. The whole last layer has 57 + 21 patterns; nobody teaches more in a single stage. */
export const STAGE_SEQUENCES_MAX = 60

/** Most turns of a sequence or a part once it is written out. The longest of the lesson has 48. */
export const SEQUENCE_TURNS_MAX = 200

/** Largest power. The triggers have order 6: A^6 does nothing. */
export const POWER_MAX = 20

/** Deepest nesting of brackets. */
export const BRACKET_DEPTH_MAX = 4
