/** Says kindly that the goal is not reached, and where the turns first go astray, with the cube before and after. */

import { useTranslation } from 'react-i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import type { StageSpan } from '../../../engine/method/stages.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import styles from './astray-note.module.css'
import { astrayWords } from './astray-words.ts'
import type { Astray, WrittenMoment } from './where-astray.ts'

type AstrayNoteProps = {
  readonly astray: Astray
  readonly span: StageSpan
  readonly baseColour: Colour
  readonly marks: MarkStyle
}

export function AstrayNote({ astray, span, baseColour, marks }: AstrayNoteProps) {
  const { t } = useTranslation()
  return (
    <div className={styles.note}>
      <p>
        <b>{t('written:notReached')}</b> {astrayWords(t, astray, span, baseColour)}
      </p>
      <div className={styles.pictures}>
        {momentsShown(astray).map(({ turnNumber, position }) => (
          <figure key={turnNumber}>
            <CubePicture
              stickers={stickersOf(position)}
              baseColour={baseColour}
              marks={marks}
              label={momentWords(turnNumber)}
            />
            <figcaption aria-hidden="true">{momentWords(turnNumber)}</figcaption>
          </figure>
        ))}
      </div>
    </div>
  )

  function momentWords(turnNumber: number): string {
    return turnNumber === 0 ? t('written:atTheStart') : t('written:afterTurn', { turn: turnNumber })
  }
}

/** The cube at the end stands above the field already. */
function momentsShown(astray: Astray): readonly WrittenMoment[] {
  if (astray.kind === 'broken') return [astray.lastWhole, astray.broken]
  return astray.kind === 'was-further' ? [astray.furthest] : []
}
