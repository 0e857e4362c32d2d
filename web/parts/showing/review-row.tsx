/** One way of a review: the name, its ribbon, and where the coach has something to say. A press chooses it at that turn. */

import type { CSSProperties } from 'react'
import { useTranslation } from 'react-i18next'
import { classNames } from '../../ui/class-names.ts'
import { Sign } from '../../ui/signs.tsx'
import { type RibbonPart, ribbonParts } from '../ribbon/ribbon-parts.ts'
import { ribbonWords } from '../ribbon/ribbon-words.ts'
import { writtenTurn } from '../turn-words.ts'
import { bracketsOf } from './brackets.ts'
import { reHoldShift } from './re-hold-shift.ts'
import type { ReadWay } from './read-ways.ts'
import styles from './review-row.module.css'
import { ownerWords } from './way-words.ts'

type ReviewRowProps = {
  readonly row: ReadWay
  readonly index: number
  readonly isChosen: boolean
  readonly square: number
  readonly namesWidth: number
  readonly onChoose?: ((chosen: number, at: number) => void) | undefined
}

/** Room for what stands at a bracket, in pixels; as much as the larger words of a projector take. */
const LABEL_PX = 132

export function ReviewRow({ row, index, isChosen, square, namesWidth, onChoose }: ReviewRowProps) {
  const { t } = useTranslation()
  const { way, turns, reading, aligned } = row
  const isMade = way.owner.kind === 'name' || way.owner.kind === 'letter'
  const left = (turnIndex: number) => aligned.places[turnIndex] * square
  const name = ownerWords(t, way)
  const brackets = isMade ? bracketsOf(reading.notes, left, square, LABEL_PX) : []
  return (
    <li
      className={classNames(styles.row, isChosen && styles.chosen)}
      style={{ '--square': `${square}px` } as CSSProperties}
    >
      <button
        type="button"
        className={styles.name}
        style={{ width: namesWidth }}
        aria-pressed={isChosen}
        disabled={onChoose === undefined}
        onClick={() => onChoose?.(index, 0)}
      >
        {name}
      </button>
      <div className={styles.ribbon} dir="ltr">
        <p className="visually-hidden">
          {ribbonWords(t, turns)}
          {way.hintTurns > 0 && ` ${t('showing:forHintsHeard', { count: way.hintTurns })}`}
        </p>
        {aligned.waits.map(({ turnIndex, squares }) => (
          <span
            key={turnIndex}
            className={styles.wait}
            style={{ left: left(turnIndex) - squares * square, width: squares * square }}
          />
        ))}
        {ribbonParts(turns).map((part) => (
          <Part
            key={`${part.kind}${part.at}`}
            part={part}
            left={left(part.at) + reHoldShift(turns, part.at) * square}
            isMade={isMade}
            onPress={onChoose === undefined ? undefined : (turn) => onChoose(index, turn + 1)}
          />
        ))}
        <span className={styles.end} style={{ left: left(turns.length) }} aria-hidden="true">
          {way.reached && <Sign of="reached" />}
          <b>{reading.nTurns + way.hintTurns}</b>
          {way.hintTurns > 0 && <small>{t('showing:forHints', { count: way.hintTurns })}</small>}
        </span>
        {brackets.map(({ note, left, width }) => (
          <span key={`${note.key}${note.fromTurn}`} className={styles.bracket} style={{ left, width }}>
            <span>{t('showing:bracket', { count: note.costTurns })}</span>
          </span>
        ))}
      </div>
    </li>
  )
}

type PartProps = {
  readonly part: RibbonPart
  readonly left: number
  readonly isMade: boolean
  readonly onPress: ((turnIndex: number) => void) | undefined
}

function Part({ part, left, isMade, onPress }: PartProps) {
  if (part.kind === 're-hold') {
    return (
      <span className={styles.reHold} style={{ left }} aria-hidden="true">
        {writtenTurn(part.turn)}
      </span>
    )
  }
  const turns = part.kind === 'trigger' ? part.turns : [part.turn]
  const squares = part.kind === 'trigger' ? turns.length : part.squares
  return (
    // The slider beneath and the names beside do the same for the keyboard.
    <span
      className={classNames(styles.part, isMade && styles.made, part.kind === 'trigger' && styles[part.side])}
      style={{ left, width: `calc(var(--square) * ${squares} - 2px)` }}
      aria-hidden="true"
    >
      {turns.map((turn, index) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: hidden from the keyboard on purpose, see above.
        // biome-ignore lint/a11y/noStaticElementInteractions: the same.
        // biome-ignore lint/suspicious/noArrayIndexKey: turns of a trigger have no identity but their place.
        <i key={index} onClick={() => onPress?.(part.at + index)}>
          {writtenTurn(turn)}
        </i>
      ))}
    </span>
  )
}
