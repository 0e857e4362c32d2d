/** One student on the wall: the cube, the name, the turns, how long ago the last one was, and the signs in one corner. */

import { memo, useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import type { SeatId } from '../../../engine/contest/ids.ts'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import { stickersFromText } from '../../cube/sticker-text.ts'
import { ProgressPips } from '../../parts/lanes/progress-pips.tsx'
import { classNames } from '../../ui/class-names.ts'
import { Sign } from '../../ui/signs.tsx'
import styles from './wall-square.module.css'
import type { StudentState } from './wall-students.ts'

type WallSquareProps = {
  readonly student: StudentState
  /** The start of the round as 54 letters; null when no cube is to be shown. */
  readonly start: string | null
  readonly baseColour: Colour
  readonly nStages: number
  readonly isChosen: boolean
  readonly onChoose: (id: SeatId) => void
}

/** So long without a turn is worth a figure. */
const IDLE_SHOWN_SECONDS = 5

export const WallSquare = memo(function WallSquare(props: WallSquareProps) {
  const { student, start, baseColour, nStages, isChosen, onChoose } = props
  const { t } = useTranslation()
  const { seat, signs, best, turns, idleSeconds, progress } = student
  const text = student.stickers ?? start
  const stickers = useMemo(() => (text === null ? null : stickersFromText(text)), [text])
  return (
    <li className={classNames(styles.cell, !seat.here && styles.away, isChosen && styles.chosen)}>
      <button type="button" className={styles.open} aria-pressed={isChosen} onClick={() => onChoose(seat.seatId)}>
        {stickers !== null && (
          <CubePicture stickers={stickers} baseColour={baseColour} label="" className={styles.cube} />
        )}
        <span className={styles.name}>{seat.name}</span>
        <span className={styles.signs}>
          {signs.map((sign) => (
            <Sign key={sign} of={sign} label={t(`common:sign.${sign}`)} />
          ))}
        </span>
        <span className={styles.turns}>
          {best === null ? t('common:turns', { count: turns }) : <b>{t('desk:wall.best', { turns: best.turns })}</b>}
          {idleSeconds !== null && idleSeconds >= IDLE_SHOWN_SECONDS && (
            <span className={styles.idle}>{t('desk:wall.idle', { count: idleSeconds })}</span>
          )}
        </span>
        {stickers !== null && best === null && (
          <span className={styles.pips}>
            <ProgressPips progress={progress} nStages={nStages} />
          </span>
        )}
        {(seat.late || seat.pretend) && (
          <span className={styles.marks}>
            {seat.late && <small>{t('common:sign.late')}</small>}
            {seat.pretend && <small className={styles.pretend}>{t('common:sign.pretend')}</small>}
          </span>
        )}
      </button>
    </li>
  )
}, isSame)

/** The state is built anew each second; what is drawn of it seldom changes. */
function isSame(a: WallSquareProps, b: WallSquareProps): boolean {
  const [one, other] = [a.student, b.student]
  return (
    a.start === b.start &&
    a.baseColour === b.baseColour &&
    a.nStages === b.nStages &&
    a.isChosen === b.isChosen &&
    a.onChoose === b.onChoose &&
    one.seat === other.seat &&
    one.turns === other.turns &&
    one.best?.turns === other.best?.turns &&
    one.progress === other.progress &&
    one.stickers === other.stickers &&
    one.idleSeconds === other.idleSeconds &&
    one.signs.join() === other.signs.join()
  )
}
