/**
 * The version of the protocol between browser and server. It rises by one with every change that an old page would
 * misread. A page says its version when it connects; a server of another version refuses it with `wire/out-of-date`,
 * and the page tells its reader to reload.
 */
export const PROTOCOL_VERSION = 4
