/**
 * A way through a start: squares, one a turn, outlined where nobody has played it and filled where a student has, with a
 * flag and the number at the end. Goes on in the next line where it has to, but never inside a trigger. Ways under one
 * another share the squares.
 */

import { useTranslation } from 'react-i18next'
import type { Turn } from '../../../engine/cube/turns.ts'
import { classNames } from '../../ui/class-names.ts'
import { Sign } from '../../ui/signs.tsx'
import { writtenTurn } from '../turn-words.ts'
import { type RibbonGroup, ribbonGroups } from './ribbon-groups.ts'
import { ribbonWords } from './ribbon-words.ts'
import styles from './way-ribbon.module.css'

type WayRibbonProps = {
  readonly turns: readonly Turn[]
  /** As counted in a round; stands at the end of the ribbon. */
  readonly nTurns: number
  /** Made by a student: filled squares. */
  readonly isMade?: boolean
  /** Whether it leads to the goal; a flag says so. */
  readonly reaches?: boolean
}

export function WayRibbon({ turns, nTurns, isMade = false, reaches = true }: WayRibbonProps) {
  const { t } = useTranslation()
  const groups = ribbonGroups(turns)
  const hasReHolds = groups.some(({ reHolds }) => reHolds.length > 0)
  return (
    <div className={classNames(styles.way, hasReHolds && styles.withReHolds, isMade && styles.made)} dir="ltr">
      <p className="visually-hidden">{ribbonWords(t, turns)}</p>
      {groups.map((group, index) => (
        <span key={group.at} className={styles.group} aria-hidden="true">
          <Group group={group} />
          {index === groups.length - 1 && (
            <span className={styles.end}>
              {reaches && <Sign of="reached" className={styles.flag} />}
              <b>{nTurns}</b>
            </span>
          )}
        </span>
      ))}
    </div>
  )
}

function Group({ group: { reHolds, part } }: { group: RibbonGroup }) {
  return (
    <>
      {reHolds.length > 0 && (
        <span className={styles.seam}>
          <span className={styles.tokens}>
            {reHolds.map((turn, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: re-holds in a row have no identity but their place.
              <i key={index} className={styles.reHold}>
                {writtenTurn(turn)}
              </i>
            ))}
          </span>
        </span>
      )}
      {part?.kind === 'turn' && (
        <span className={classNames(styles.square, part.squares === 2 && styles.wide)}>{writtenTurn(part.turn)}</span>
      )}
      {part?.kind === 'trigger' && (
        <span className={classNames(styles.trigger, styles[part.side])}>
          {part.turns.map((turn) => (
            <span key={turn}>{writtenTurn(turn)}</span>
          ))}
        </span>
      )}
    </>
  )
}
