/**
 * What each kind of screen is shown. These types are the gate: the server builds them from its unfiltered state in one
 * place, and nothing else is ever sent. Moments are milliseconds of the server's clock.
 */

import type { RoomCode, RoomId, RoundId, SeatId } from '../contest/ids.ts'
import type { Nudge } from '../contest/nudges.ts'
import type { LessonPlan } from '../contest/plans/lesson-plan.ts'
import type { Lane } from '../contest/rank-board.ts'
import type { NameWay, RoomEntry } from '../contest/room-entry.ts'
import type { ClassRoster } from '../contest/rosters/class-roster.ts'
import type { RoundClock } from '../contest/round-clock.ts'
import type { RoundSettings } from '../contest/round-settings.ts'
import type { GivenHint, HowSent, Reached } from '../contest/round-state.ts'
import type { StepName } from '../contest/steps.ts'
import type { StudentActivity } from '../contest/student-signs.ts'
import type { TurnName } from '../cube/turns.ts'
import type { LessonStep } from '../method/way/lesson-step.ts'
import type { Showing } from './shown.ts'

/** The round as every screen of its room may know it. */
export type RoundView = {
  readonly id: RoundId
  readonly number: number
  readonly settings: RoundSettings
  /** The start as 54 sticker letters; see formatStickers. */
  readonly start: string
  readonly clock: RoundClock
}

/** The fewest turns that the round can be played in. */
export type ParView = {
  /** Par when `proven`, else the best known number of turns. */
  readonly turns: number
  readonly proven: boolean
  /** Fewer turns than this are proven not to be enough; equal to `turns` exactly when `proven`. */
  readonly lowerBound: number
}

/** Two ways from the start to the goal, for the teacher to talk through. Turns are those of the start's own hold. */
export type WaysView = {
  /** A shortest solution, or the best known: `ParView` says which. */
  readonly shortest: readonly TurnName[]
  /** What the taught sequences would do. */
  readonly lesson: {
    readonly turns: readonly TurnName[]
    /** Counted as in a round: re-holds are free. */
    readonly nTurns: number
    readonly steps: readonly WayStepView[]
  }
}

/** A step of the lesson way, with its turns as the sequence book writes them: `y'`, `U2 A^3`. */
export type WayStepView = Pick<LessonStep, 'stage' | 'isRepair' | 'lookFor' | 'why'> & {
  readonly mark: LessonStep['hold']['mark']
  readonly hold: string
  readonly do: string
  /** How many of the lesson way's turns are of this step. */
  readonly nSteps: number
}

/** A student's own try, enough to build the bench again after a reload. */
export type TryView = {
  readonly number: number
  readonly steps: readonly StepName[]
  readonly reached: Reached | null
  readonly best: Reached | null
}

/** A round of a room, in a list. */
export type RoundInList = {
  readonly id: RoundId
  readonly number: number
  readonly settings: RoundSettings
  readonly phase: RoundClock['phase']
  /** Counted turns of the student's best try; null on the desk, and as long as the goal was not reached. */
  readonly bestTurns: number | null
}

/** What the door of a room asks of a student. */
export type Door = {
  readonly code: RoomCode
  readonly names: NameWay
  /** Names to pick from; empty unless names come from a roster. */
  readonly pupils: readonly { readonly pupilId: string; readonly name: string; readonly isHere: boolean }[]
  readonly approve: boolean
  readonly locked: boolean
}

/** The last nudge of a kind; `number` counts all nudges of the student's round, so that a later one has a higher number. */
type LastNudge<Kind extends Nudge['kind']> = {
  readonly number: number
  readonly nudge: Extract<Nudge, { kind: Kind }>
} | null

/** What the teacher sent a student in a round: the last of each kind, for they stand side by side. */
export type NudgesView = {
  readonly hint: LastNudge<'hint'>
  readonly words: LastNudge<'words'>
  readonly point: LastNudge<'point'>
}

/** What a student's bench is shown. */
export type BenchView = {
  readonly kind: 'bench'
  readonly room: {
    readonly code: RoomCode
    readonly closed: boolean
    readonly pretend: boolean
    /** Until when a take-home room is open; null in a room where all play at once. */
    readonly deadlineMs: number | null
  }
  readonly me: {
    readonly seatId: SeatId
    readonly name: string
    readonly late: boolean
    readonly asksForHelp: boolean
    /** Has said that the real cube shows the start. */
    readonly ready: boolean
  }
  /** In a take-home room all its rounds, to choose from; else empty. */
  readonly rounds: readonly RoundInList[]
  readonly round: RoundView | null
  /**
   * Turns that bring a solved real cube, held home, to the start; null where the round is played on screens, while they are
   * searched for, and where there are none.
   */
  readonly setup: readonly TurnName[] | null
  /** No setup was found: the round cannot be played on a real cube. */
  readonly noSetup: boolean
  /** The last nudges of this round. */
  readonly nudges: NudgesView
  /** What came of turns that were handed in after the end. */
  readonly handedIn: { readonly turns: number; readonly reached: boolean } | null
  /** What the teacher shows to all; null for nothing. */
  readonly showing: Showing | null
  readonly mine: TryView | null
  /** As on the board. */
  readonly par: ParView | null
  /** The lanes that this student may see now: all, the own one, or none. */
  readonly lanes: readonly Lane[]
  readonly nReached: number
  readonly nStudents: number
}

