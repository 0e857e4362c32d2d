/** How long the starts are, in the fewest turns: all of a stage, a third of them, or from one par to another. */

import { useId, useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { Button } from '../../ui/button.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import styles from './choose-par.module.css'
import { dealtPars, PAR_THIRDS, type ParRange, parsThatOccur, parThirds, shareInRange } from './dealt-pars.ts'
import { ParHistogram } from './par-histogram.tsx'
import { parRangeWords } from './par-range-words.ts'
import type { ParTablesState } from './use-par-tables.ts'

type ChooseParProps = {
  settings: RoundSettings
  pars: ParTablesState
  onChange: (settings: RoundSettings) => void
}

const ANY = 'any'
const OWN = 'own'

/** Draws nothing where several stages are played in one go: their pars are searched for when the round begins. */
export function ChoosePar({ settings, pars, onChange }: ChooseParProps) {
  const { t } = useTranslation()
  const [choosesOwn, setChoosesOwn] = useState(false)
  const { from, to, cases, parFrom, parTo } = settings
  const { tables } = pars
  const counts = useMemo(() => (tables === null ? null : dealtPars({ from, cases }, tables)), [tables, from, cases])
  const thirds = useMemo(() => (counts === null ? {} : parThirds(counts)), [counts])
  if (from !== to) return null
  if (counts === null) {
    return (
      <div className={styles.par}>
        <p>{t(pars.failed ? 'desk:plan.parFailed' : 'desk:plan.parLoading')}</p>
        {pars.failed && (
          <Button icon="again" onClick={pars.tryAgain}>
            {t('desk:plan.parAgain')}
          </Button>
        )}
      </div>
    )
  }

  const offered = PAR_THIRDS.filter((third) => thirds[third] !== undefined)
  const isAny = parFrom === null && parTo === null
  const chosenThird = offered.find((third) => thirds[third]?.parFrom === parFrom && thirds[third]?.parTo === parTo)
  const chosen = choosesOwn ? OWN : isAny ? ANY : (chosenThird ?? OWN)
  const set = (range: ParRange) => onChange({ ...settings, ...range })
  const choose = (value: string) => {
    setChoosesOwn(value === OWN)
    const third = offered.find((each) => each === value)
    if (third !== undefined) set(thirds[third] ?? { parFrom: null, parTo: null })
    else if (value === ANY) set({ parFrom: null, parTo: null })
  }
  const share = shareInRange(counts, settings)
  return (
    <div className={styles.par}>
      <SegmentedChoice
        legend={t('desk:plan.par')}
        segments={[ANY, ...offered, OWN].map((value) => ({ value, label: t(`desk:plan.parOf.${value}` as const) }))}
        value={chosen}
        onChoose={choose}
      />
      {chosen === OWN && <OwnRange counts={counts} range={settings} onChange={set} />}
      <div className={styles.shown}>
        <ParHistogram counts={counts} range={settings} />
        <p>
          {share === 0
            ? t('desk:plan.parNone')
            : isAny
              ? t('desk:plan.parAll', { stage: from })
              : t('desk:plan.parShare', { range: parRangeWords(t, settings), share: percent(share) })}
        </p>
      </div>
    </div>
  )
}

type OwnRangeProps = { counts: readonly number[]; range: ParRange; onChange: (range: ParRange) => void }

/** The two ends; one that passes the other takes it along. */
function OwnRange({ counts, range, onChange }: OwnRangeProps) {
  const { t } = useTranslation()
  const ids = { from: useId(), to: useId() }
  const pars = parsThatOccur(counts)
  const { parFrom, parTo } = range
  return (
    <div className={styles.own}>
      <label htmlFor={ids.from}>{t('desk:plan.parFrom')}</label>
      <ParSelect
        id={ids.from}
        pars={pars}
        value={parFrom}
        onChoose={(par) =>
          onChange({ parFrom: par, parTo: par !== null && parTo !== null && parTo < par ? par : parTo })
        }
      />
      <label htmlFor={ids.to}>{t('desk:plan.parTo')}</label>
      <ParSelect
        id={ids.to}
        pars={pars}
        value={parTo}
        onChoose={(par) =>
          onChange({ parTo: par, parFrom: par !== null && parFrom !== null && par < parFrom ? par : parFrom })
        }
      />
    </div>
  )
}

type ParSelectProps = {
  id: string
  pars: readonly number[]
  value: number | null
  onChoose: (par: number | null) => void
}

function ParSelect({ id, pars, value, onChoose }: ParSelectProps) {
  const { t } = useTranslation()
  // A par that other cases no longer have stays readable.
  const shown = value === null || pars.includes(value) ? pars : [...pars, value].sort((one, other) => one - other)
  return (
    <select
      id={id}
      className={styles.select}
      value={value ?? ''}
      onChange={(event) => onChoose(event.currentTarget.value === '' ? null : Number(event.currentTarget.value))}
    >
      <option value="">{t('desk:plan.parAny')}</option>
      {shown.map((par) => (
        <option key={par} value={par}>
          {par}
        </option>
      ))}
    </select>
  )
}

/** "33 %", and "under 1 %" for what is rare. */
function percent(share: number): string {
  return share < 0.01 ? '<1' : String(Math.round(share * 100))
}
