/** What a teacher can show: a cube of their own from several starts, or a way that plays. Pure. */

import type { TFunction } from 'i18next'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { formatStickers } from '../../../engine/cube/stickers.ts'
import type { TurnName } from '../../../engine/cube/turns.ts'
import type { Showing, ShownCube } from '../../../engine/wire/shown.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import { type ExampleStart, exampleWords, isExamplePart } from './example-start.ts'

/** A student's turns, to be played before the class. */
export type GivenTurns = { readonly name: string; readonly turns: readonly TurnName[] }

/** `own-…` is turned by the teacher; the others play. `kept` is what the class sees already. */
export type Source =
  | 'own-start'
  | 'own-case'
  | 'own-solved'
  | 'own-kept'
  | 'case-way'
  | 'lesson'
  | 'shortest'
  | 'given'
  | 'kept'

/** Everything that a demonstration is made of. */
export type Material = {
  readonly view: Pick<DeskView, 'round' | 'ways' | 'settings' | 'plan'>
  readonly given: GivenTurns | null
  readonly example: ExampleStart
  /** What the class sees since before, when nothing else at hand makes it: another start, turns of a try that has gone. */
  readonly kept: ShownCube | null
}

/** A demonstration as the class sees it, so that it can go on. */
export type TakenUp = {
  readonly source: Source
  /** Turns of the teacher's own cube; none where a way plays. */
  readonly own: readonly TurnName[]
  /** Entries of the row that are done. */
  readonly gone: number
  readonly pointer: string | null
  /** See `Material`. */
  readonly kept: ShownCube | null
}

const SOLVED = formatStickers(solvedCube())

/** @returns what can be shown now, in the order in which it is offered; the first is what a teacher most likely came for */
export function sourcesOf({ view, given, kept }: Omit<Material, 'example'>): Source[] {
  const ofRound: Source[] = view.round === null ? [] : ['own-start']
  const ofExample: Source[] = ['own-case', 'case-way']
  return [
    ...(given === null ? [] : (['given'] as const)),
    ...(kept === null ? [] : [keptSource(kept)]),
    ...(isExamplePart(view) ? [...ofExample, ...ofRound] : [...ofRound, ...ofExample]),
    'own-solved',
    ...(view.ways === null ? [] : (['lesson', 'shortest'] as const)),
  ]
}

/**
 * Whoever goes in again while something is shown goes on with it.
 *
 * @param showing what the class sees @param material with nothing kept @returns null when it is no demonstration
 */
export function takenUp(t: TFunction, showing: Pick<Showing, 'shown' | 'at'>, material: Material): TakenUp | null {
  const { shown, at } = showing
  if (shown.kind !== 'cube') return null
  const source = sourcesOf(material).find((each) => isSame(shownFrom(t, each, material, shown.turns), shown))
  const taken = source ?? keptSource(shown)
  return {
    source: taken,
    own: isOwnCube(taken) ? shown.turns : [],
    gone: Math.min(at.at, shown.turns.length),
    pointer: at.pointer,
    kept: source === undefined ? shown : null,
  }
}

/** The teacher's own cube has no title. */
function keptSource({ title }: ShownCube): Source {
  return title === '' ? 'own-kept' : 'kept'
}

function isSame(one: Omit<ShownCube, 'kind'>, other: Omit<ShownCube, 'kind'>): boolean {
  return (
    one.title === other.title &&
    one.start === other.start &&
    one.baseColour === other.baseColour &&
    one.turns.join() === other.turns.join()
  )
}

export function isOwnCube(source: Source): boolean {
  return source.startsWith('own-')
}

/** @returns how a source is offered */
export function sourceWords(t: TFunction, source: Source, material: Material): string {
  const what = exampleWords(t, material.example, material.view.settings.baseColour)
  switch (source) {
    case 'own-start':
      return t('showing:demonstrate.ofStart')
    case 'own-solved':
      return t('showing:demonstrate.fromSolved')
    case 'own-case':
      return t('showing:demonstrate.ofCase', { what })
    case 'case-way':
      return t('showing:demonstrate.wayOfCase', { what })
    case 'own-kept':
      return t('showing:demonstrate.ofKept')
    case 'kept':
      return material.kept?.title ?? ''
    case 'given':
      return t('showing:demonstrate.ofStudent', { name: material.given?.name ?? '' })
    default:
      return t(`showing:demonstrate.${source}`)
  }
}

/** @param own turns of the teacher's own cube @returns what is shown, but for how far it has gone */
export function shownFrom(
  t: TFunction,
  source: Source,
  material: Material,
  own: readonly TurnName[],
): Omit<ShownCube, 'kind'> {
  const { view, example, kept } = material
  const { round } = view
  if (kept !== null && source === keptSource(kept)) return { ...kept, turns: isOwnCube(source) ? own : kept.turns }
  const isOfCase = source === 'own-case' || source === 'case-way'
  const start = isOfCase ? example.start : source === 'own-solved' ? SOLVED : (round?.start ?? SOLVED)
  return {
    title: isOwnCube(source) ? '' : sourceWords(t, source, material),
    start,
    baseColour: (isOfCase ? null : round?.settings.baseColour) ?? view.settings.baseColour,
    turns: isOwnCube(source) ? own : wayOf(source, material),
  }
}

function wayOf(source: Source, { view: { ways }, given, example }: Material): readonly TurnName[] {
  if (source === 'given') return given?.turns ?? []
  if (source === 'case-way') return example.way
  return (source === 'lesson' ? ways?.lesson.turns : ways?.shortest) ?? []
}
