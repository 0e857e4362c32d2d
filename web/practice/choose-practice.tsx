/** What to practise: the goal by its picture, a case of it, the colour of the first layer, how much help. One button begins. */

import { useId, useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { Link } from 'wouter'
import { COLOURS } from '../../engine/cube/colour-scheme.ts'
import { stickersOf } from '../../engine/cube/stickers.ts'
import { caseOf, isLastLayerStage, type LastLayerStage } from '../../engine/method/cases.ts'
import { arrangementsOf } from '../../engine/method/last-layer-arrangements.ts'
import { STAGES } from '../../engine/method/stages.ts'
import { GoalPicture } from '../cube/goal-picture.tsx'
import colourStyles from '../cube/sticker-colours.module.css'
import { stageWords } from '../parts/stage-words.ts'
import { TopFacePicture } from '../parts/top-face-picture.tsx'
import { Button } from '../ui/button.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { ThemeChoice } from '../ui/theme-choice.tsx'
import styles from './choose-practice.module.css'
import { casesToPractise, HINT_CHOICES, type PracticeSettings } from './practice-settings.ts'

type ChooseProps = {
  readonly settings: PracticeSettings
  readonly onChange: (next: PracticeSettings) => void
}

export function ChoosePractice({ settings, onChange, onBegin }: ChooseProps & { readonly onBegin: () => void }) {
  const { t } = useTranslation()
  const { stage, baseColour, hints } = settings
  return (
    <main className={styles.page}>
      <header className={styles.head}>
        <h1>{t('practice:title')}</h1>
        <ThemeChoice />
        <p>
          {t('practice:sentence')} <Link href="/">{t('practice:toRoom')}</Link>
        </p>
      </header>
      <ChooseStage settings={settings} onChange={onChange} />
      {isLastLayerStage(stage) && <ChooseCase stage={stage} settings={settings} onChange={onChange} />}
      <div className={styles.rest}>
        <SegmentedChoice
          legend={t('practice:hints')}
          segments={HINT_CHOICES.map((level) => ({ value: String(level), label: t(`practice:hintsUpTo.${level}`) }))}
          value={String(hints)}
          onChoose={(chosen) => {
            const level = HINT_CHOICES.find((each) => String(each) === chosen)
            if (level !== undefined) onChange({ ...settings, hints: level })
          }}
        />
        <SegmentedChoice
          legend={t('practice:baseColour')}
          segments={COLOURS.map((colour) => ({
            value: colour,
            label: (
              <>
                <i className={`${styles.swatch} ${colourStyles[colour]}`} />
                {t(`common:colour.${colour}`)}
              </>
            ),
          }))}
          value={baseColour}
          onChoose={(colour) => onChange({ ...settings, baseColour: colour })}
        />
      </div>
      <footer className={styles.go}>
        <Button look="accent" size="large" wide onClick={onBegin}>
          {t('practice:begin')}
        </Button>
      </footer>
    </main>
  )
}

function ChooseStage({ settings, onChange }: ChooseProps) {
  const { t } = useTranslation()
  const name = useId()
  return (
    <fieldset>
      <legend className={styles.legend}>{t('practice:goal')}</legend>
      <div className={styles.stages}>
        {STAGES.map((stage) => {
          const words = stageWords(t, stage, settings.baseColour)
          return (
            <label key={stage} className={styles.square}>
              <input
                type="radio"
                name={name}
                checked={settings.stage === stage}
                onChange={() => onChange({ ...settings, stage, caseId: null })}
              />
              {/* The words beside it say the same. */}
              <span className={styles.goal} aria-hidden="true">
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

function ChooseCase({ stage, settings, onChange }: ChooseProps & { readonly stage: LastLayerStage }) {
  const { t } = useTranslation()
  const name = useId()
  const cases = useMemo(() => casesToPractise(stage).map((id) => ({ id, stickers: exampleOf(stage, id) })), [stage])
  return (
    <fieldset>
      <legend className={styles.legend}>{t('practice:case')}</legend>
      <div className={styles.cases}>
        <label className={styles.square}>
          <input
            type="radio"
            name={name}
            checked={settings.caseId === null}
            onChange={() => onChange({ ...settings, caseId: null })}
          />
          <span className={styles.any} aria-hidden="true">
            {cases.slice(0, ANY_PICTURES).map(({ id, stickers }) => (
              <TopFacePicture key={id} stage={stage} stickers={stickers} baseColour={settings.baseColour} />
            ))}
          </span>
          <span>{t('practice:anyCase')}</span>
        </label>
        {cases.map(({ id, stickers }) => (
          <label key={id} className={styles.square}>
            <input
              type="radio"
              name={name}
              checked={settings.caseId === id}
              onChange={() => onChange({ ...settings, caseId: id })}
            />
            <span className={styles.case}>
              <TopFacePicture stage={stage} stickers={stickers} baseColour={settings.baseColour} />
            </span>
            <span>{t(`desk:case.${id}`)}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}

/** So many small pictures stand for "any". */
const ANY_PICTURES = 4

/** The first arrangement stands for its case: the others differ by a turn of the top layer only, or nearly. */
function exampleOf(stage: LastLayerStage, id: string): Uint8Array {
  const example = arrangementsOf(stage).find((position) => caseOf(position, stage) === id)
  return example === undefined ? new Uint8Array() : stickersOf(example)
}
