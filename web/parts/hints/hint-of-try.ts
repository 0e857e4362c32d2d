/**
 * Which hint stands in a try: found from all of its steps and from what the teacher sent meanwhile, and not from the last
 * change. So loading the page again brings back the same, and nothing that was given is asked for, and paid for, twice. Pure.
 */

import { hintLevelOf, type Step, TAKE_BACK } from '../../../engine/contest/steps.ts'
import { applyTurn } from '../../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../../engine/cube/cube-position.ts'
import { inverseTurn, type Turn } from '../../../engine/cube/turns.ts'
import type { HintLevel } from '../../../engine/method/way/hint-level.ts'
import { stepUnderWay } from '../../../engine/method/way/step-under-way.ts'
import { type Lesson, type ShownHint, shownHint } from './shown-hint.ts'

/** A hint that the teacher sent: the number of the nudge, and behind how many steps of the try it came. */
export type TaughtHint = { readonly number: number; readonly level: HintLevel; readonly afterSteps: number }

/** A hint that stands; `taught` is the number of the nudge that brought it, null for one that was asked for. */
export type StandingHint = ShownHint & { readonly taught: number | null }

/** The hints of a try up to some step. To be handed in again as it is: the next steps then begin where it ends. */
export type HintWalk = {
  readonly start: CubePosition
  readonly lesson: Lesson
  readonly events: readonly HintEvent[]
  readonly position: CubePosition
  readonly standing: readonly Turn[]
  /** What was given at each row of standing turns. */
  readonly given: ReadonlyMap<string, Given>
  readonly shown: ShownHint | null
  readonly taught: number | null
}

type HintEvent = Step | TaughtHint
type Given = { readonly levels: readonly HintLevel[]; readonly taught: number | null }

/**
 * A hint belongs to the turns that stood when it was given. Whoever takes a turn back and comes again to the same turns
 * still has it; other turns, even as many, do not bring it back.
 *
 * @param before the walk of the same try so far, to begin there; null, or one of other steps, to begin at the start
 * @param steps all steps of the try
 * @param taught what the teacher sent in this try, the first one first; one behind more steps than there are is the last
 */
export function walkHints(
  before: HintWalk | null,
  start: CubePosition,
  steps: readonly Step[],
  taught: readonly TaughtHint[],
  lesson: Lesson,
): HintWalk {
  const events = eventsOf(steps, taught)
  const goesOn =
    before !== null && before.start === start && before.lesson === lesson && startsWith(events, before.events)
  if (goesOn && before.events.length === events.length) return before
  const position = copyCube(goesOn ? before.position : start)
  const standing = goesOn ? [...before.standing] : []
  const given = new Map(goesOn ? before.given : [])
  let shown = goesOn ? before.shown : null
  let by = goesOn ? before.taught : null
  for (const event of events.slice(goesOn ? before.events.length : 0)) {
    carryOut(event, position, standing, given)
    const here = given.get(standing.join())
    // Nothing stands and nothing was given: a try without hints costs no thought.
    if (shown === null && here === undefined) continue
    const next =
      here === undefined
        ? shownHint(shown, copyCube(position), [], lesson)
        : shownHint(shown, askedAt(start, standing, position, lesson), here.levels, lesson)
    if (here !== undefined && (next !== shown || typeof event !== 'number')) by = here.taught
    shown = next
  }
  return { start, lesson, events, position, standing, given, shown, taught: by }
}

/** @returns where a hint belongs that is given now: amid a sequence where that began, for the way from here would mend it */
function askedAt(start: CubePosition, turns: readonly Turn[], position: CubePosition, { span, book }: Lesson) {
  return stepUnderWay(start, turns, span, book)?.position ?? copyCube(position)
}

/** @returns what stands at the end of the walk */
export function hintAtTheEnd({ shown, taught }: HintWalk): StandingHint | null {
  return shown === null ? null : { ...shown, taught }
}

function carryOut(event: HintEvent, position: CubePosition, standing: Turn[], given: Map<string, Given>): void {
  const level = typeof event === 'number' ? hintLevelOf(event) : event.level
  if (level !== null) {
    const here = standing.join()
    const taught = typeof event === 'number' ? null : event.number
    given.set(here, { levels: [...(given.get(here)?.levels ?? []), level], taught })
  } else if (event === TAKE_BACK) {
    const last = standing.pop()
    if (last !== undefined) applyTurn(position, inverseTurn(last))
  } else {
    standing.push(event as Turn)
    applyTurn(position, event as Turn)
  }
}

function eventsOf(steps: readonly Step[], taught: readonly TaughtHint[]): HintEvent[] {
  const events: HintEvent[] = []
  for (let nSteps = 0; nSteps <= steps.length; nSteps++) {
    for (const hint of taught) if (Math.min(hint.afterSteps, steps.length) === nSteps) events.push(hint)
    if (nSteps < steps.length) events.push(steps[nSteps])
  }
  return events
}

function startsWith(events: readonly HintEvent[], first: readonly HintEvent[]): boolean {
  return first.length <= events.length && first.every((event, index) => isSame(event, events[index]))
}

function isSame(one: HintEvent, other: HintEvent): boolean {
  if (typeof one === 'number' || typeof other === 'number') return one === other
  return one.number === other.number && one.level === other.level
}
