/** Above the cube while a round is played: the goal, par while the teacher shows it, and what holds just now. */

import { useTranslation } from 'react-i18next'
import type { BenchView, RoundView } from '../../engine/wire/views.ts'
import { GoalPicture } from '../cube/goal-picture.tsx'
import type { BenchSettings } from '../parts/bench-page/bench-settings.ts'
import { RoundHead } from '../parts/bench-page/round-head.tsx'
import { parName } from '../parts/par-words.ts'
import { spanWords, stageWords } from '../parts/stage-words.ts'

type PlayHeadProps = {
  readonly view: Pick<BenchView, 'par'>
  readonly round: RoundView
  readonly liked: Pick<BenchSettings, 'marks'>
  /** Null while all is as usual. */
  readonly state: string | null
}

export function PlayHead({ view: { par }, round: { number, settings }, liked: { marks }, state }: PlayHeadProps) {
  const { t } = useTranslation()
  const { from, to, baseColour } = settings
  const words = stageWords(t, to, baseColour)
  const sentence = from === to ? words.sentence : t('bench:spanSentence', { from, to, sentence: words.sentence })
  return (
    <RoundHead
      over={t('bench:roundAndStage', { number, stage: spanWords(t, settings) })}
      par={par === null ? null : { words: parName(t, par), briefOver: t('board:round', { number }) }}
      title={words.title}
      sentence={sentence}
      state={state}
      picture={<GoalPicture stage={to} baseColour={baseColour} marks={marks} label={words.picture} />}
    />
  )
}
