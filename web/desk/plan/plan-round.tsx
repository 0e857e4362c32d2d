/** The settings of the next round. All is right as it stands: a teacher may press Start without touching any of it. */

import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { ChooseCases } from './choose-cases.tsx'
import { ChooseHelp } from './choose-help.tsx'
import { ChooseRules } from './choose-rules.tsx'
import { ChooseLastStage, ChooseStage } from './choose-stage.tsx'
import { ChooseTime } from './choose-time.tsx'
import styles from './plan-round.module.css'
import { SampleStarts } from './sample-starts.tsx'
import { useParTables } from './use-par-tables.ts'

type PlanRoundProps = { settings: RoundSettings; onChange: (settings: RoundSettings) => void }

export function PlanRound({ settings, onChange }: PlanRoundProps) {
  const pars = useParTables()
  return (
    <div className={styles.plan}>
      <ChooseStage settings={settings} onChange={onChange} />
      <div className={styles.beside}>
        <ChooseLastStage settings={settings} onChange={onChange} />
        <SampleStarts
          settings={settings}
          pars={pars}
          onAnyPar={() => onChange({ ...settings, parFrom: null, parTo: null })}
        />
      </div>
      <ChooseCases settings={settings} onChange={onChange} />
      <ChooseTime settings={settings} onChange={onChange} />
      <ChooseHelp settings={settings} onChange={onChange} />
      <ChooseRules settings={settings} pars={pars} onChange={onChange} />
    </div>
  )
}
