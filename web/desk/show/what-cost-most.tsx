/** What cost most today: a bar for each case, as long as the turns over par that all students together spent on it. */

import { useEffect, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundId } from '../../../engine/contest/ids.ts'
import { openParTables } from '../../../engine/search/par/open-par-tables.ts'
import type { ReviewView, RoundInList } from '../../../engine/wire/views.ts'
import { stageWords } from '../../parts/stage-words.ts'
import { Waiting } from '../../parts/waiting.tsx'
import { type CaseCost, costsOf } from './costs-of.ts'
import styles from './what-cost-most.module.css'

type WhatCostMostProps = {
  readonly rounds: readonly RoundInList[]
  readonly review: (roundId: RoundId) => Promise<ReviewView | null>
}

/** More bars than these say nothing to a class any more. */
const BARS_MAX = 10

export function WhatCostMost({ rounds, review }: WhatCostMostProps) {
  const { t } = useTranslation()
  const [costs, setCosts] = useState<readonly CaseCost[] | null>(null)
  const ids = rounds.map(({ id }) => id).join(' ')
  useEffect(() => {
    let isOld = false
    void gather(ids === '' ? [] : (ids.split(' ') as RoundId[]), review).then((found) => {
      if (!isOld) setCosts(found)
    })
    return () => {
      isOld = true
    }
  }, [ids, review])
  if (costs === null) return <Waiting words={t('showing:review.loading')} />
  if (costs.length === 0) return <p className={styles.none}>{t('showing:review.costsNone')}</p>
  const most = costs[0].turns
  const baseColour = rounds[0]?.settings.baseColour ?? 'white'
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a long list scrolls, so it has to be in the order of Tab.
    <section className={styles.costs} tabIndex={0} aria-label={t('showing:review.costs')}>
      <p>
        {t('showing:review.costsSentence')} {t('showing:review.costsRounds', { count: rounds.length })}
      </p>
      <ol>
        {costs.slice(0, BARS_MAX).map(({ stage, caseId, turns, nTimes }) => (
          <li key={`${stage} ${caseId}`}>
            <span className={styles.case}>
              <b>{caseId === null ? stageWords(t, stage, baseColour).title : t(`desk:case.${caseId as 'dot'}`)}</b>
              <small>
                {t('showing:review.costsStage', { stage })}, {t('showing:review.costsTimes', { count: nTimes })}
              </small>
            </span>
            <span className={styles.track}>
              <i style={{ width: `${(100 * turns) / most}%` }} />
              <b>{t('showing:review.costsTurns', { count: turns })}</b>
            </span>
          </li>
        ))}
      </ol>
    </section>
  )
}

/** Round by round, with a breath between: reading thirty long solutions takes some tenths of a second. */
async function gather(ids: readonly RoundId[], review: WhatCostMostProps['review']): Promise<CaseCost[]> {
  const pars = await openParTables()
  if (!pars.ok) return []
  const reviews: ReviewView[] = []
  for (const id of ids) {
    const answer = await review(id)
    if (answer !== null) reviews.push(answer)
  }
  return costsOf(reviews, pars.value)
}
