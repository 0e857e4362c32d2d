/** Limits of the wire, shared by schemas and server. */

/** Bytes of one message from a browser: a lesson plan of thirty parts with its notes. 64 steps have under 900. */
export const MESSAGE_BYTES_MAX = 32_768

/** Solutions that a class is shown beside each other; more do not fit a projector. */
export const SHOWN_WAYS_MAX = 8

/** Characters of the title of what a class is shown. */
export const SHOWN_TITLE_LENGTH_MAX = 80

/** Characters of a secret: 32 random bytes in base64url have 43. */
export const SECRET_LENGTH_MAX = 64

/** Characters of an identifier. */
export const ID_LENGTH_MAX = 32

/** Characters of a typed name before it is cleaned; names themselves are shorter. */
export const TYPED_NAME_LENGTH_MAX = 64

/** Characters of a typed room code: six letters, with a space or a dash around each of them and some to spare. */
export const TYPED_CODE_LENGTH_MAX = 16
