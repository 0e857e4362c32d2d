/** What the teacher sends, in one quiet line: a sentence, or where a piece is that is ringed on the cube. */

import { useTranslation } from 'react-i18next'
import type { Colour } from '../../engine/cube/colour-scheme.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import type { Face } from '../../engine/cube/faces.ts'
import { placeOfPiece } from '../parts/hints/place-of-piece.ts'
import { namedPiece, placeWords } from '../parts/lesson/place-words.ts'
import { Button } from '../ui/button.tsx'
import styles from './nudge-line.module.css'
import type { StandingNudge } from './use-nudge.ts'

type NudgeLineProps = {
  readonly standing: StandingNudge | null
  /** Where the cube stands now, or for a real cube at the start. */
  readonly position: CubePosition
  /** Nobody sees how far a real cube is: places are those at the start. */
  readonly atTheStart?: boolean
  readonly baseColour: Colour
}

/** Always in the page, so that what comes in is heard. A hint is only announced: the ladder shows it. */
export function NudgeLine({ standing, position, baseColour, atTheStart = false }: NudgeLineProps) {
  const { t } = useTranslation()
  const nudge = standing?.nudge ?? null
  return (
    <div role="status">
      {nudge?.kind === 'hint' && <span className="visually-hidden">{t('bench:nudge.hint')}</span>}
      {standing !== null && nudge !== null && nudge.kind !== 'hint' && (
        <div className={styles.line} data-takes-height>
          <p>
            <b>{t('bench:nudge.from')}</b>{' '}
            {nudge.kind === 'words'
              ? t('bench:nudge.sentence', { words: t(`common:nudge.${nudge.words}`) })
              : t(atTheStart ? 'bench:nudge.pointAtTheStart' : 'bench:nudge.point', {
                  piece: namedPiece(t, [...nudge.piece] as Face[], baseColour),
                  place: placeWords(t, placeOfPiece(position, nudge.piece)),
                })}
          </p>
          <Button look="quiet" onClick={standing.onPutAway}>
            {t('bench:notice.ok')}
          </Button>
        </div>
      )}
    </div>
  )
}
