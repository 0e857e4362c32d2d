/** What the teacher sends, in quiet lines: a sentence, and where a piece is that is ringed on the cube. The newer one first. */

import { useTranslation } from 'react-i18next'
import type { Colour } from '../../engine/cube/colour-scheme.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import type { Face } from '../../engine/cube/faces.ts'
import { placeOfPiece } from '../parts/hints/place-of-piece.ts'
import { namedPiece, placeWords } from '../parts/lesson/place-words.ts'
import { Button } from '../ui/button.tsx'
import styles from './nudge-lines.module.css'
import type { ShownNudges } from './use-nudges.ts'

type NudgeLinesProps = {
  readonly nudges: Pick<ShownNudges, 'lines' | 'onPutAway'> & { readonly hint: unknown }
  /** Where the cube stands now, or for a real cube at the start. */
  readonly position: CubePosition
  /** Nobody sees how far a real cube is: places are those at the start. */
  readonly atTheStart?: boolean
  readonly baseColour: Colour
}

/** Always in the page, so that what comes in is heard, and only that. A hint is only announced: the ladder shows it. */
export function NudgeLines({ nudges, position, baseColour, atTheStart = false }: NudgeLinesProps) {
  const { t } = useTranslation()
  return (
    <div role="status" aria-atomic="false">
      {nudges.hint !== null && <span className="visually-hidden">{t('bench:nudge.hint')}</span>}
      {nudges.lines.map(({ number, nudge }, index) => (
        <div key={number} className={styles.line} data-takes-height>
          <p>
            {/* Said of each to who hears it, and seen once. */}
            <b className={index === 0 ? undefined : 'visually-hidden'}>{t('bench:nudge.from')}</b>{' '}
            {nudge.kind === 'words'
              ? t('bench:nudge.sentence', { words: t(`common:nudge.${nudge.words}`) })
              : t(atTheStart ? 'bench:nudge.pointAtTheStart' : 'bench:nudge.point', {
                  piece: namedPiece(t, [...nudge.piece] as Face[], baseColour),
                  place: placeWords(t, placeOfPiece(position, nudge.piece)),
                })}
          </p>
          <Button look="quiet" onClick={() => nudges.onPutAway(number)}>
            {t('bench:notice.ok')}
          </Button>
        </div>
      ))}
    </div>
  )
}
