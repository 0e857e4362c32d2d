/** After a round, for the child alone: the own turns as a ribbon, and one sentence of the coach about them. */

import { useTranslation } from 'react-i18next'
import type { RoundView } from '../../engine/wire/views.ts'
import { CoachLine } from '../parts/coach/coach-line.tsx'
import { WayRibbon } from '../parts/ribbon/way-ribbon.tsx'
import type { tryToReview } from './own-best.ts'
import styles from './own-review.module.css'

type OwnReviewProps = { readonly made: NonNullable<ReturnType<typeof tryToReview>>; readonly round: RoundView }

export function OwnReview({ made, round: { start, settings } }: OwnReviewProps) {
  const { t } = useTranslation()
  return (
    <section className={styles.review}>
      <h2>{t(made.isBest ? 'bench:review.best' : 'bench:review.last')}</h2>
      <WayRibbon turns={made.standing} nTurns={made.turns} isMade reaches={made.isReached} />
      {/* Only seen where the coach has nothing to say; see the style. */}
      {made.isReached && <p className={styles.clean}>{t('bench:review.clean')}</p>}
      <CoachLine start={start} turns={made.standing} settings={settings} />
    </section>
  )
}