/** What the projector is shown. */
export type BoardView = {
  readonly kind: 'board'
  /** Rises by one with every tick; a gap means that the whole view is asked for again. */
  readonly version: number
  readonly room: {
    readonly code: RoomCode
    readonly closed: boolean
    readonly locked: boolean
    /** Where students go, best first: `192.0.2.7:3000`. */
    readonly addresses: readonly string[]
    readonly pretend: boolean
    readonly deadlineMs: number | null
  }
  readonly showing: Showing | null
  /** Students whose real cube shows the start. */
  readonly nReady: number
  readonly round: RoundView | null
  /** Number of rounds that the teacher has begun here. */
  readonly nRounds: number
  readonly lanes: readonly Lane[]
  /** Null while it is hidden: until the round has ended, or the teacher shows it. */
  readonly par: ParView | null
  /** Whether lanes are withheld until the round has ended, as the teacher set it. */
  readonly covered: boolean
  readonly nReached: number
  readonly nStudents: number
  /** Names in the order in which they came in, for the screen on which all gather. */
  readonly names: readonly string[]
}

/** A student as the desk sees them. */
export type SeatView = {
  readonly seatId: SeatId
  readonly name: string
  /** Whether a screen of this student is connected now. */
  readonly here: boolean
  readonly late: boolean
  /** Simulated: never mixed with real records. */
  readonly pretend: boolean
  readonly asksForHelp: boolean
  /** The real cube shows the start. */
  readonly ready: boolean
  /** Picked from the roster of the room. */
  readonly pupilId: string | null
}

/** A student's cube on the wall, and what the signs are computed from. */
export type WallCell = StudentActivity & {
  readonly seatId: SeatId
  /** The cube as 54 sticker letters; null while it stands at the start. */
  readonly stickers: string | null
  /** How long a message takes to this student's page and back; null when that is not known. */
  readonly delayMs: number | null
}

/** Somebody who waits at the door. */
export type KnockView = {
  readonly knockId: string
  readonly name: string
  /** Wants to take over the seat of that name from another device. */
  readonly moves: boolean
}

/** What one student has turned in the try under way, and the best one. */
export type TryLook = {
  readonly seatId: SeatId
  readonly tryNumber: number
  readonly turns: readonly TurnName[]
  readonly hints: readonly GivenHint[]
  readonly reached: Reached | null
  readonly nudges: readonly Nudge[]
}

/** One student's solution of a round, or how far the last try went. */
export type SolutionView = {
  readonly seatId: SeatId
  readonly name: string
  readonly tryNumber: number
  readonly turns: readonly TurnName[]
  readonly reached: Reached | null
  readonly hints: readonly GivenHint[]
  readonly nNudges: number
  readonly how: HowSent
  /** Came in after the end; it has no place. */
  readonly afterEnd: boolean
}

/** A round with everything that a review compares. */
export type ReviewView = {
  readonly round: RoundView
  readonly par: ParView | null
  readonly ways: WaysView | null
  /** Best first. */
  readonly solutions: readonly SolutionView[]
}

/** A teacher's own lesson plans and rosters. */
export type Shelf = {
  readonly plans: readonly { readonly planId: string; readonly plan: LessonPlan }[]
  readonly rosters: readonly { readonly rosterId: string; readonly roster: ClassRoster }[]
}

/** What the desk is shown of the room that it watches. */
export type DeskView = {
  readonly kind: 'desk'
  /** As on the board. */
  readonly version: number
  readonly room: {
    readonly id: RoomId
    readonly code: RoomCode
    readonly locked: boolean
    readonly closed: boolean
    readonly addresses: readonly string[]
    /** Secret of the read-only viewer link. */
    readonly viewerKey: string
    readonly openedAtMs: number
    readonly entry: RoomEntry
    readonly deadlineMs: number | null
  }
  /** All rounds of the room, the first one first. */
  readonly rounds: readonly RoundInList[]
  /** The plan of this lesson, and the part that the class is at. */
  readonly plan: { readonly plan: LessonPlan; readonly at: number } | null
  readonly knocks: readonly KnockView[]
  readonly cells: readonly WallCell[]
  readonly showing: Showing | null
  /** What was shown and stopped here since the server was started, counted; 0: what was shown before, it has forgotten. */
  readonly nShowings: number
  /** The setup of a round for real cubes; `none` where so many stages leave none; null otherwise, and while it is searched for. */
  readonly setup: { readonly kind: 'turns'; readonly turns: readonly TurnName[] } | { readonly kind: 'none' } | null
  /** Settings of the next round. */
  readonly settings: RoundSettings
  readonly seats: readonly SeatView[]
  readonly round: RoundView | null
  readonly nRounds: number
  readonly lanes: readonly Lane[]
  /** Null without a round, and for a moment while it is worked out. */
  readonly par: ParView | null
  /** Whether the teacher shows par to the class while the round runs. */
  readonly parShown: boolean
  /** Null as long as `par` is. */
  readonly ways: WaysView | null
  /** Saving is paused: the disk refuses; turns wait on the benches. */
  readonly savingPaused: boolean
}

/** The teacher's open rooms. */
export type DeskHome = {
  readonly rooms: readonly {
    readonly id: RoomId
    readonly code: RoomCode
    readonly openedAtMs: number
    readonly nStudents: number
    readonly nRounds: number
    readonly playing: boolean
    /** Until when a take-home room is open. */
    readonly deadlineMs: number | null
  }[]
}

/** Lanes that changed since the last tick. Grouped per room, at most ten a second. */
export type Tick = {
  readonly version: number
  readonly lanes: readonly Lane[]
  readonly nReached: number
}

/** For the desk: the cubes as well. */
export type DeskTick = Tick & { readonly cells: readonly WallCell[] }
