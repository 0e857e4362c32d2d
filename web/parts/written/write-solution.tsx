/**
 * A solution written down from a real cube: one text, fed by the keyboard and by a tap pad, read while it is written. What
 * is no turn is marked at its place; the cube after the turns so far stands beside it. When the turns do not reach the
 * goal, the first press on "Send" says where they go astray, and the second one sends all the same. Where the round has
 * hints, they are asked for under the keys, and go out with the turns.
 */

import { useId, useMemo, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Step } from '../../../engine/contest/steps.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { countOuterBlockTurns } from '../../../engine/cube/outer-block-turns.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { stepsBeforeGoal } from '../../../engine/method/goal-reached.ts'
import type { StageSpan } from '../../../engine/method/stages.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import { Button } from '../../ui/button.tsx'
import { Sign } from '../../ui/signs.tsx'
import { AstrayNote } from './astray-note.tsx'
import { hintCostWords } from './hint-cost-words.ts'
import { readWritten } from './read-written.ts'
import { TapPad } from './tap-pad.tsx'
import { withPadKey } from './tap-pad-text.ts'
import { whereAstray } from './where-astray.ts'
import styles from './write-solution.module.css'
import { type HintsOfWriting, WritingHint } from './writing-hint.tsx'
import { WrittenField } from './written-field.tsx'
import { stepsWithHints } from './written-hints.ts'

export type WriteSolutionProps = {
  /** The start of the round; the turns are written from this hold. */
  readonly start: CubePosition
  readonly span: StageSpan
  readonly baseColour: Colour
  readonly marks: MarkStyle
  /** What was written before the page was loaded again. */
  readonly firstText?: string
  /** Called with the text whenever it changes, so that it can be kept. */
  readonly onWrite?: (text: string) => void
  /** Called with the turns and, at their places among them, the hints. */
  readonly onSend: (steps: readonly Step[]) => void
  /** The hints of the try that is being written; null where the round has none. */
  readonly hints?: HintsOfWriting | null
  /** Whether the round takes solutions now: not in a pause, nor when its clock stands at 0. */
  readonly open?: boolean
  /** It is being sent. */
  readonly busy: boolean
  /** What came of the last one, in words: it went out and did not reach the goal. */
  readonly cameOf?: string | null
  /** Why the server did not take it, in words. */
  readonly refusal: string | null
}

export function WriteSolution(props: WriteSolutionProps) {
  const {
    start,
    span,
    baseColour,
    marks,
    firstText = '',
    onWrite,
    onSend,
    open = true,
    busy,
    refusal,
    cameOf = null,
    hints = null,
  } = props
  const { t } = useTranslation()
  const ids = { field: useId(), help: useId() }
  const field = useRef<HTMLTextAreaElement>(null)
  const [text, setText] = useState(firstText)
  const [isWarned, setIsWarned] = useState(false)
  const { turns, fault } = useMemo(() => readWritten(text), [text])
  const stickers = useMemo(() => stickersOf(afterTurns(start, turns)), [start, turns])
  const nToGoal = useMemo(() => stepsBeforeGoal(start, turns, span.to), [start, turns, span.to])
  const astray = useMemo(
    () => (isWarned && fault === null && nToGoal === null ? whereAstray(start, turns, span) : null),
    [isWarned, fault, nToGoal, start, turns, span],
  )

  const write = (next: string) => {
    setText(next)
    onWrite?.(next)
    setIsWarned(false)
  }
  const nTurns = countOuterBlockTurns(turns)
  const nAsked = hints?.asked.length ?? 0
  const nCounted = nTurns + nAsked * (hints?.cost ?? 0)
  const canSend = fault === null && turns.length > 0 && open && !busy
  const send = () => {
    if (!canSend) return
    if (nToGoal === null && !isWarned) setIsWarned(true)
    // The try ends with the turn that reaches the goal.
    else {
      onSend(stepsWithHints(nToGoal === null ? turns : turns.slice(0, nToGoal), nToGoal !== null, hints?.asked ?? []))
      setIsWarned(false)
    }
  }

  return (
    <div className={styles.room}>
      <section className={styles.write} aria-label={t('written:label')}>
        <div className={styles.so}>
          <CubePicture
            stickers={stickers}
            baseColour={baseColour}
            marks={marks}
            label={t('written:cubeSoFar', { count: nTurns })}
            className={styles.cube}
          />
          <p className={styles.count}>
            <b>{nCounted}</b> {t('bench:line.turns', { count: nCounted })}
            {hints !== null && nAsked > 0 && <small>{hintCostWords(t, nAsked, hints.cost)}</small>}
          </p>
          <p className={styles.state} role="status">
            {nToGoal !== null && nToGoal > 0 && (
              <>
                <Sign of="reached" className={styles.flag} />
                {nToGoal === turns.length
                  ? t('written:reached')
                  : t('written:reachedBefore', { count: countOuterBlockTurns(turns.slice(0, nToGoal)) })}
              </>
            )}
          </p>
        </div>
        <WrittenField
          id={ids.field}
          helpId={ids.help}
          field={field}
          text={text}
          fault={fault}
          onWrite={write}
          label={t('written:field')}
        />
        <TapPad onKey={(key) => write(withPadKey(text, key))} />
        {hints !== null && nToGoal === null && (
          <WritingHint
            {...hints}
            start={start}
            turns={turns}
            readsWell={fault === null}
            open={open && !busy}
            span={span}
            baseColour={baseColour}
            marks={marks}
          />
        )}
        <div className={styles.send}>
          {refusal !== null && (
            <p className={styles.refusal} role="alert">
              {refusal}
            </p>
          )}
          <div role="status">
            {astray === null && cameOf !== null && <p className={styles.cameOf}>{cameOf}</p>}
            {astray !== null && <AstrayNote astray={astray} span={span} baseColour={baseColour} marks={marks} />}
          </div>
          <Button look="accent" size="large" wide aria-disabled={!canSend} onClick={send}>
            {busy ? t('written:sending') : t(isWarned && nToGoal === null ? 'written:sendAllTheSame' : 'written:send')}
          </Button>
        </div>
      </section>
    </div>
  )
}
