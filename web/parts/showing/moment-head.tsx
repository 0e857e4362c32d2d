/** A moment of the puzzle that several ways share, above its line: the case as seen from above, or how many pieces are home. */

import { useTranslation } from 'react-i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import { asHeldHome } from '../../../engine/cube/hold.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { isLastLayerStage } from '../../../engine/method/cases.ts'
import { PARTS_PER_STAGE } from '../../../engine/method/stages.ts'
import { stageWords } from '../stage-words.ts'
import { TopFacePicture } from '../top-face-picture.tsx'
import type { ReadMoment } from './read-ways.ts'
import styles from './review-face.module.css'

type MomentHeadProps = {
  readonly read: ReadMoment
  readonly square: number
  /** Pixels up to the next one. */
  readonly room: number
  readonly baseColour: Colour
}

/** Less room than this has the picture alone. */
const ROOM_FOR_WORDS = 110

export function MomentHead({ read: { moment, place, position }, square, room, baseColour }: MomentHeadProps) {
  const { t } = useTranslation()
  const { stage, caseId, nPartsDone } = moment
  const words =
    caseId !== null && isLastLayerStage(stage)
      ? t(`desk:case.${caseId as 'dot'}`)
      : nPartsDone === PARTS_PER_STAGE
        ? stageWords(t, stage, baseColour).title
        : t('showing:partsHome', { count: nPartsDone, of: PARTS_PER_STAGE })
  return (
    <div className={styles.moment} style={{ insetInlineStart: place * square, maxWidth: Math.max(36, room - 4) }}>
      {isLastLayerStage(stage) && (
        <TopFacePicture stage={stage} stickers={stickersOf(asHeldHome(position))} baseColour={baseColour} />
      )}
      <span className={room < ROOM_FOR_WORDS ? 'visually-hidden' : undefined}>{words}</span>
    </div>
  )
}
