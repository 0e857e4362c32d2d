/** A hint from the teacher for a child with a real cube: nobody sees how far that cube is, so it speaks of the start. */

import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { LESSON_BOOK } from '../../engine/method/book/lesson-book.ts'
import type { HintLevel } from '../../engine/method/way/hint-level.ts'
import { hintWords } from '../parts/hints/hint-words.ts'
import { Button } from '../ui/button.tsx'
import styles from './start-hint.module.css'

type StartHintProps = {
  readonly start: CubePosition
  readonly level: HintLevel
  readonly settings: Pick<RoundSettings, 'from' | 'to' | 'baseColour'>
  readonly onPutAway: () => void
}

export function StartHint({ start, level, settings, onPutAway }: StartHintProps) {
  const { t } = useTranslation()
  const { from, to, baseColour } = settings
  const rungs = useMemo(
    () => hintWords(t, start, level, baseColour, { span: { from, to }, book: LESSON_BOOK }),
    [t, start, level, baseColour, from, to],
  )
  return (
    <div className={styles.hint}>
      <p>
        <b>{t('bench:nudge.atTheStart')}</b>
      </p>
      {rungs.map(({ kind, words }) => (
        <p key={kind}>{words}</p>
      ))}
      <Button look="quiet" onClick={onPutAway}>
        {t('bench:notice.ok')}
      </Button>
    </div>
  )
}

/** Stands in its place once it is put away. */
export function StartHintAway({ onTakeOut }: { readonly onTakeOut: () => void }) {
  const { t } = useTranslation()
  return (
    <div className={styles.hint}>
      <Button look="quiet" onClick={onTakeOut}>
        {t('hints:toHint')}
      </Button>
    </div>
  )
}
