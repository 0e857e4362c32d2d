/**
 * A review as everybody sees it: the ways through one start under one another, the same moment of the puzzle at the same
 * place, and about the turn where the mark stands one sentence. The teacher moves the mark; who follows sees it move.
 */

import { type ReactNode, useEffect, useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import type { ShowingAt, ShownReview } from '../../../engine/wire/shown.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import { frontGoesTo } from '../../cube/layer-rotation.ts'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import { useBoxSize } from '../../ui/box-size.ts'
import { noteWords } from '../coach/note-words.ts'
import { turnsDoneAt } from './align-ways.ts'
import { MomentHead } from './moment-head.tsx'
import { noteAt, readReview } from './read-ways.ts'
import styles from './review-face.module.css'
import { ReviewRow } from './review-row.tsx'
import { nTurnsDone, reHoldJustDone, turnsDoneWords } from './turns-done.ts'
import { ownerWords } from './way-words.ts'

type ReviewFaceProps = {
  readonly shown: ShownReview
  readonly at: ShowingAt
  readonly marks: MarkStyle
  /** Chooses a way, at a turn of it; left out for who only follows. */
  readonly onChoose?: ((chosen: number, at: number) => void) | undefined
  /** Keys beneath. */
  readonly children?: ReactNode
}

/** The column of names, in pixels; the ribbons have the rest. */
const NAMES_WIDTH = { wide: 156, narrow: 96 }
const NARROW_PX = 640
/** Pixels. With less the letter of a turn, and of the re-hold above it, cannot be read; long ways are scrolled instead. */
const SQUARE = { least: 26, leastOfHeight: 0.024, most: 64 }
/** Before the first square, in squares: half a re-hold. */
const MARGIN_SQUARES = 0.4
/** Pixels: what stands above and beneath the rows, and in a row beside its squares (a projector's rows have larger words). */
const AROUND_PX = 420
const ROW = { squares: 1.6, aroundPx: 22, aroundOnProjectorPx: 28 }
const PROJECTOR_HEIGHT_PX = 900
/** Rows that would need smaller squares than these to be in sight together are scrolled instead. */
const LEAST_FOR_HEIGHT = 30
/** Room behind the longest way for its flag and number. */
const END_SQUARES = 3
/** Beside the count of a solution with hints. */
const HINTS_SQUARES = 3
/** The last moment has the rest of the line for its words. */
const ROOM_AT_END = 12

export function ReviewFace({ shown, at: { at, chosen }, marks, onChoose, children }: ReviewFaceProps) {
  const { t } = useTranslation()
  const [ribbons, box] = useBoxSize<HTMLElement>()
  const review = useMemo(() => readReview(shown), [shown])
  const row = review.ways[chosen]
  const place = row.aligned.places[Math.min(at, row.turns.length)]
  const note = noteAt(row, at)
  const reHold = reHoldJustDone(row.turns, at)
  const namesWidth = box !== null && box.widthPx < NARROW_PX ? NAMES_WIDTH.narrow : NAMES_WIDTH.wide
  const free = (box?.widthPx ?? 1_000) - namesWidth
  const most = box === null ? SQUARE.most : squareForHeight(window.innerHeight, review.ways.length)
  const atEnd = END_SQUARES + (review.ways.some(({ way }) => way.hintTurns > 0) ? HINTS_SQUARES : 0)
  const least = Math.max(SQUARE.least, SQUARE.leastOfHeight * window.innerHeight)
  const square = Math.max(least, Math.min(most, Math.floor(free / (MARGIN_SQUARES + review.nSquares + atEnd))))
  const margin = namesWidth + MARGIN_SQUARES * square
  // What the mark stands at is in sight, however long the ways are; nobody scrolls a projector.
  useEffect(() => {
    if (ribbons.current !== null) ribbons.current.scrollLeft = place * square - ribbons.current.clientWidth / 2
  }, [ribbons, place, square])
  const others = review.ways.flatMap((each, index) => (index === chosen ? [] : [{ each, index }])).slice(0, 3)
  return (
    <div className={styles.face}>
      <div className={styles.top}>
        <CubePicture
          stickers={stickersOf(afterTurns(review.start, row.turns.slice(0, at)))}
          baseColour={shown.baseColour}
          marks={marks}
          label={t('showing:cubeOf', { owner: ownerWords(t, row.way), count: nTurnsDone(row.turns, at) })}
          ghost={reHold === null ? null : frontGoesTo(reHold)}
          className={styles.cube}
        />
        <div className={styles.sentence} aria-live="polite">
          <p>
            <b>{ownerWords(t, row.way)}</b> {turnsDoneWords(t, row.turns, at)}
          </p>
          <p className={styles.note}>{note === null ? '' : noteWords(t, note, shown.baseColour)}</p>
        </div>
        {others.length > 0 && (
          <div className={styles.others}>
            <p>{t('showing:sameMoment')}</p>
            <ul>
              {others.map(({ each, index }) => {
                const done = turnsDoneAt(each.aligned, place)
                return (
                  <li key={index}>
                    <CubePicture
                      stickers={stickersOf(afterTurns(review.start, each.turns.slice(0, done)))}
                      baseColour={shown.baseColour}
                      marks={marks}
                      label=""
                    />
                    <b>{ownerWords(t, each.way)}</b>
                    <span>{t('showing:afterTurnShort', { count: nTurnsDone(each.turns, done) })}</span>
                  </li>
                )
              })}
            </ul>
          </div>
        )}
      </div>
      {/* What scrolls has to be reached by the keyboard. Where a way can be chosen its name is the stop; elsewhere the box is. */}
      <section
        className={styles.ribbons}
        ref={ribbons}
        aria-label={t('showing:review.ribbons')}
        tabIndex={onChoose === undefined ? 0 : undefined}
      >
        <div className={styles.sheet} style={{ width: margin + (review.nSquares + atEnd) * square }}>
          <div className={styles.moments} style={{ marginInlineStart: margin }}>
            {review.moments.map((each, index) => (
              <MomentHead
                key={each.moment.key}
                read={each}
                square={square}
                room={((review.moments[index + 1]?.place ?? review.nSquares + ROOM_AT_END) - each.place) * square}
                baseColour={shown.baseColour}
              />
            ))}
          </div>
          <ol className={styles.rows}>
            {review.ways.map((each, index) => (
              <ReviewRow
                // biome-ignore lint/suspicious/noArrayIndexKey: a way of a review has no identity but its row.
                key={index}
                row={each}
                index={index}
                isChosen={index === chosen}
                square={square}
                namesWidth={namesWidth}
                onChoose={onChoose}
              />
            ))}
          </ol>
          <span className={styles.mark} style={{ insetInlineStart: margin + place * square }} aria-hidden="true" />
        </div>
      </section>
      {children}
    </div>
  )
}

/** @returns the largest square, in pixels, with which so many rows fit on the page */
function squareForHeight(heightPx: number, nRows: number): number {
  const around = heightPx >= PROJECTOR_HEIGHT_PX ? ROW.aroundOnProjectorPx : ROW.aroundPx
  const square = Math.floor(((heightPx - AROUND_PX) / nRows - around) / ROW.squares)
  return Math.max(LEAST_FOR_HEIGHT, Math.min(SQUARE.most, square))
}
