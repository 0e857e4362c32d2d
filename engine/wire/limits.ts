/** Limits of the wire, shared by schemas and server. */

/** Bytes of one message from a browser. The largest honest one, 64 steps, has under 900. */
export const MESSAGE_BYTES_MAX = 4_096

/** Characters of a secret: 32 random bytes in base64url have 43. */
export const SECRET_LENGTH_MAX = 64

/** Characters of an identifier. */
export const ID_LENGTH_MAX = 32

/** Characters of a typed name before it is cleaned; names themselves are shorter. */
export const TYPED_NAME_LENGTH_MAX = 64

/** Characters of a typed room code: six letters, with a space or a dash around each of them and some to spare. */
export const TYPED_CODE_LENGTH_MAX = 16
