/** What a teacher can show: a cube of their own from several starts, or a way that plays. Pure. */

import type { TFunction } from 'i18next'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { formatStickers } from '../../../engine/cube/stickers.ts'
import type { TurnName } from '../../../engine/cube/turns.ts'
import type { ShownCube } from '../../../engine/wire/shown.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import { type ExampleStart, exampleWords, isExamplePart } from './example-start.ts'

/** A student's turns, to be played before the class. */
export type GivenTurns = { readonly name: string; readonly turns: readonly TurnName[] }

/** `own-…` is turned by the teacher; the others play. */
export type Source = 'own-start' | 'own-case' | 'own-solved' | 'case-way' | 'lesson' | 'shortest' | 'given'

/** Everything that a demonstration is made of. */
export type Material = {
  readonly view: Pick<DeskView, 'round' | 'ways' | 'settings' | 'plan'>
  readonly given: GivenTurns | null
  readonly example: ExampleStart
}

const SOLVED = formatStickers(solvedCube())

/** @returns what can be shown now, in the order in which it is offered; the first is what a teacher most likely came for */
export function sourcesOf({ view, given }: Pick<Material, 'view' | 'given'>): Source[] {
  const ofRound: Source[] = view.round === null ? [] : ['own-start']
  const ofExample: Source[] = ['own-case', 'case-way']
  return [
    ...(given === null ? [] : (['given'] as const)),
    ...(isExamplePart(view) ? [...ofExample, ...ofRound] : [...ofRound, ...ofExample]),
    'own-solved',
    ...(view.ways === null ? [] : (['lesson', 'shortest'] as const)),
  ]
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
  const { view, example } = material
  const { round } = view
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
