/** A pointer on a piece of a student's cube: pressed on the picture, or chosen by its colours. */

import { useId, useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { PIECE_NAMES } from '../../../engine/contest/nudges.ts'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { Face } from '../../../engine/cube/faces.ts'
import { pieceAtSticker, stickersOfPiece } from '../../../engine/cube/find-piece.ts'
import { parseStickers } from '../../../engine/cube/stickers.ts'
import { LOOK_FROM_FRONT } from '../../cube/look-around.ts'
import { stickerUnder } from '../../cube/sticker-under.ts'
import { TurningCube } from '../../cube/turning-cube.tsx'
import { namedPiece } from '../../parts/lesson/place-words.ts'
import { Button } from '../../ui/button.tsx'
import styles from './point-at-piece.module.css'

type PointAtPieceProps = {
  readonly name: string
  /** The cube as 54 letters. */
  readonly position: string
  readonly baseColour: Colour
  readonly onPoint: (piece: string) => void
}

export function PointAtPiece({ name, position: text, baseColour, onPoint }: PointAtPieceProps) {
  const { t } = useTranslation()
  const id = useId()
  const [look, setLook] = useState(LOOK_FROM_FRONT)
  const [piece, setPiece] = useState<string | null>(null)
  const position = useMemo(() => parseStickers(text), [text])
  const cube = useMemo(
    () => (position.ok ? { tryNumber: 1, standing: [], position: position.value } : null),
    [position],
  )
  if (cube === null) return null
  return (
    <div className={styles.point}>
      <p>{t('desk:nudge.pointHelp', { name })}</p>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the list below does the same for the keyboard. */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the list below does the same for the keyboard. */}
      <div
        className={styles.cube}
        onClick={(event) => {
          const sticker = stickerUnder(event)
          if (sticker !== null) setPiece(pieceAtSticker(cube.position, sticker))
        }}
      >
        <TurningCube
          cube={cube}
          baseColour={baseColour}
          marks="plain"
          turnable={false}
          onTurn={() => {}}
          look={look}
          onLook={setLook}
          pointed={piece === null ? [] : stickersOfPiece(cube.position, piece)}
        />
      </div>
      <label htmlFor={id}>{t('desk:nudge.pointPiece')}</label>
      <div className={styles.row}>
        <select id={id} value={piece ?? ''} onChange={(event) => setPiece(event.currentTarget.value || null)}>
          <option value="">{t('desk:nudge.pointNone')}</option>
          {PIECE_NAMES.map((home) => (
            <option key={home} value={home}>
              {namedPiece(t, [...home] as Face[], baseColour)}
            </option>
          ))}
        </select>
        <Button icon="pointer" aria-disabled={piece === null} onClick={() => piece !== null && onPoint(piece)}>
          {t('desk:nudge.point')}
        </Button>
      </div>
    </div>
  )
}
