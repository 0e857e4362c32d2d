/** The goal of the next round, chosen by its picture. */

import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { STAGES, type Stage } from '../../../engine/method/stages.ts'
import { GoalPicture } from '../../cube/goal-picture.tsx'
import { stageWords } from '../../parts/stage-words.ts'
import { classNames } from '../../ui/class-names.ts'
import { stagesFrom, withLastStage, withStage } from '../change-settings.ts'
import styles from './choose-stage.module.css'

type ChooseProps = { settings: RoundSettings; onChange: (settings: RoundSettings) => void }

export function ChooseStage({ settings, onChange }: ChooseProps) {
  const { t } = useTranslation()
  const name = useId()
  return (
    <fieldset className={styles.choice}>
      <legend>
        <h2>{t('desk:plan.goal')}</h2>
        <p className={styles.help}>{t('desk:plan.goalHelp')}</p>
      </legend>
      <div className={styles.stages}>
        {STAGES.map((stage) => {
          const words = stageWords(t, stage, settings.baseColour)
          return (
            <label
              key={stage}
              className={classNames(
                styles.stage,
                settings.from < stage && stage <= settings.to && styles.inSpan,
                settings.from < stage && stage === settings.to && styles.endOfSpan,
              )}
            >
              <input
                type="radio"
                name={name}
                value={stage}
                checked={settings.from === stage}
                onChange={() => onChange(withStage(settings, stage))}
              />
              {/* The words beside it say the same. */}
              <span className={styles.picture} aria-hidden="true">
                <GoalPicture stage={stage} baseColour={settings.baseColour} label={words.title} />
              </span>
              <span>
                <b>{stage}</b> {words.short}
              </span>
            </label>
          )
        })}
      </div>
    </fieldset>
  )
}

/** Several stages in one go: the start is that of the first, the goal that of the last. */
export function ChooseLastStage({ settings, onChange }: ChooseProps) {
  const { t } = useTranslation()
  const id = useId()
  return (
    <div className={styles.until}>
      <label htmlFor={id}>{t('desk:plan.until')}</label>
      <select
        id={id}
        value={settings.to}
        onChange={(event) => onChange(withLastStage(settings, Number(event.currentTarget.value) as Stage))}
      >
        {stagesFrom(settings.from).map((stage) => (
          <option key={stage} value={stage}>
            {stage} · {stageWords(t, stage, settings.baseColour).title}
          </option>
        ))}
      </select>
    </div>
  )
}
