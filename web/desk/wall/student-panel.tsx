/** One student, chosen on the wall: what, since when, why, and what to do. The full cube, the turns so far, and the nudges. */

import type { TFunction } from 'i18next'
import { useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { SeatId } from '../../../engine/contest/ids.ts'
import type { Nudge } from '../../../engine/contest/nudges.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import type { RoundView, TryLook } from '../../../engine/wire/views.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import { stickersFromText } from '../../cube/sticker-text.ts'
import { CoachLine } from '../../parts/coach/coach-line.tsx'
import { WayRibbon } from '../../parts/ribbon/way-ribbon.tsx'
import { Button } from '../../ui/button.tsx'
import { formatClock } from '../../ui/clock-face.tsx'
import { Sign } from '../../ui/signs.tsx'
import { NudgeKeys } from './nudge-keys.tsx'
import { PointAtPiece } from './point-at-piece.tsx'
import styles from './student-panel.module.css'
import { useTryLook } from './use-try-look.ts'
import type { StudentState } from './wall-students.ts'

export type StudentPanelProps = {
  readonly student: StudentState
  readonly round: RoundView
  readonly lookAt: (seatId: SeatId) => Promise<TryLook | null>
  readonly onNudge: (to: readonly SeatId[], nudge: Nudge) => void
  /** Shows this student's turns to the class. */
  readonly onDemonstrate: (look: TryLook) => void
  /** Name, removing and the like. */
  readonly onSeat: () => void
}

export function StudentPanel({ student, round, lookAt, onNudge, onDemonstrate, onSeat }: StudentPanelProps) {
  const { t } = useTranslation()
  const { seat, turns, best, signs, tryNumber } = student
  const [pointing, setPointing] = useState(false)
  const [sent, setSent] = useState<Nudge | null>(null)
  const look = useTryLook(seat.seatId, `${round.id} ${tryNumber} ${student.nSteps} ${student.nNudges}`, lookAt)
  const made = useMemo(() => look?.turns.map(turnOf) ?? [], [look])
  const stickers = useMemo(() => stickersFromText(student.stickers ?? round.start), [student.stickers, round.start])
  const isPlayed = round.clock.phase === 'running' || round.clock.phase === 'paused'
  const nudge = (next: Nudge) => {
    onNudge([seat.seatId], next)
    setSent(next)
    setPointing(false)
  }
  return (
    <div className={styles.panel}>
      <div className={styles.head}>
        <div className={styles.figures}>
          {signs.length > 0 && (
            <ul className={styles.signs}>
              {signs.map((sign) => (
                <li key={sign}>
                  <Sign of={sign} />
                  {t(`common:sign.${sign}`)}
                </li>
              ))}
            </ul>
          )}
          <p>
            <b>{turns}</b> {t('desk:panel.turns')}
            {tryNumber > 1 && <small> · {t('desk:panel.tryNumber', { number: tryNumber })}</small>}
          </p>
          <p>
            <b>{best === null ? '–' : best.turns}</b> {t('desk:panel.bestTry')}
            {best !== null && best.momentMs > 0 && <small> · {formatClock(best.momentMs, 'up')}</small>}
          </p>
        </div>
        <CubePicture
          stickers={stickers}
          baseColour={round.settings.baseColour}
          label={t('desk:panel.cube', { name: seat.name })}
          className={styles.cube}
        />
      </div>
      {made.length > 0 && (
        <div className={styles.ribbon}>
          <WayRibbon turns={made} nTurns={turns} isMade reaches={look?.reached != null} />
        </div>
      )}
      {look !== null && made.length > 0 && <CoachLine start={round.start} turns={made} settings={round.settings} />}
      <p className={styles.small}>{panelWords(t, student, look, round.settings.hintCost).join(' ')}</p>
      <div className={styles.foot}>
        {isPlayed && (
          <Button icon="pointer" aria-expanded={pointing} onClick={() => setPointing(!pointing)}>
            {t('desk:nudge.point')}
          </Button>
        )}
        <Button icon="projector" aria-disabled={look === null} onClick={() => look !== null && onDemonstrate(look)}>
          {t('desk:panel.demonstrate')}
        </Button>
      </div>
      {isPlayed && pointing && (
        <PointAtPiece
          name={seat.name}
          position={student.stickers ?? round.start}
          baseColour={round.settings.baseColour}
          onPoint={(piece) => nudge({ kind: 'point', piece })}
        />
      )}
      {isPlayed && !pointing && <NudgeKeys onNudge={nudge} sent={sent} />}
      <div>
        <Button look="quiet" onClick={onSeat}>
          {t('desk:panel.nameAndSeat')}
        </Button>
      </div>
    </div>
  )
}

/**
 * What stands below the cube in small letters. The count above it holds what hints cost, so where nothing was turned it is
 * said what was counted.
 *
 * @param look null until the desk has it; then nothing is said of turns and hints, unless there can be none
 */
export function panelWords(
  t: TFunction,
  { turns, idleSeconds, nNudges, delayMs }: Pick<StudentState, 'turns' | 'idleSeconds' | 'nNudges' | 'delayMs'>,
  look: Pick<TryLook, 'turns' | 'hints'> | null,
  hintCost: number,
): string[] {
  const words: string[] = []
  const nHints = look?.hints.length ?? 0
  const isTurned = look !== null && look.turns.length > 0
  if (isTurned && idleSeconds !== null) words.push(t('desk:panel.lastTurn', { count: idleSeconds }))
  if (look === null ? turns === 0 : !isTurned) words.push(t(nHints > 0 ? 'desk:panel.onlyHints' : 'desk:panel.noTurns'))
  if (nHints > 0) {
    const counted = t('common:turns', { count: nHints * hintCost })
    words.push(t(hintCost > 0 ? 'desk:panel.hintsCost' : 'desk:panel.hints', { count: nHints, turns: counted }))
  }
  if (nNudges > 0) words.push(t('desk:panel.nudges', { count: nNudges }))
  if (delayMs !== null) words.push(t('desk:panel.delay', { ms: delayMs }))
  return words
}
