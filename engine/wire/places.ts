/** Where page and server meet. Apart from the schemas, so that a page need not load a parser to know them. */

/** Path of Socket.IO. */
export const SOCKET_PATH = '/live'

/** Path of the endpoint that trades the one-time link for a session. */
export const DESK_ENTER_PATH = '/api/desk/enter'

/** Name of the cookie that holds a teacher's session; set by the server, unreadable for scripts. */
export const DESK_COOKIE = 'fairturn_desk'
