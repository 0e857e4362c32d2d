/** The plan in use, on one line: its parts, the one that the class is at, and the step to the next. */

import { useEffect, useRef } from 'react'
import { useTranslation } from 'react-i18next'
import type { LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import { Button } from '../../ui/button.tsx'
import { classNames } from '../../ui/class-names.ts'
import styles from './lesson-line.module.css'
import { partContent, partLength, partName } from './part-words.ts'

type LessonLineProps = {
  plan: LessonPlan
  /** 0-based part that the class is at. */
  at: number
  onGo: (at: number) => void
}

export function LessonLine({ plan, at, onGo }: LessonLineProps) {
  const { t } = useTranslation()
  const list = useRef<HTMLOListElement>(null)
  const part = plan.parts[at]
  const isLast = at >= plan.parts.length - 1
  // The part that is on is in sight, however long the plan is; the page itself does not scroll.
  useEffect(() => {
    const step = list.current?.children[at]
    if (step instanceof HTMLElement && list.current !== null) {
      list.current.scrollLeft = step.offsetLeft - (list.current.clientWidth - step.offsetWidth) / 2
    }
  }, [at])
  if (part === undefined) return null
  const content = [partContent(t, part), partLength(t, part)].filter((words) => words !== '').join(' · ')
  return (
    <nav className={styles.lesson} aria-label={t('plans:line.label')}>
      <div className={styles.now}>
        <p className={styles.title}>
          {plan.title} <span>{t('plans:line.at', { number: at + 1, all: plan.parts.length })}</span>
        </p>
        <p className={styles.part} role="status">
          <b>{partName(t, part)}</b> <span>{content}</span>
        </p>
        {part.note !== '' && <p className={styles.note}>{part.note}</p>}
      </div>
      <div className={styles.row}>
        <ol ref={list} className={styles.steps}>
          {plan.parts.map((each, index) => (
            // Parts have no name of their own: each is the first, the second, and so on.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above.
            <li key={index}>
              <button
                type="button"
                className={classNames(styles.step, index < at && styles.done, index === at && styles.here)}
                aria-current={index === at ? 'step' : undefined}
                aria-label={t('plans:line.go', { number: index + 1, part: partName(t, each) })}
                title={partName(t, each)}
                onClick={() => onGo(index)}
              >
                {index + 1}
              </button>
            </li>
          ))}
        </ol>
        <Button icon="onward" aria-disabled={isLast} onClick={() => !isLast && onGo(at + 1)}>
          {t(isLast ? 'plans:line.last' : 'plans:line.next')}
        </Button>
      </div>
    </nav>
  )
}
