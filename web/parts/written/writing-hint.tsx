/**
 * The hint ladder of a child who writes down what a real cube did. Nobody sees that cube: a hint is about the position to
 * which the written turns lead, and the page says so.
 */

import { useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import type { HintLevel } from '../../../engine/method/way/hint-level.ts'
import { HintLadder, type HintLadderProps } from '../hints/hint-ladder.tsx'
import { useStepUnderWay } from '../hints/use-hint-of-try.ts'
import styles from './writing-hint.module.css'
import { hintsBesideWriting, type WrittenHint } from './written-hints.ts'

/** The hints of the try that is being written. */
export type HintsOfWriting = Pick<HintLadderProps, 'cost'> & {
  /** The highest rung that the round allows. */
  readonly levelMax: HintLevel
  /** In the order in which they were asked for. */
  readonly asked: readonly WrittenHint[]
  /** The highest rung that the teacher sent for the start, and what is done when it is looked at here. */
  readonly taught?: { readonly level: HintLevel; readonly onTakeOut: () => void } | null
  /** Called with one more; the caller keeps it. */
  readonly onAsk: (hint: WrittenHint) => void
}

type WritingHintProps = HintsOfWriting &
  Pick<HintLadderProps, 'span' | 'baseColour' | 'marks'> & {
    readonly start: CubePosition
    /** The written turns, or those before the first that is none. They do not reach the goal. */
    readonly turns: readonly Turn[]
    /** No token of the text is faulty. */
    readonly readsWell: boolean
    /** The round takes steps now. */
    readonly open: boolean
  }

export function WritingHint(props: WritingHintProps) {
  const { start, turns, readsWell, open, span, asked, onAsk, baseColour, marks, levelMax, cost, taught = null } = props
  const { t } = useTranslation()
  const position = useMemo(() => afterTurns(start, turns), [start, turns])
  const { from, to } = span
  const begun = useStepUnderWay(start, turns, span)
  const level = taught?.level ?? null
  const { shown, isTaught } = useMemo(
    () => hintsBesideWriting(start, turns, asked, level, { span: { from, to }, book: LESSON_BOOK }),
    [start, turns, asked, level, from, to],
  )
  // It stands above all, or was put away there: here it is known, and taken out for nothing.
  const [takenOut, setTakenOut] = useState(false)
  const takeOut = () => {
    setTakenOut(true)
    taught?.onTakeOut()
  }
  return (
    <div className={styles.hint}>
      <p className={styles.from}>{t(readsWell ? 'written:hintFrom' : 'written:hintAfterTheFault')}</p>
      <HintLadder
        position={position}
        begun={begun}
        span={span}
        baseColour={baseColour}
        marks={marks}
        levelMax={levelMax}
        cost={cost}
        shown={shown}
        onAsk={(level) => onAsk({ level, behind: turns })}
        canAsk={readsWell && open}
        fromTeacher={isTaught ? { isAway: !takenOut, onPutAway: () => setTakenOut(false), onTakeOut: takeOut } : null}
        inText
      />
    </div>
  )
}
