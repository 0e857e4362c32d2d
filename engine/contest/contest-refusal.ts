/** Why the rules of a round say no. */

/** A closed list: every code has a test, and a sentence in every language. */
export type ContestRefusal =
  /** No such round in this room, or not the one that is played now. Do: look at the screen again. */
  | { readonly code: 'contest/no-such-round' }
  /** The signal has not been given. Do: wait for it. */
  | { readonly code: 'contest/not-started' }
  /** Turns while the round is paused. Do: wait until it goes on. */
  | { readonly code: 'contest/paused' }
  /** The round has ended or was voided. Do: nothing; the next round comes. */
  | { readonly code: 'contest/round-over' }
  /** This phase of the round does not allow that step. Do: look at the desk again. */
  | { readonly code: 'contest/wrong-phase'; readonly phase: string }
  /** Turns are missing before these. Do: send from number `held` on. */
  | { readonly code: 'contest/gap'; readonly held: number }
  /** This try is finished: its goal was reached. Do: start again. */
  | { readonly code: 'contest/try-over'; readonly held: number }
  /** A try further on than the next one. Do: go on with try `current`. */
  | { readonly code: 'contest/try-gap'; readonly current: number }
  /** A later try has begun, perhaps in another tab. Do: go on with try `current`. */
  | { readonly code: 'contest/try-closed'; readonly current: number; readonly held: number }
  /** The round gives everyone one try. Do: go on with it. */
  | { readonly code: 'contest/one-try-only' }
  /** No further try in this round. Do: go on with the last one. */
  | { readonly code: 'contest/too-many-tries'; readonly max: number }
  /** This try is as long as tries may get. Do: start again. */
  | { readonly code: 'contest/too-many-turns'; readonly max: number; readonly held: number }
  /** The round does not allow taking back. Do: turn on, or start again. */
  | { readonly code: 'contest/no-take-back'; readonly held: number }
  /** The round gives no hint of this level. Do: ask for one of level `max`, or turn on. */
  | { readonly code: 'contest/no-such-hint'; readonly max: number; readonly held: number }
  /** Turns handed in after the end have to be the whole try, as it stands on record so far. Do: nothing; the record stands. */
  | { readonly code: 'contest/not-the-same-try' }
  /** The round still runs: turns are sent, not handed in. Do: send them. */
  | { readonly code: 'contest/still-open' }
  /** So many nudges in one round help nobody. Do: go over and talk. */
  | { readonly code: 'contest/too-many-nudges'; readonly max: number }
  /** Nothing is there to take back. */
  | { readonly code: 'contest/nothing-to-take-back'; readonly held: number }
