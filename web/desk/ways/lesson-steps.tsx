/** The lesson way as a list: what to look for, how to hold, what to do, why; the turns also as the sequence book writes them. */

import { useTranslation } from 'react-i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { WayStepView } from '../../../engine/wire/views.ts'
import { TRIGGER_PARTS, usesPart } from '../../parts/lesson/do-words.ts'
import { stepWords } from '../../parts/lesson/step-words.ts'
import { TriggerBar } from '../../parts/ribbon/trigger-bar.tsx'
import { stageWords } from '../../parts/stage-words.ts'
import { withPrimes } from '../../parts/turn-words.ts'
import styles from './lesson-steps.module.css'
import { stepsByStage } from './steps-by-stage.ts'

type LessonStepsProps = { steps: readonly WayStepView[]; baseColour: Colour }

export function LessonSteps({ steps, baseColour }: LessonStepsProps) {
  const { t } = useTranslation()
  return (
    <div className={styles.steps}>
      <BookParts steps={steps} />
      {stepsByStage(steps).map(({ stage, steps: ofStage }) => (
        <section key={ofStage[0].number}>
          <h4>{t('desk:ways.stage', { stage, title: stageWords(t, stage, baseColour).title })}</h4>
          <ol start={ofStage[0].number}>
            {ofStage.map(({ number, step }) => (
              <Step key={number} number={number} step={step} baseColour={baseColour} />
            ))}
          </ol>
        </section>
      ))}
    </div>
  )
}

function Step({ number, step, baseColour }: { number: number; step: WayStepView; baseColour: Colour }) {
  const { t } = useTranslation()
  const words = stepWords(t, step, baseColour)
  return (
    <li className={styles.step}>
      <b className={styles.number} aria-hidden="true">
        {number}
      </b>
      <div className={styles.sentences}>
        <p className={styles.look}>{words.look}</p>
        <p>
          {/* Where any hold will do, a written re-hold would say that it will not. */}
          <Written turns={step.mark.key === 'hold/any' ? '' : step.hold} />
          {words.hold}
        </p>
        <p>
          <Written turns={step.do} />
          {words.do}
        </p>
        <p className={styles.why}>{words.why}</p>
      </div>
    </li>
  )
}

function Written({ turns }: { turns: string }) {
  if (turns === '') return null
  return (
    <>
      <span className={styles.written} dir="ltr">
        {withPrimes(turns)}
      </span>{' '}
    </>
  )
}

/** What the letters of the book stand for, as far as they are used here. */
function BookParts({ steps }: { steps: readonly WayStepView[] }) {
  const { t } = useTranslation()
  const used = TRIGGER_PARTS.filter(({ name }) => steps.some((step) => usesPart(step.do, name)))
  if (used.length === 0) return null
  return (
    <ul className={styles.parts}>
      {used.map(({ name, side }) => (
        <li key={name}>
          <Written turns={name} />
          <TriggerBar side={side} />
          {t(`bench:triggers.${side}`)}
        </li>
      ))}
    </ul>
  )
}
