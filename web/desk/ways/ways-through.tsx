/**
 * Two ways through the start, for the teacher to talk through: the shortest and what the lesson would do, on the same
 * squares, and the lesson way step by step. Folded away while the round runs, since a desk may be on a projector.
 */

import { type ReactNode, useId } from 'react'
import { useTranslation } from 'react-i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import { parseStickers, stickersOf } from '../../../engine/cube/stickers.ts'
import { type Turn, type TurnName, turnOf } from '../../../engine/cube/turns.ts'
import type { ParView, WaysView } from '../../../engine/wire/views.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import { WayRibbon } from '../../parts/ribbon/way-ribbon.tsx'
import { LessonSteps } from './lesson-steps.tsx'
import styles from './ways-through.module.css'

type WaysThroughProps = {
  /** The start as 54 sticker letters. */
  start: string
  par: ParView | null
  ways: WaysView | null
  baseColour: Colour
  isOpen: boolean
  onOpen: (open: boolean) => void
}

export function WaysThrough({ start, par, ways, baseColour, isOpen, onOpen }: WaysThroughProps) {
  const { t } = useTranslation()
  return (
    <details className={styles.ways} open={isOpen} onToggle={(event) => onOpen(event.currentTarget.open)}>
      <summary>
        <h2>{t('desk:ways.title')}</h2>
      </summary>
      {par === null || ways === null ? (
        <p className={styles.workedOut}>{t('desk:ways.workedOut')}</p>
      ) : (
        <>
          <Start start={start} baseColour={baseColour} />
          <BothWays par={par} ways={ways} baseColour={baseColour} />
        </>
      )}
    </details>
  )
}

/** The cube as it is held when both ways begin, so that each turn and each "top left" can be checked. */
function Start({ start, baseColour }: { start: string; baseColour: Colour }) {
  const { t } = useTranslation()
  const read = parseStickers(start)
  if (!read.ok) return null
  return (
    <figure className={styles.start}>
      <CubePicture
        stickers={stickersOf(read.value)}
        baseColour={baseColour}
        label={t('desk:ways.startLabel')}
        className={styles.startPicture}
      />
      <figcaption>{t('desk:ways.start')}</figcaption>
    </figure>
  )
}

function BothWays({ par, ways, baseColour }: { par: ParView; ways: WaysView; baseColour: Colour }) {
  const { t } = useTranslation()
  const { shortest, lesson } = ways
  const turnsOfPar = t('common:turns', { count: par.turns })
  const bound = t('common:par.atLeast', { turns: par.lowerBound })
  return (
    <>
      <Way
        title={t(par.proven ? 'desk:ways.shortest' : 'desk:ways.shortestKnown')}
        count={t(par.proven ? 'desk:ways.proven' : 'desk:ways.bestKnown', { turns: turnsOfPar, bound })}
      >
        <WayRibbon turns={turnsNamed(shortest)} nTurns={par.turns} />
      </Way>
      <Way title={t('desk:ways.lesson')} count={t('common:turns', { count: lesson.nTurns })}>
        <WayRibbon turns={turnsNamed(lesson.turns)} nTurns={lesson.nTurns} />
        <LessonSteps steps={lesson.steps} baseColour={baseColour} />
      </Way>
    </>
  )
}

function Way({ title, count, children }: { title: string; count: string; children: ReactNode }) {
  const id = useId()
  return (
    <section className={styles.way} aria-labelledby={id}>
      <h3 id={id}>{title}</h3>
      <p>{count}</p>
      {children}
    </section>
  )
}

function turnsNamed(names: readonly TurnName[]): Turn[] {
  return names.map(turnOf)
}
