/**
 * A demonstration as everybody sees it: the teacher's cube, large, with its turns beneath. Re-holds come in slowly. Whoever
 * looks may look from another side, and step back without losing the place.
 */

import { type ReactNode, useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { stickersOfPiece } from '../../../engine/cube/find-piece.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import type { ShowingAt, ShownCube } from '../../../engine/wire/shown.ts'
import { LOOK_FROM_FRONT } from '../../cube/look-around.ts'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import { stickerUnder } from '../../cube/sticker-under.ts'
import { TurningCube } from '../../cube/turning-cube.tsx'
import styles from './cube-face.module.css'
import { LookKeys } from './look-keys.tsx'
import { ShownRibbon } from './shown-ribbon.tsx'
import { lastDoneWords } from './turns-done.ts'
import { useShownCube } from './use-shown-cube.ts'

type CubeFaceProps = {
  readonly shown: ShownCube
  readonly at: ShowingAt
  readonly marks: MarkStyle
  /** A piece was pressed; null where nobody may point. */
  readonly onPoint?: ((sticker: number) => void) | undefined
  /** Keys beneath; left out on the board, which has no hands: there the cube is seen as the teacher holds it. */
  readonly children?: ReactNode
}

export function CubeFace({ shown, at: { at, pointer }, marks, onPoint, children }: CubeFaceProps) {
  const { t } = useTranslation()
  const [look, setLook] = useState(LOOK_FROM_FRONT)
  const turns = useMemo(() => shown.turns.map(turnOf), [shown.turns])
  const hasHands = children !== undefined
  const cube = useShownCube(shown.start, shown.turns, at)
  return (
    <div className={styles.face}>
      {shown.title !== '' && <h2 className={styles.title}>{shown.title}</h2>}
      <p className="visually-hidden" aria-live="polite">
        {lastDoneWords(t, turns, at)}
      </p>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: pointing has a list of pieces for the keyboard. */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: pointing has a list of pieces for the keyboard. */}
      <div
        className={styles.cube}
        onClick={(event) => {
          const sticker = stickerUnder(event)
          if (sticker !== null) onPoint?.(sticker)
        }}
      >
        <TurningCube
          cube={cube}
          baseColour={shown.baseColour}
          marks={marks}
          turnable={false}
          onTurn={() => {}}
          look={look}
          onLook={hasHands ? setLook : NO_LOOK}
          slowReHolds
          pointed={pointer === null ? NOTHING : stickersOfPiece(cube.position, pointer)}
        />
      </div>
      {hasHands && <LookKeys look={look} onLook={setLook} isOwn={onPoint !== undefined} />}
      <ShownRibbon turns={shown.turns} at={at} />
      {children}
    </div>
  )
}

const NO_LOOK = () => {}
const NOTHING: readonly number[] = []
