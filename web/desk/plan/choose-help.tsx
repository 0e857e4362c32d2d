/** How much help a student may ask for in the round, and what a hint costs. */

import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import { HINT_COST_MAX } from '../../../engine/contest/limits.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { HINT_LEVELS } from '../../../engine/method/way/hint-level.ts'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import styles from './choose-help.module.css'

type ChooseHelpProps = { settings: RoundSettings; onChange: (settings: RoundSettings) => void }

const LEVELS = [0, ...HINT_LEVELS] as const
const COSTS = Array.from({ length: HINT_COST_MAX + 1 }, (_, cost) => cost)

export function ChooseHelp({ settings, onChange }: ChooseHelpProps) {
  const { t } = useTranslation()
  const costId = useId()
  return (
    <div className={styles.help}>
      <SegmentedChoice
        legend={t('desk:plan.hints')}
        segments={LEVELS.map((level) => ({ value: String(level), label: t(`desk:plan.hintsUpTo.${level}`) }))}
        value={String(settings.hints)}
        onChoose={(value) => {
          const hints = LEVELS.find((level) => String(level) === value) ?? 0
          onChange({ ...settings, hints, hintCost: hints === 0 ? 0 : settings.hintCost })
        }}
      />
      {settings.hints > 0 && (
        <div className={styles.cost}>
          <label htmlFor={costId}>{t('desk:plan.hintCost')}</label>
          <select
            id={costId}
            value={settings.hintCost}
            onChange={(event) => onChange({ ...settings, hintCost: Number(event.currentTarget.value) })}
          >
            {COSTS.map((cost) => (
              <option key={cost} value={cost}>
                {cost === 0 ? t('desk:plan.hintFree') : t('common:turns', { count: cost })}
              </option>
            ))}
          </select>
        </div>
      )}
    </div>
  )
}
