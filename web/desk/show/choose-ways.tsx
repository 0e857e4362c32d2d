/** Whose ways a review lays beside each other: a list with all of a round, the best first. */

import { useTranslation } from 'react-i18next'
import type { ReviewView, SolutionView } from '../../../engine/wire/views.ts'
import { TickBox } from '../../ui/tick-box.tsx'
import styles from './choose-ways.module.css'
import { nChosen, type WaysChoice } from './review-ways.ts'

type ChooseWaysProps = {
  readonly review: ReviewView
  readonly choice: WaysChoice
  readonly nMax: number
  readonly onChange: (choice: WaysChoice) => void
}

export function ChooseWays({ review, choice, nMax, onChange }: ChooseWaysProps) {
  const { t } = useTranslation()
  const isFull = nChosen(choice) >= nMax
  const toggle = ({ seatId }: SolutionView, ticked: boolean) => {
    const seats = ticked ? [...choice.seats, seatId] : choice.seats.filter((each) => each !== seatId)
    // In the order of the ranking, so that rows do not jump about.
    const order = review.solutions.map((each) => each.seatId)
    onChange({ ...choice, seats: order.filter((each) => seats.includes(each)) })
  }
  return (
    <fieldset className={styles.choose}>
      <legend>{t('showing:review.choose')}</legend>
      <p className={styles.help}>{t('showing:review.chooseHelp', { max: nMax })}</p>
      {review.ways !== null && (
        <>
          <TickBox
            checked={choice.shortest}
            disabled={isFull && !choice.shortest}
            onChange={(shortest) => onChange({ ...choice, shortest })}
          >
            {t(`showing:owner.${review.par?.proven === false ? 'best-known' : 'shortest'}`)}
          </TickBox>
          <TickBox
            checked={choice.lesson}
            disabled={isFull && !choice.lesson}
            onChange={(lesson) => onChange({ ...choice, lesson })}
          >
            {t('showing:owner.lesson')}
          </TickBox>
        </>
      )}
      <div className={styles.students}>
        {review.solutions.map((solution) => {
          const ticked = choice.seats.includes(solution.seatId)
          return (
            <TickBox
              key={solution.seatId}
              checked={ticked}
              disabled={isFull && !ticked}
              onChange={(next) => toggle(solution, next)}
            >
              {`${solution.name} · ${solutionWords(t, solution)}`}
            </TickBox>
          )
        })}
      </div>
    </fieldset>
  )
}

function solutionWords(t: ReturnType<typeof useTranslation>['t'], solution: SolutionView): string {
  const words = [
    solution.reached === null ? t('showing:review.notReached') : String(solution.reached.turns),
    ...(solution.afterEnd ? [t('showing:review.afterEnd')] : []),
    ...(solution.how.written ? [t('showing:review.written')] : []),
    ...(solution.hints.length > 0 ? [t('showing:review.hints', { count: solution.hints.length })] : []),
  ]
  return words.join(', ')
}
