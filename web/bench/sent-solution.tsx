/** A written solution that has gone out: how many turns it took, whether it reached the goal, and the next thing to do. */

import { useTranslation } from 'react-i18next'
import type { Reached } from '../../engine/contest/round-state.ts'
import type { LocalTry } from '../live/bench-live.ts'
import { WayRibbon } from '../parts/ribbon/way-ribbon.tsx'
import { hintCostWords } from '../parts/written/hint-cost-words.ts'
import { Button } from '../ui/button.tsx'
import { Sign } from '../ui/signs.tsx'
import styles from './sent-solution.module.css'

type SentSolutionProps = {
  /** A try with steps. */
  readonly mine: LocalTry
  readonly best: Reached | null
  /** Counted turns that each hint of it cost. */
  readonly hintCost: number
  /** Null when the round gives one try only, or stands still. */
  readonly onAnother: (() => void) | null
  /** Nobody else is playing. */
  readonly isAlone: boolean
}

export function SentSolution({ mine, best, hintCost, onAnother, isAlone }: SentSolutionProps) {
  const { t } = useTranslation()
  const isReached = mine.reached !== null || mine.reachedHere
  const turns = mine.reached?.turns ?? mine.turns
  const isBest = mine.number > 1 && (best === null || turns <= best.turns)
  return (
    <section className={styles.sent} role="status">
      <div className={styles.words}>
        {isReached && <Sign of="reached" className={styles.flag} />}
        <div>
          <h2>{isReached ? t('bench:reached.title', { count: turns }) : t('written:notReached')}</h2>
          {mine.hints.length > 0 && <p>{hintCostWords(t, mine.hints.length, hintCost)}</p>}
          <p>
            {onAnother !== null
              ? t(isBest ? 'bench:reached.best' : 'bench:reached.again')
              : t(isReached ? (isAlone ? 'bench:reached.alone' : 'bench:reached.done') : 'bench:written.sent')}
          </p>
        </div>
      </div>
      <WayRibbon turns={mine.standing} nTurns={turns} isMade reaches={isReached} />
      {onAnother !== null && (
        <Button look="accent" size="large" onClick={onAnother}>
          {t('bench:written.another')}
        </Button>
      )}
    </section>
  )
}
