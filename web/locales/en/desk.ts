/** Words of the teacher's desk, a file for each of its screens. */

import { deskHome } from './desk-home.ts'
import { deskRoom } from './desk-room.ts'
import { deskSettings } from './desk-settings.ts'
import { deskWatching } from './desk-watching.ts'

export const desk = { ...deskHome, ...deskRoom, ...deskSettings, ...deskWatching } as const
