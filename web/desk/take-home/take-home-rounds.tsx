/** A take-home room: until when it is open, and which of its rounds the desk looks at. */

import { useTranslation } from 'react-i18next'
import type { RoundId } from '../../../engine/contest/ids.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import { stageWords } from '../../parts/stage-words.ts'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import styles from './take-home-rounds.module.css'

type TakeHomeRoundsProps = { readonly view: DeskView; readonly onLookAt: (id: RoundId) => void }

export function TakeHomeRounds({ view, onLookAt }: TakeHomeRoundsProps) {
  const { t, i18n } = useTranslation()
  const { deadlineMs } = view.room
  if (deadlineMs === null) return null
  const titles = view.plan?.plan.parts.flatMap((part) => (part.kind === 'round' ? [part.title] : [])) ?? []
  const when = new Intl.DateTimeFormat(i18n.language, { dateStyle: 'full', timeStyle: 'short' }).format(deadlineMs)
  return (
    <section className={styles.rounds}>
      <p>{t('desk:takeHome.until', { when })}</p>
      <SegmentedChoice
        legend={t('desk:takeHome.roundChoice')}
        quietLegend
        segments={view.rounds.map(({ id, number, settings }) => ({
          value: id as string,
          label: `${number} · ${titles[number - 1] || stageWords(t, settings.to, settings.baseColour).short}`,
        }))}
        value={view.round?.id ?? null}
        onChoose={(id) => onLookAt(id as RoundId)}
      />
    </section>
  )
}
