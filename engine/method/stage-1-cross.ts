/**
 * Stage 1, the cross: the four base edges are home, so that each also matches the centre at its side.
 *
 *     the base seen from below        the usual slip
 *            . D .                      . D .      the cross is there on the base, but its arms
 *            D D D                      D D D      do not match the side centres: they were
 *            . D .                      . D .      brought in without looking at the sides
 *
 * Starts: any legal position.
 */

import { BASE_EDGES, type GoalPart, homePart } from './goal-part.ts'

/** The four base edges at home. */
export const CROSS_PARTS: readonly GoalPart[] = BASE_EDGES.map(homePart)
