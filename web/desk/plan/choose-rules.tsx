/** The rules that seldom change, folded away under a line that says what they are. */

import { useTranslation } from 'react-i18next'
import { CUBES_IN_HAND, type RoundSettings } from '../../../engine/contest/round-settings.ts'
import { COLOURS } from '../../../engine/cube/colour-scheme.ts'
import colourStyles from '../../cube/sticker-colours.module.css'
import { Icon } from '../../ui/icons.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { TickBox } from '../../ui/tick-box.tsx'
import { ChoosePar } from './choose-par.tsx'
import styles from './choose-rules.module.css'
import { rulesSummary } from './rules-summary.ts'
import type { ParTablesState } from './use-par-tables.ts'

type ChooseRulesProps = {
  settings: RoundSettings
  pars: ParTablesState
  onChange: (settings: RoundSettings) => void
}

export function ChooseRules({ settings, pars, onChange }: ChooseRulesProps) {
  const { t } = useTranslation()
  return (
    <details className={styles.rules}>
      <summary>
        <Icon of="down" />
        <b>{t('desk:plan.more')}</b>
        <span>{rulesSummary(t, settings)}</span>
      </summary>
      <div className={styles.inside}>
        <ChoosePar settings={settings} pars={pars} onChange={onChange} />
        <SegmentedChoice
          legend={t('desk:plan.cube')}
          segments={CUBES_IN_HAND.map((cube) => ({ value: cube, label: t(`desk:plan.cubeOf.${cube}`) }))}
          value={settings.cube}
          onChoose={(cube) => onChange({ ...settings, cube })}
        />
        <SegmentedChoice
          legend={t('desk:plan.tries')}
          segments={[
            { value: 'many', label: t('desk:plan.triesMany') },
            { value: 'one', label: t('desk:plan.triesOne') },
          ]}
          value={settings.tries}
          onChoose={(tries) => onChange({ ...settings, tries })}
        />
        <TickBox checked={settings.takeBack} onChange={(takeBack) => onChange({ ...settings, takeBack })}>
          {t('desk:plan.takeBack')}
        </TickBox>
        <SegmentedChoice
          legend={t('desk:plan.baseColour')}
          segments={COLOURS.map((colour) => ({
            value: colour,
            label: (
              <>
                <i className={`${styles.swatch} ${colourStyles[colour]}`} />
                {t(`common:colour.${colour}`)}
              </>
            ),
          }))}
          value={settings.baseColour}
          onChoose={(baseColour) => onChange({ ...settings, baseColour })}
        />
        <SegmentedChoice
          legend={t('desk:plan.boardSeenBy')}
          segments={[
            { value: 'all', label: t('desk:plan.seenByAll') },
            { value: 'teacher', label: t('desk:plan.seenByTeacher') },
            { value: 'own', label: t('desk:plan.seenByOwn') },
          ]}
          value={settings.boardSeenBy}
          onChoose={(boardSeenBy) => onChange({ ...settings, boardSeenBy })}
        />
      </div>
    </details>
  )
}
