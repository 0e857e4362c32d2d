/** Which cases of a last-layer stage are dealt, each with its picture from above. */

import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { type CaseId, caseOf, isLastLayerStage, type LastLayerStage } from '../../../engine/method/cases.ts'
import { arrangementsOf } from '../../../engine/method/last-layer-arrangements.ts'
import { TopFacePicture } from '../../parts/top-face-picture.tsx'
import { Button } from '../../ui/button.tsx'
import { offeredCases, withCase } from '../change-settings.ts'
import styles from './choose-cases.module.css'

type ChooseCasesProps = { settings: RoundSettings; onChange: (settings: RoundSettings) => void }

/** Draws nothing for the first three stages, which have no cases. */
export function ChooseCases({ settings, onChange }: ChooseCasesProps) {
  const stage = settings.from
  return isLastLayerStage(stage) ? <CasesOfStage stage={stage} settings={settings} onChange={onChange} /> : null
}

function CasesOfStage({ stage, settings, onChange }: ChooseCasesProps & { stage: LastLayerStage }) {
  const { t } = useTranslation()
  const pictures = useMemo(() => firstOfEachCase(stage), [stage])
  const offered = offeredCases(settings)
  const ticked = settings.cases ?? offered
  return (
    <fieldset className={styles.choice}>
      <legend>
        <h2>{t('desk:plan.cases')}</h2>
        <p className={styles.help}>{t('desk:plan.casesHelp')}</p>
        {settings.cases !== null && (
          <Button look="quiet" onClick={() => onChange({ ...settings, cases: null })}>
            {t('desk:plan.allCases')}
          </Button>
        )}
      </legend>
      <div className={styles.cases}>
        {offered.map((id) => {
          const isTicked = ticked.includes(id)
          // The last tick stays: a round without a start cannot be dealt.
          const isLast = isTicked && ticked.length === 1
          const picture = pictures.get(id)
          return (
            <label key={id} className={styles.case}>
              <input
                type="checkbox"
                checked={isTicked}
                aria-disabled={isLast}
                onChange={(event) => {
                  const next = withCase(settings, id, event.currentTarget.checked)
                  if (next !== null) onChange(next)
                }}
              />
              <span className={styles.picture}>
                {picture !== undefined && (
                  <TopFacePicture stage={stage} stickers={picture} baseColour={settings.baseColour} />
                )}
              </span>
              <span>{t(`desk:case.${id}`)}</span>
            </label>
          )
        })}
      </div>
    </fieldset>
  )
}

/** Of each case the first arrangement stands for all: they differ by a turn of the top layer only, or nearly. */
function firstOfEachCase(stage: LastLayerStage): ReadonlyMap<CaseId, Uint8Array> {
  const pictures = new Map<CaseId, Uint8Array>()
  for (const position of arrangementsOf(stage)) {
    const id = caseOf(position, stage)
    if (!pictures.has(id)) pictures.set(id, stickersOf(position))
  }
  return pictures
}
