/**
 * The turns of a try as a ribbon: one square, one turn. In pencil while the try runs; when the goal is reached the
 * squares are inked one by one from the margin, and a flag goes up at the end. The newest turn is always in sight.
 */

import { type CSSProperties, memo, useLayoutEffect, useRef } from 'react'
import { useTranslation } from 'react-i18next'
import type { Turn } from '../../../engine/cube/turns.ts'
import { classNames } from '../../ui/class-names.ts'
import { Sign } from '../../ui/signs.tsx'
import { type RibbonPart, ribbonParts } from '../ribbon/ribbon-parts.ts'
import { writtenTurn } from '../turn-words.ts'
import styles from './turn-ribbon.module.css'

type TurnRibbonProps = {
  readonly turns: readonly Turn[]
  readonly reached: boolean
  /** Whether the place of the next turn is shown, dashed. */
  readonly goesOn: boolean
}

export const TurnRibbon = memo(function TurnRibbon({ turns, reached, goesOn }: TurnRibbonProps) {
  const { t } = useTranslation()
  const strip = useRef<HTMLDivElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: each turn and the flag move the end of the ribbon.
  useLayoutEffect(() => {
    if (strip.current !== null) strip.current.scrollLeft = strip.current.scrollWidth
  }, [turns.length, reached])

  const words = turns.length === 0 ? t('bench:line.noTurns') : turns.map(writtenTurn).join(' ')
  return (
    <section
      ref={strip}
      className={styles.strip}
      dir="ltr"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a long ribbon scrolls, so it has to be in the order of Tab.
      tabIndex={0}
      data-own-arrows
      aria-label={t('bench:line.ribbon')}
    >
      <p className="visually-hidden">{t('bench:line.ribbonWords', { turns: words })}</p>
      <div
        className={classNames(styles.ribbon, reached && styles.inked)}
        style={{ '--n': Math.max(1, turns.length) } as CSSProperties}
        aria-hidden="true"
      >
        {ribbonParts(turns).map((part) => (
          <Part key={`${part.kind}${part.at}`} part={part} nTurns={turns.length} />
        ))}
        {reached && (
          <span className={styles.flag}>
            <Sign of="reached" />
          </span>
        )}
        {goesOn && <span className={styles.next} />}
      </div>
    </section>
  )
})

function Part({ part, nTurns }: { part: RibbonPart; nTurns: number }) {
  if (part.kind === 're-hold') return <span className={styles.reHold}>{writtenTurn(part.turn)}</span>
  if (part.kind === 'turn') {
    return <Square turn={part.turn} at={part.at} isNewest={part.at === nTurns - 1} isWide={part.squares === 2} />
  }
  return (
    <span className={classNames(styles.trigger, styles[part.side])}>
      {part.turns.map((turn, index) => {
        const at = part.at + index
        return <Square key={at} turn={turn} at={at} isNewest={at === nTurns - 1} />
      })}
    </span>
  )
}

function Square(props: { turn: Turn; at: number; isNewest: boolean; isWide?: boolean }) {
  const { turn, at, isNewest, isWide = false } = props
  return (
    <span
      className={classNames(styles.square, isWide && styles.wide, isNewest && styles.newest)}
      style={{ '--at': at } as CSSProperties}
    >
      <span className={styles.letters}>{writtenTurn(turn)}</span>
    </span>
  )
}
