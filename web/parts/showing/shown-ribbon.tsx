/** The turns of a showing as a ribbon, with a mark where it stands. */

import { type CSSProperties, useEffect, useMemo, useRef } from 'react'
import { type TurnName, turnOf } from '../../../engine/cube/turns.ts'
import { classNames } from '../../ui/class-names.ts'
import { ribbonParts } from '../ribbon/ribbon-parts.ts'
import { writtenTurn } from '../turn-words.ts'
import styles from './shown-ribbon.module.css'

type ShownRibbonProps = {
  readonly turns: readonly TurnName[]
  /** Turns done. */
  readonly at: number
  readonly isMade?: boolean
}

export function ShownRibbon({ turns, at, isMade = false }: ShownRibbonProps) {
  const strip = useRef<HTMLDivElement>(null)
  const parts = useMemo(() => ribbonParts(turns.map(turnOf)), [turns])
  // biome-ignore lint/correctness/useExhaustiveDependencies: the mark moves with `at`.
  useEffect(() => {
    const mark = strip.current?.querySelector<HTMLElement>('[data-next]')
    if (strip.current !== null && mark != null) {
      strip.current.scrollLeft = mark.offsetLeft - strip.current.clientWidth / 2
    }
  }, [at, turns])
  return (
    <div ref={strip} className={classNames(styles.ribbon, isMade && styles.made)} dir="ltr" aria-hidden="true">
      {parts.map((part) =>
        part.kind === 're-hold' ? (
          <span
            key={`r${part.at}`}
            className={classNames(styles.reHold, part.at < at && styles.done)}
            {...nextAt(part.at, at)}
          >
            {writtenTurn(part.turn)}
          </span>
        ) : (
          <span
            key={part.at}
            className={classNames(styles.part, part.kind === 'trigger' && styles[part.side])}
            style={{ '--squares': part.kind === 'trigger' ? 4 : part.squares } as CSSProperties}
          >
            {(part.kind === 'trigger' ? part.turns : [part.turn]).map((turn, index) => (
              <span
                // biome-ignore lint/suspicious/noArrayIndexKey: turns of a trigger have no identity but their place.
                key={index}
                className={classNames(styles.square, part.at + index < at && styles.done)}
                {...nextAt(part.at + index, at)}
              >
                {writtenTurn(turn)}
              </span>
            ))}
          </span>
        ),
      )}
    </div>
  )
}

function nextAt(index: number, at: number): object {
  return index === at ? { 'data-next': '' } : {}
}
